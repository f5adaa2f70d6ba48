package fourpin.plan;

import fourpin.bench.BenchRun.Mishap;
import fourpin.bench.Removal.Bore;
import fourpin.bench.Step;
import fourpin.job.Setting;
import fourpin.job.Support;
import fourpin.plan.MistakeReport.Check;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A mistake as a maker meets it. */
final class MistakeWords {

  private final MistakeFigures figures;
  private final RowNames names;
  private final CaseWays ways;
  private final SpoiltRows rows;
  private final Together together;
  private final List<Mishap> mishaps;

  MistakeWords(
      MistakeFigures figures,
      RowNames names,
      CaseWays ways,
      SpoiltRows rows,
      Together together,
      List<Mishap> mishaps) {
    this.figures = figures;
    this.names = names;
    this.ways = ways;
    this.rows = rows;
    this.together = together;
    this.mishaps = mishaps;
  }

  /** What is taken or left out by mistake. */
  record Slips(OtherBit bit, TapeBlunder tape, SpacerBlunder spacers) {}

  String what(Mistake mistake, Slips slips) {
    Bore first = rows.wanted().getFirst();
    String mark = names.part().mark();
    return switch (mistake) {
      case END_FOR_END -> say(endForEnd(), mark);
      case WRONG_EDGE -> say("The %s of %s is set out from the wrong edge.", first.purpose(), mark);
      case PANEL_TURNED ->
          say("%s lies turned end for end: all is measured from its far end.", mark);
      case SECOND_LEFT ->
          say("%s is bored as a second left side, on the face that looks out of the case.", mark);
      case HOLE_SKIPPED -> skipped(mark);
      case MASKED_HOLE -> open(slips.tape().first().orElseThrow(), mark);
      case SPACER_FORGOTTEN -> forgotten(slips.spacers().forgotten().orElseThrow(), mark);
      case WRONG_SPACER -> swapped(slips.spacers().swapped().orElseThrow(), mark);
      case PIN_IN_WRONG_HOLE ->
          say(
              "When the guide is moved along the %s of %s, its pin goes into the hole below the"
                  + " right one: all that is bored after it lies a hole too low.",
              first.purpose(), mark);
      case STOP_SLIPPED ->
          say("The stop slips and lets the bit %s deeper.", figures.set("slip", Setting.STOP_SLIP));
      case OTHER_BIT -> new OtherBitWords(figures, first.diameter()).what(slips.bit());
    };
  }

  private String open(TapeBlunder.Done done, String mark) {
    return say(
        "Hole %d of the guide is not taped over, and bored through into %s.",
        figures.count("open", "hole of the guide that is left open", done.number(), "numbered"),
        mark);
  }

  private String forgotten(SpacerBlunder.Done done, String mark) {
    return say(
        done.purposes().size() == 1
            ? "For the %s of %s the guide is laid on without its spacer %s."
            : "For each row of %2$s the guide is laid on without its spacer %3$s.",
        done.purposes().getFirst(),
        mark,
        spacer("spacer", "size of the spacer that belongs there", done.right()));
  }

  private String swapped(SpacerBlunder.Done done, String mark) {
    return say(
        "For the %s of %s spacer %s is taken for %s.",
        done.purposes().getFirst(),
        mark,
        spacer("other-spacer", "size of the other spacer", done.instead().orElseThrow()),
        spacer("spacer", "size of the spacer that belongs there", done.right()));
  }

  private String spacer(String what, String title, Step.Between spacer) {
    return say(
        "%s (%s)", spacer.spacer(), figures.length(what, title, spacer.size(), "as it is made"));
  }

  private String endForEnd() {
    if (isGuided()) {
      return "The guide lies on %s with its far end where its zero belongs, its block off.";
    }
    if (!together.isAlone()) {
      return "The stick lies along the joint of %s and "
          + together.words()
          + " with its zero at the far end.";
    }
    return names.isStanding()
        ? "The stick stands at %s upside down, its zero at the panel above."
        : "The stick lies on %s with its zero at the far end.";
  }

  private String skipped(String mark) {
    return rows.missing().stream()
        .findFirst()
        .map(
            hole ->
                say(
                    "%s is left out; the next ones lie where they belong, but count one less.",
                    skipped(
                        figures.count(
                            "skipped",
                            "hole that is left out",
                            rows.number(hole),
                            "counted from below"),
                        hole.purpose(),
                        mark)))
        .orElseThrow();
  }

  private String skipped(int number, String row, String mark) {
    return together.isAlone()
        ? say("Hole %d of the %s of %s", number, row, mark)
        : say("The line of hole %d across %s and %s", number, mark, together.words());
  }

  private boolean isGuided() {
    return ways.manner(names.hole(rows.wanted().getFirst())) == CaseWays.Manner.GUIDED;
  }

  String harmless(Mistake mistake) {
    return switch (mistake) {
      case END_FOR_END, PANEL_TURNED -> "the rows are the same from both ends";
      case WRONG_EDGE -> "the row lies as far from either edge";
      case SECOND_LEFT,
          HOLE_SKIPPED,
          MASKED_HOLE,
          PIN_IN_WRONG_HOLE,
          SPACER_FORGOTTEN,
          WRONG_SPACER,
          STOP_SLIPPED,
          OTHER_BIT ->
          "the holes are the same";
    };
  }

  String shows(Mistake mistake) {
    List<String> all = new ArrayList<>();
    if (rows.made().isEmpty()) {
      all.add(
          mistake == Mistake.STOP_SLIPPED
              ? "Every hole goes right through the panel."
              : "Not one hole is bored.");
    } else {
      all.add(difference());
      all.add(new WorstShelf(figures, names, rows, together).words());
    }
    mishaps.stream().map(m -> say("At the bench: %s.", m.what())).findFirst().ifPresent(all::add);
    return String.join(" ", all);
  }

  private String difference() {
    if (rows.missing().isEmpty()) {
      return say(
          "%d holes are bored for %d.",
          figures.count("bored", "holes that are bored", rows.made().size(), "counted"),
          figures.count("holes", "holes of the rows", rows.wanted().size(), "counted"));
    }
    Bore wanted = rows.lowestMissing();
    if (rows.instead(wanted).isEmpty()) {
      return say(
          "All %d holes are bored into %s, none into %s.",
          rows.made().size(), rows.made().getFirst().surface().words(), wanted.surface().words());
    }
    int all = figures.count("holes", "holes of the rows", rows.wanted().size(), "counted");
    int missing =
        figures.count(
            "holes-off",
            "holes that are not as wanted",
            rows.missing().size(),
            "wanted holes that no hole has the place, the diameter and the depth of",
            MistakeFigures.input("n", "holes of the rows", all));
    return say(
        "%d of %d holes %s %s%s.",
        missing,
        all,
        missing == 1 ? "is" : "are",
        rows.extra().isEmpty() ? "missing" : "wrong",
        together.isAlone() ? "" : ", in " + together.words() + " alike");
  }

  /**
   * First what is measured on the panel alone, then what others show.
   *
   * @param otherRows what is measured in these
   */
  String test(Mistake mistake, Check check, OtherBit otherBit, String otherRows) {
    return switch (mistake) {
      case END_FOR_END, PANEL_TURNED -> figures.test(check) + otherRows + " " + beside();
      case HOLE_SKIPPED, MASKED_HOLE, PIN_IN_WRONG_HOLE -> counted() + figures.test(check);
      case WRONG_EDGE, SPACER_FORGOTTEN, WRONG_SPACER -> figures.test(check) + otherRows;
      case SECOND_LEFT -> lying() + figures.test(check) + otherRows;
      case STOP_SLIPPED -> figures.test(check) + " A rod marked so tells it.";
      case OTHER_BIT ->
          figures.test(check)
              + say(" A %s goes in by hand and does not wobble.", plug())
              + OtherBitWords.before(otherBit);
    };
  }

  /** What other panels of the case show later. */
  private String beside() {
    if (!together.isAlone()) {
      return say("A square across both finds nothing: %s is alike.", together.words());
    }
    return BenchProgram.boresAfterAssembly(names.built())
        ? "Later a batten on pins of one level is level across the bay."
        : "Later, beside the next panel, index ends on one line, holes of one level lie square"
            + " across.";
  }

  private String counted() {
    Bore off = rows.lowestOff();
    return say(
        "Count the %s: %d holes%s. ",
        off.purpose(),
        figures.count(
            "in-row", "holes of the row", SpoiltRows.row(rows.wanted(), off).size(), "counted"),
        otherRows());
  }

  /** All rows of a bay have as many. */
  private String otherRows() {
    List<String> others =
        names.besideFirst(rows.wanted()).stream().map(p -> p.split(",", 2)[0]).toList();
    return others.isEmpty() ? "" : ", the " + String.join(" and ", others) + " as many";
  }

  /** Before a hole is bored, by what is written on the panel. */
  private String lying() {
    PieceLayout layout = PieceLayout.of(names.part());
    Bore first = rows.wanted().getFirst();
    return say(
        "Before a hole is bored in %s: “%s” is written on the face that lies up, and with %s towards"
            + " you %s lies on your %s; left sides have it on the other hand. ",
        names.part().mark(),
        RowNames.written(layout.looking(first.surface())).toUpperCase(Locale.ROOT),
        names.indexEnd(),
        names.indexEdge(),
        new PanelTest(names, rows, figures.style()).hand(first.surface()).word());
  }

  /** What goes into the holes. */
  String plug() {
    return names.grid(rows.wanted().getFirst()).support() instanceof Support.Sleeved
        ? "sleeve"
        : "pin";
  }

  private static String say(String words, Object... values) {
    return String.format(Locale.ROOT, words, values);
  }
}
