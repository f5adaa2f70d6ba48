package fourpin.plan;

import fourpin.bench.BenchRun.Mishap;
import fourpin.bench.Removal.Bore;
import fourpin.job.Setting;
import fourpin.job.Support;
import fourpin.measure.Length;
import fourpin.measure.LengthStyle;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A mistake as a maker meets it. */
final class MistakeWords {

  private final LengthStyle style;
  private final RowNames names;
  private final CaseWays ways;
  private final SpoiltRows rows;
  private final List<Mishap> mishaps;

  MistakeWords(
      LengthStyle style, RowNames names, CaseWays ways, SpoiltRows rows, List<Mishap> mishaps) {
    this.style = style;
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
          say(
              "The stop slips and lets the bit %s deeper.",
              text(names.settings().length(Setting.STOP_SLIP)));
      case OTHER_BIT ->
          otherBit
              .map(bit -> otherBit(bit, first.diameter()))
              .orElse(
                  "No other bit among the tools stated fits where this one of "
                      + text(first.diameter())
                      + " is.");
    };
  }

  private String otherBit(OtherBit bit, Length right) {
    return say(
        bit.isOwn()
            ? "The shop's bit of %s is in, instead of %s."
            : "A bit of %s, which pins are sold for, is in, instead of %s.",
        text(bit.diameter()),
        text(right));
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
    int all = rows.wanted().size();
    int missing = rows.missing().size();
    Optional<Bore> found = rows.instead(wanted);
    if (found.isEmpty()) {
      return say(
          "All %d holes are bored into %s, none into %s.",
          rows.made().size(), rows.made().getFirst().surface().words(), wanted.surface().words());
    }
    Bore made = found.get();
    List<String> off = new ArrayList<>();
    add(off, made.depth().minus(wanted.depth()), "deeper", "shallower");
    add(off, made.diameter().minus(wanted.diameter()), "wider", "narrower");
    add(off, made.length().minus(wanted.length()), "higher", "lower");
    add(off, made.width().minus(wanted.width()), "further from the index edge", "nearer to it");
    return say(
        "%d of %d holes %s not as wanted: the lowest of them, in the %s, is %s.",
        missing, all, missing == 1 ? "is" : "are", wanted.purpose(), String.join(" and ", off));
  }

  private void add(List<String> all, Length by, String more, String less) {
    if (!by.isZero()) {
      all.add(say("%s %s", text(by.abs()), by.isPositive() ? more : less));
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
                    level.number(), names.grid(wanted).bay(), text(level.underside())));
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
              text(wanted.depth()));
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
            which, row, text(right), text(wrong));
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
                    wanted.purpose(), text(wanted.width()), text(made.width())))
        .orElse("");
  }

  private static List<Bore> in(List<Bore> holes, String row) {
    return holes.stream().filter(h -> h.purpose().equals(row)).toList();
  }

  private String text(Length length) {
    return style.text(length);
  }

  private static String say(String words, Object... values) {
    return String.format(Locale.ROOT, words, values);
  }
}
