package fourpin.shop.file;

import fourpin.job.Tool;
import fourpin.measure.Length;
import java.util.HashSet;
import java.util.List;

/** The table saw, and machines that bore at coordinates. */
final class MachineForms {

  private static final int MOST_DIAMETERS = 40;

  private static final Key<Length> CUT =
      Key.required(
          "cut",
          Words.length("0.5 mm", "60 mm"),
          "widest groove of one pass: the blade's kerf, or the width of a grooving set");
  private static final Key<Length> DEPTH =
      Key.required("depth", Words.length("5 mm", "300 mm"), "of the deepest cut");

  static final Form<Tool.TableSaw> TABLE_SAW =
      ToolForm.of(
          "a table saw",
          List.of(CUT, DEPTH),
          v -> new Tool.TableSaw(v.name(), v.get(CUT), v.get(DEPTH), v.find(ToolForm.BUY)));

  private static final Key<Length> BED_LENGTH =
      Key.required("bed-length", Words.length("200 mm", "12 m"), "longest panel that it takes");
  private static final Key<Length> BED_WIDTH =
      Key.required("bed-width", Words.length("100 mm", "4 m"), "widest panel that it takes");
  private static final Key<List<Length>> DIAMETERS =
      Key.required(
          "diameters",
          new ListOf<>(Words.length("1 mm", "60 mm"), MOST_DIAMETERS),
          "of the bits that it has, each once");
  private static final Key<Length> SPACING =
      Key.optional(
          "spacing",
          Words.length("5 mm", "500 mm"),
          "one spindle that goes anywhere",
          "of its spindles, where they are fixed in a row");

  static final Form<Tool.Machine> MACHINE =
      ToolForm.of(
          "a machine", List.of(BED_LENGTH, BED_WIDTH, DIAMETERS, SPACING), MachineForms::machine);

  private MachineForms() {}

  private static Tool.Machine machine(Values v) {
    List<Length> diameters = v.get(DIAMETERS);
    v.require(
        new HashSet<>(diameters).size() == diameters.size(),
        DIAMETERS,
        "a diameter is listed twice",
        "list each once");
    v.require(
        v.find(SPACING).filter(s -> s.isAtLeast(v.get(BED_LENGTH))).isEmpty(),
        SPACING,
        "the spindles stand further apart than the bed is long",
        "check spacing and bed-length, or leave spacing out for a single spindle");
    return new Tool.Machine(
        v.name(),
        v.get(BED_LENGTH),
        v.get(BED_WIDTH),
        diameters,
        v.find(SPACING),
        v.find(ToolForm.BUY));
  }
}
