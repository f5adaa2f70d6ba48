package fourpin.plan;

import fourpin.bench.Step;
import fourpin.boring.way.CaseBoring;
import fourpin.boring.way.Method;
import fourpin.casework.BuiltCase;
import fourpin.casework.Part;
import fourpin.measure.Length;
import fourpin.measure.LengthStyle;
import fourpin.plan.CaseWays.Manner;
import fourpin.plan.PlannedStep.FaceUp;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Boring and ripping blanks for cleat strips, and rounding the cleats. The two blanks of a bay (of
 * each of its openings) have their holes at the same heights and go together.
 */
final class CleatSteps {

  private final BuiltCase built;
  private final List<CleatBlank> blanks;
  private final Function<Part, StepWriter> writer;
  private final List<CaseBoring> borings;
  private final LengthStyle style;

  /**
   * @param borings of this case
   */
  CleatSteps(
      BuiltCase built,
      List<CleatBlank> blanks,
      Function<Part, StepWriter> writer,
      List<CaseBoring> borings,
      LengthStyle style) {
    this.built = built;
    this.blanks = blanks;
    this.writer = writer;
    this.borings = borings;
    this.style = style;
  }

  /** The blanks that go together. */
  List<Lot> lots() {
    return CleatLot.of(built, blanks, borings).stream().map(Lot::new).toList();
  }

  /** Blanks that go together. */
  final class Lot {

    private final CleatLot lot;
    private final List<CleatBlank> blanks;

    private Lot(CleatLot lot) {
      this.lot = lot;
      this.blanks = lot.blanks();
    }

    /** The faces that lie up; where nothing is bored there is no sheet. */
    List<FaceUp> sheet() {
      return blanks.stream().flatMap(b -> up(b).stream()).toList();
    }

    /** In a stack all look the way of the uppermost, so that their index edges lie together. */
    private Optional<FaceUp> up(CleatBlank blank) {
      CleatBlank looking = lot.isStacked() ? blanks.getFirst() : blank;
      return looking.inside().map(face -> new FaceUp(blank.wood().mark(), face));
    }

    /** How the blanks lie and are bored. */
    String boring() {
      return "Bore before anything is ripped. "
          + (lot.isStacked() ? lyingStacked() : lyingSingly())
          + " Draw the middle line with a gauge from the index edge, mark its heights from the stick"
          + " and prick every centre with a punch. "
          + lot.method().map(this::boring).orElse("Clamp on waste and bore right through into it.");
    }

    private String lyingSingly() {
      return blanks.stream()
          .flatMap(b -> up(b).stream().map(up -> Lying.onBench(b.wood(), up.face())))
          .collect(Collectors.joining(" "));
    }

    private String lyingStacked() {
      Part top = blanks.getFirst().wood();
      String below =
          blanks.stream()
              .skip(1)
              .map(b -> b.wood().mark() + " with the face down")
              .collect(Collectors.joining(", "));
      return "Lay "
          + below
          + ", and on it "
          + top.mark()
          + " with the face up, index ends (BOTTOM) together towards you and index edges (FRONT)"
          + " together on your "
          + Lying.hand(top, blanks.getFirst().inside().orElseThrow()).word()
          + ".";
    }

    private String boring(Method.Blanks method) {
      return switch (method.how()) {
        case DRILL_PRESS ->
            "On the drill press with "
                + method.bit().tool()
                + ", the fence as far from the bit's centre as the middle line from the index edge,"
                + (lot.isStacked() ? " the stack" : " one blank at a time")
                + " clamped on waste: bore right through into the waste.";
        case BY_HAND ->
            "Clamp one blank at a time on waste and bore with "
                + method.bit().tool()
                + " by hand, square to the face against a square stood beside it, right through"
                + " into the waste.";
      };
    }

    List<Step> bores() {
      return blanks.stream()
          .flatMap(b -> writer.apply(b.wood()).supports(Manner.BY_HAND).stream())
          .toList();
    }

    /** Each blank is ripped, and its strips marked at once: only one has the blank's front edge. */
    List<Step> rips() {
      return blanks.stream()
          .flatMap(b -> Stream.of(b.rip(), marks(b.front()), marks(b.back())))
          .toList();
    }

    List<Part> wood() {
      return blanks.stream().map(CleatBlank::wood).toList();
    }

    List<Part> strips() {
      return blanks.stream().flatMap(b -> Stream.of(b.front(), b.back())).toList();
    }
  }

  private Step marks(Part strip) {
    return writer.apply(strip).marks();
  }

  /** A round end has half the cleat's height for its radius. */
  String rounding(Part cleat) {
    Length radius = cleat.width().total().over(2);
    return "Round both ends of the loose cleats to a radius of "
        + style.text(radius)
        + ": draw the round with a compass set in the middle line "
        + style.text(radius)
        + " from the end, clamp some cleats together, saw the corners off outside the line and sand"
        + " to it. The length of the cut list holds over the rounds.";
  }
}
