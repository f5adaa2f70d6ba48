package fourpin.plan;

import fourpin.bench.Removal.Bore;
import fourpin.bench.Surface;
import fourpin.bench.WorkedPiece;
import fourpin.casework.BaySpace.Opening;
import fourpin.casework.Hand;
import fourpin.measure.Length;
import fourpin.measure.LengthStyle;
import fourpin.plan.MistakeReport.Check;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What to measure on a panel, so that a mistake is found before the next panel is bored. */
final class PanelTest {

  private final RowNames names;
  private final SpoiltRows rows;
  private final LengthStyle style;

  PanelTest(RowNames names, SpoiltRows rows, LengthStyle style) {
    this.names = names;
    this.rows = rows;
    this.style = style;
  }

  Check of(Mistake mistake) {
    Bore first = rows.wanted().getFirst();
    return switch (mistake) {
      case END_FOR_END, PANEL_TURNED, HOLE_SKIPPED, MASKED_HOLE, PIN_IN_WRONG_HOLE -> along();
      case SPACER_FORGOTTEN, WRONG_SPACER -> rows.areOffAcross() ? across() : along();
      case WRONG_EDGE -> across();
      case SECOND_LEFT -> fromHand();
      case STOP_SLIPPED ->
          new Check(
              "from the panel's surface to the floor of the lowest and of the highest hole",
              first.depth(),
              rows.made().stream().map(Bore::depth).findFirst());
      case OTHER_BIT ->
          new Check(
              "across the lowest hole",
              first.diameter(),
              rows.made().stream().map(Bore::diameter).findFirst());
    };
  }

  /** How far one hole of the spoilt row lies up the panel, a hole by which the mistake is seen. */
  private Check along() {
    Bore off = rows.lowestOff();
    List<Bore> wanted = SpoiltRows.row(rows.wanted(), off);
    List<Bore> made = SpoiltRows.row(rows.made(), off);
    List<Check> checks = checks(wanted, made);
    return checks.stream()
        .filter(this::isSeen)
        .findFirst()
        .or(() -> checks.stream().max(Comparator.comparing(PanelTest::off)))
        .orElseThrow();
  }

  /** With a rule; what lies below the panel that it stands on is not. */
  private boolean isSeen(Check check) {
    return check
        .wrong()
        .filter(w -> w.isNegative() || style.text(w).equals(style.text(check.right())))
        .isEmpty();
  }

  private static Length off(Check check) {
    return check.wrong().orElse(check.right()).minus(check.right()).abs();
  }

  /** The highest and the lowest hole, which are found at once, then one that is counted up to. */
  private List<Check> checks(List<Bore> wanted, List<Bore> made) {
    if (made.isEmpty()) {
      return List.of(check("the lowest hole", wanted.getFirst(), Optional.empty()));
    }
    List<Check> checks = new ArrayList<>();
    checks.add(check("the highest hole", wanted.getLast(), Optional.of(made.getLast())));
    checks.add(check("the lowest hole", wanted.getFirst(), Optional.of(made.getFirst())));
    for (int i = Math.min(wanted.size(), made.size()) - 1; i > 0; i--) {
      String hole = "hole " + (i + 1) + ", counted from below,";
      checks.add(check(hole, wanted.get(i), Optional.of(made.get(i))));
    }
    return checks;
  }

  private Check check(String hole, Bore wanted, Optional<Bore> made) {
    From from = from(wanted);
    return new Check(
        "from " + from.what() + " to " + hole + " of the " + names.row(wanted),
        wanted.length().minus(from.up()),
        made.map(m -> m.length().minus(from.up())));
  }

  /** What a rule is set against. @param up how far it lies above the panel's index end */
  private record From(String what, Length up) {}

  /** In a standing case the panel below is in the way of the end. */
  private From from(Bore wanted) {
    Optional<Opening> opening =
        names.isStanding() ? names.opening(wanted.purpose(), wanted.length()) : Optional.empty();
    return opening
        .map(o -> new From("the top of " + o.below(), names.up(o.clear().low())))
        .orElseGet(() -> new From(names.indexEnd(), Length.ZERO));
  }

  private Check across() {
    Bore missing = rows.lowestMissing();
    return new Check(
        "from " + names.indexEdge() + " to the " + missing.purpose(),
        missing.width(),
        rows.instead(missing).map(Bore::width));
  }

  /**
   * The index end towards you, from the edge on the hand that the index edge lies on: bored from
   * the other face, the panel has its index edge on the other hand.
   */
  private Check fromHand() {
    Bore first = rows.wanted().getFirst();
    Optional<Length> wrong =
        rows.made().stream()
            .filter(m -> m.purpose().equals(first.purpose()))
            .findFirst()
            .map(m -> m.surface() == first.surface() ? m.width() : fromFarEdge(m));
    return new Check(
        "from the edge on your " + hand(first.surface()).word() + " to the " + first.purpose(),
        first.width(),
        wrong);
  }

  private Length fromFarEdge(Bore hole) {
    WorkedPiece piece = rows.piece();
    return piece.width().minus(hole.width());
  }

  /** Where the index edge lies with a face up and the index end towards you. */
  Hand hand(Surface up) {
    return Lying.hand(names.part(), PieceLayout.of(names.part()).looking(up));
  }
}
