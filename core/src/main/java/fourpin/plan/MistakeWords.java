package fourpin.plan;

import fourpin.bench.BenchRun.Mishap;
import fourpin.bench.Removal.Bore;
import fourpin.job.Setting;
import fourpin.job.Support;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A mistake as a maker meets it. */
final class MistakeWords {

  private final MistakeFigures figures;
  private final RowNames names;
  private final CaseWays ways;
  private final SpoiltRows rows;
  private final List<Mishap> mishaps;

  MistakeWords(
      MistakeFigures figures,
      RowNames names,
      CaseWays ways,
      SpoiltRows rows,
      List<Mishap> mishaps) {
    this.figures = figures;
    this.names = names;
    this.ways = ways;
    this.rows = rows;
    this.mishaps = mishaps;
  }

  String what(Mistake mistake, Optional<OtherBit> otherBit) {
    Bore first = rows.wanted().getFirst();
    String mark = names.part().mark();
    return switch (mistake) {
      case END_FOR_END ->
          isGuided()
              ? say(
                  "The guide lies on %s with its far end where its zero belongs, its block off.",
                  mark)
              : say("The stick lies on %s with its zero at the far end.", mark);
      case WRONG_EDGE -> say("The %s of %s is set out from the wrong edge.", first.purpose(), mark);
      case PANEL_TURNED ->
          say("%s lies turned end for end: all is measured from its far end.", mark);
      case SECOND_LEFT ->
          say("%s is bored as a second left side, on the face that looks out of the case.", mark);
      case HOLE_SKIPPED ->
          say("In the %s of %s every hole is taken one number too high.", first.purpose(), mark);
      case STOP_SLIPPED ->
          say("The stop slips and lets the bit %s deeper.", figures.set("slip", Setting.STOP_SLIP));
      case OTHER_BIT ->
          otherBit
              .map(bit -> otherBit(bit, first.diameter()))
              .orElse(
                  "No other bit among the tools stated fits where this one of "
                      + figures.measured("right-bit", "diameter of the right bit", first.diameter())
                      + " is.");
    };
  }

  private String otherBit(OtherBit bit, Length right) {
    return say(
        bit.isOwn()
            ? "The shop's bit of %s is in, instead of %s."
            : "A bit of %s, which pins are sold for, is in, instead of %s.",
        figures.length(
            "wrong-bit",
            "diameter of the bit that is in",
            bit.diameter(),
            bit.isOwn() ? "as the shop states it" : "the next that pins are sold for"),
        figures.measured("right-bit", "diameter of the right bit", right));
  }

  private boolean isGuided() {
    return ways.manner(names.hole(rows.wanted().getFirst())) == CaseWays.Manner.GUIDED;
  }

  String shows(Mistake mistake) {
    List<String> all = new ArrayList<>();
    if (rows.isAsWanted() && mistake == Mistake.OTHER_BIT) {
      all.add("It can only happen with a borrowed bit.");
    } else if (rows.isAsWanted()) {
      all.add(say("Nothing: %s.", harmless(mistake)));
    } else if (rows.made().isEmpty()) {
      all.add(
          mistake == Mistake.STOP_SLIPPED
              ? "Every hole goes right through the panel."
              : "Not one hole is bored.");
    } else {
      all.add(difference());
      firstLevel().ifPresent(all::add);
    }
    mishaps.stream().map(m -> say("At the bench: %s.", m.what())).findFirst().ifPresent(all::add);
    return String.join(" ", all);
  }

  private static String harmless(Mistake mistake) {
    return switch (mistake) {
      case END_FOR_END, PANEL_TURNED -> "the rows are the same from both ends";
      case WRONG_EDGE -> "the row lies as far from either edge";
      case SECOND_LEFT, HOLE_SKIPPED, STOP_SLIPPED, OTHER_BIT -> "the holes are the same";
    };
  }

  private String difference() {
    Bore wanted = rows.lowestMissing();
    int all = figures.count("holes", "holes of the rows", rows.wanted().size(), "counted");
    int missing =
        figures.count(
            "holes-off",
            "holes that are not as wanted",
            rows.missing().size(),
            "wanted holes that no hole has the place, the diameter and the depth of",
            MistakeFigures.input("n", "holes of the rows", all));
    Optional<Bore> found = rows.instead(wanted);
    if (found.isEmpty()) {
      return say(
          "All %d holes are bored into %s, none into %s.",
          rows.made().size(), rows.made().getFirst().surface().words(), wanted.surface().words());
    }
    Bore made = found.get();
    List<String> off = new ArrayList<>();
    add(off, "depth", made.depth(), wanted.depth(), List.of("deeper", "shallower"));
    add(off, "diameter", made.diameter(), wanted.diameter(), List.of("wider", "narrower"));
    add(off, "height", made.length(), wanted.length(), List.of("higher", "lower"));
    add(
        off,
        "setback",
        made.width(),
        wanted.width(),
        List.of("further from the index edge", "nearer to it"));
    return say(
        "%d of %d holes %s not as wanted: the lowest of them, in the %s, is %s.",
        missing, all, missing == 1 ? "is" : "are", wanted.purpose(), String.join(" and ", off));
  }

  /**
   * @param words for more, and for less
   */
  private void add(List<String> all, String what, Length made, Length wanted, List<String> words) {
    Length by = made.minus(wanted);
    if (!by.isZero()) {
      String off =
          figures.length(
              what + "-off",
              "how far the " + what + " of the lowest hole that is not as wanted is off",
              by.abs(),
              "|m - w|",
              MistakeFigures.input("m", what + " as it is made", made),
              MistakeFigures.input("w", what + " as it is wanted", wanted));
      all.add(say("%s %s", off, by.isPositive() ? words.getFirst() : words.getLast()));
    }
  }

  private Optional<String> firstLevel() {
    Bore wanted = rows.lowestMissing();
    return names
        .level(wanted)
        .map(
            level ->
                say(
                    "It shows first at level %d of bay %d, for a shelf whose underside lies %s above"
                        + " the foot.",
                    level.number(),
                    names.grid(wanted).bay(),
                    figures.measured(
                        "shows-at",
                        "underside of the shelf that it shows at first, above the foot",
                        level.underside())));
  }

  String test(Mistake mistake) {
    Bore wanted = rows.wanted().getFirst();
    return switch (mistake) {
      case END_FOR_END, PANEL_TURNED, HOLE_SKIPPED ->
          say(
              BenchProgram.boresAfterAssembly(names.built())
                  ? "Put pins into holes of one level on both uprights of the bay, front and back: a"
                      + " straight batten on them is level, and so is one from front to back.%s"
                  : "Stand this panel beside the next, index ends on one line: a straightedge laid"
                      + " across holes of one level is square to both.%s",
              ends());
      case WRONG_EDGE -> say("Measure from the index edge to the row.%s", across());
      case SECOND_LEFT ->
          "Lay both sides down with their rows up, index ends on one line and index edges together:"
              + " they are mirror images, and the joints are cut on the faces with the rows.";
      case STOP_SLIPPED ->
          say(
              "Mark a rod at %s: it goes into the first and the last hole up to the mark and no"
                  + " deeper.",
              figures.measured("depth", "depth of the holes as wanted", wanted.depth()));
      case OTHER_BIT ->
          say("A %s goes into the first hole by hand and does not wobble in it.", plug(wanted));
    };
  }

  /** What goes into the holes. */
  private String plug(Bore hole) {
    return names.grid(hole).support() instanceof Support.Sleeved ? "sleeve" : "pin";
  }

  /** The distance of the last hole, or of the first where the last is right. */
  private String ends() {
    if (rows.isAsWanted() || rows.made().isEmpty()) {
      return "";
    }
    String row = rows.lowestMissing().purpose();
    Comparator<Bore> height = Comparator.comparing(Bore::length);
    Length last = in(rows.wanted(), row).stream().max(height).orElseThrow().length();
    Length first = in(rows.wanted(), row).stream().min(height).orElseThrow().length();
    List<Bore> made = in(rows.made(), row);
    if (made.isEmpty()) {
      return "";
    }
    Length madeLast = made.stream().max(height).orElseThrow().length();
    Length madeFirst = made.stream().min(height).orElseThrow().length();
    return last.equals(madeLast)
        ? distance("first", row, first, madeFirst)
        : distance("last", row, last, madeLast);
  }

  private String distance(String which, String row, Length right, Length wrong) {
    return right.equals(wrong)
        ? ""
        : say(
            " The %s hole of the %s lies %s from the index end; %s would be this mistake.",
            which,
            row,
            figures.measured("test-right", "the " + which + " hole from the index end", right),
            figures.measured("test-wrong", "the same with the mistake", wrong));
  }

  private String across() {
    if (rows.isAsWanted() || rows.made().isEmpty()) {
      return "";
    }
    Bore wanted = rows.lowestMissing();
    return rows.instead(wanted)
        .map(
            made ->
                say(
                    " The %s lies %s from it; %s would be this mistake.",
                    wanted.purpose(),
                    figures.measured(
                        "test-right", "the row from the index edge, as wanted", wanted.width()),
                    figures.measured("test-wrong", "the same with the mistake", made.width())))
        .orElse("");
  }

  private static List<Bore> in(List<Bore> holes, String row) {
    return holes.stream().filter(h -> h.purpose().equals(row)).toList();
  }

  private static String say(String words, Object... values) {
    return String.format(Locale.ROOT, words, values);
  }
}
