package fourpin.shop.file;

import fourpin.job.Tool;
import fourpin.job.Tool.StripKind;
import fourpin.measure.Length;
import java.util.List;

/** Strips that are sold with holes, and stock that guides are made from. */
final class StripForm {

  private static final int MOST_SPACES = 1000;
  private static final int LONGEST_MATERIAL = 40;

  private static final Length LEAST_PITCH = Length.mm(5);
  private static final Length MOST_PITCH = Length.mm(200);

  /**
   * @param over so many spaces
   */
  private record Pitch(Length over, int spaces) {
    Length each() {
      return over.over(spaces);
    }
  }

  private static final Key<Length> OVER =
      Key.required(
          "over",
          Words.length("10 mm", "10 m"),
          "from the centre of a hole to the centre of one far from it, as measured");
  private static final Key<Integer> SPACES =
      Key.required(
          "spaces", Words.whole(1, MOST_SPACES), "how many spaces lie between those two holes");
  private static final Form<Pitch> PITCH_FORM =
      Form.of("a strip's pitch", List.of(OVER, SPACES), StripForm::pitch);

  private static final Key<Length> HOLE =
      Key.required("hole", Words.length("1 mm", "40 mm"), "diameter of its holes");
  private static final Key<Pitch> PITCH =
      Key.required(
          "pitch", PITCH_FORM, "from hole to hole, measured over many holes so that it is true");
  private static final Key<Length> FROM_END =
      Key.required(
          "from-end",
          Words.length("0 mm", "500 mm"),
          "from its end to the centre of the first hole");
  private static final Key<Length> FROM_EDGE =
      Key.required(
          "from-edge",
          Words.length("0.5 mm", "500 mm"),
          "from its index edge to the centres of the holes");
  private static final Key<Length> STRIP_THICKNESS =
      Key.required("thickness", Words.length("0.3 mm", "30 mm"), "by calliper");
  private static final Key<Length> STRIP_LENGTH =
      Key.required("length", Words.length("50 mm", "6 m"), "of the piece at hand");
  private static final Key<Length> STRIP_WIDTH =
      Key.required("width", Words.length("5 mm", "1.3 m"), "of the piece at hand");

  private static final Key<String> MATERIAL =
      Key.required("material", Words.free("a material", "MDF", LONGEST_MATERIAL), "in your words");
  private static final Key<Length> THICKNESS =
      Key.required("thickness", Words.length("2 mm", "60 mm"), "by calliper");
  private static final Key<Length> LENGTH =
      Key.required("length", Words.length("100 mm", "4 m"), "of the longest piece at hand");
  private static final Key<Length> WIDTH =
      Key.required("width", Words.length("20 mm", "2.5 m"), "of the widest piece at hand");

  static final Form<Tool.GuideStock> GUIDE_STOCK =
      ToolForm.of("guide stock", List.of(MATERIAL, THICKNESS, LENGTH, WIDTH), StripForm::stock);

  private StripForm() {}

  private static Tool.GuideStock stock(Values v) {
    requireFlat(v, THICKNESS, WIDTH);
    return new Tool.GuideStock(
        v.name(),
        v.get(MATERIAL),
        v.get(THICKNESS),
        v.get(LENGTH),
        v.get(WIDTH),
        v.find(ToolForm.BUY));
  }

  private static void requireFlat(Values v, Key<Length> thickness, Key<Length> width) {
    v.require(
        v.get(thickness).isLessThan(v.get(width)),
        thickness,
        "what a guide is made from is thinner than it is wide",
        "check both, or swap them");
  }

  static Form<Tool.PerforatedStrip> of(StripKind kind) {
    return ToolForm.of(
        kind == StripKind.STEEL ? "a steel strap" : "a hardboard strip",
        List.of(HOLE, PITCH, FROM_END, FROM_EDGE, STRIP_THICKNESS, STRIP_LENGTH, STRIP_WIDTH),
        v -> strip(kind, v));
  }

  private static Pitch pitch(Values v) {
    Pitch pitch = new Pitch(v.get(OVER), v.get(SPACES));
    v.require(
        pitch.each().isAtLeast(LEAST_PITCH) && MOST_PITCH.isAtLeast(pitch.each()),
        OVER,
        "divided by the spaces it gives a pitch that is not from 5 mm to 200 mm",
        "check both; spaces are one less than the holes counted");
    return pitch;
  }

  private static Tool.PerforatedStrip strip(StripKind kind, Values v) {
    requireHolesInside(v);
    v.require(
        v.get(HOLE).isLessThan(v.get(PITCH).each()),
        HOLE,
        "holes so wide, at this pitch, run into each other",
        "check hole and pitch");
    requireRow(v);
    return new Tool.PerforatedStrip(
        v.name(),
        kind,
        v.get(HOLE),
        v.get(PITCH).over(),
        v.get(PITCH).spaces(),
        v.get(FROM_END),
        v.get(FROM_EDGE),
        v.get(STRIP_THICKNESS),
        v.get(STRIP_LENGTH),
        v.get(STRIP_WIDTH),
        v.find(ToolForm.BUY));
  }

  /** One hole is no row. */
  private static void requireRow(Values v) {
    boolean first = v.get(FROM_END).isLessThan(v.get(STRIP_LENGTH));
    v.require(
        first,
        FROM_END,
        "the first hole lies beyond the strip's length",
        "check from-end and length");
    v.require(
        !first || v.get(FROM_END).plus(v.get(PITCH).each()).isLessThan(v.get(STRIP_LENGTH)),
        FROM_END,
        "the second hole lies beyond the strip's length, and one hole is no row",
        "check from-end, pitch and length");
  }

  /** A hole wider than the strip is told once, not as running out over both edges too. */
  private static void requireHolesInside(Values v) {
    boolean narrow = v.get(HOLE).isLessThan(v.get(STRIP_WIDTH));
    Length radius = v.get(HOLE).over(2);
    v.require(narrow, HOLE, "the hole is as wide as the strip or wider", "check hole and width");
    if (narrow) {
      requireFlat(v, STRIP_THICKNESS, STRIP_WIDTH);
    }
    v.require(
        !narrow || v.get(STRIP_WIDTH).isMoreThan(v.get(FROM_EDGE).plus(radius)),
        FROM_EDGE,
        "holes there run out over the far edge of the strip",
        "check from-edge, hole and width");
    v.require(
        !narrow || v.get(FROM_EDGE).isMoreThan(radius),
        FROM_EDGE,
        "holes there run out over the index edge of the strip",
        "check from-edge and hole: it is measured to the holes' centres");
  }
}
