package fourpin.shop.file;

import fourpin.job.Tool;
import fourpin.measure.Length;
import java.util.List;

/** What bores by hand and on the drill press. */
final class DrillForms {

  private static final Key<Length> DRILL_LENGTH =
      Key.required(
          "length",
          Words.length("80 mm", "800 mm"),
          "from the bit's point to the back of the drill: the room it needs in front of a face");

  static final Form<Tool.HandDrill> HAND_DRILL =
      ToolForm.of(
          "a hand drill",
          List.of(DRILL_LENGTH),
          v -> new Tool.HandDrill(v.name(), v.get(DRILL_LENGTH), v.find(ToolForm.BUY)));

  private static final Key<Length> DIAMETER =
      Key.required("diameter", Words.length("1 mm", "60 mm"), "of the hole that it bores");
  private static final Key<Length> POINT =
      Key.required(
          "point",
          Words.length("0 mm", "30 mm"),
          "how far its point reaches beyond the full diameter");
  private static final Key<Length> REACH =
      Key.required(
          "reach", Words.length("5 mm", "600 mm"), "of the full diameter, out of the chuck");

  static final Form<Tool.PlainBit> BIT =
      ToolForm.of("a bit", List.of(DIAMETER, POINT, REACH), DrillForms::plainBit);

  private static final Key<Length> NOSE =
      Key.required(
          "nose",
          Words.length("2 mm", "60 mm"),
          "outside diameter of the sleeve that finds the hole, at its shoulder if it tapers");
  private static final Key<Length> TIP =
      Key.optional(
          "tip",
          Words.length("2 mm", "60 mm"),
          "the nose's, as of a straight one",
          "diameter of the nose at its end");
  private static final Key<Length> NOSE_LENGTH =
      Key.optional(
          "nose-length",
          Words.length("0.5 mm", "100 mm"),
          "how deep the nose enters is not checked",
          "from the nose's end to its shoulder: the length of the taper, if it tapers");
  private static final Key<Length> BEYOND =
      Key.required(
          "reach",
          Words.length("1 mm", "200 mm"),
          "of the full diameter beyond the nose, pressed home");

  static final Form<Tool.CentringBit> CENTRING_BIT =
      ToolForm.of(
          "a centring bit",
          List.of(DIAMETER, NOSE, TIP, NOSE_LENGTH, POINT, BEYOND),
          DrillForms::centringBit);

  private static final Key<Length> THROAT =
      Key.required("throat", Words.length("50 mm", "1 m"), "from the bit's centre to the column");
  private static final Key<Length> TABLE =
      Key.required("table", Words.length("80 mm", "3 m"), "width of the table across the fence");
  private static final Key<Length> STROKE =
      Key.required("stroke", Words.length("20 mm", "400 mm"), "of the quill");
  private static final Key<Length> OPENING =
      Key.required(
          "opening", Words.length("50 mm", "2 m"), "most height from the table to the bit's point");

  static final Form<Tool.DrillPress> DRILL_PRESS =
      ToolForm.of("a drill press", List.of(THROAT, TABLE, STROKE, OPENING), DrillForms::drillPress);

  private DrillForms() {}

  private static Tool.PlainBit plainBit(Values v) {
    requirePointOnBit(v, REACH);
    return new Tool.PlainBit(
        v.name(), v.get(DIAMETER), v.get(POINT), v.get(REACH), v.find(ToolForm.BUY));
  }

  private static void requirePointOnBit(Values v, Key<Length> reach) {
    v.require(
        v.get(POINT).isLessThan(v.get(reach)),
        POINT,
        "the point reaches further than the bit behind it",
        "check point and reach, or swap them");
  }

  private static Tool.DrillPress drillPress(Values v) {
    v.require(
        v.get(OPENING).isAtLeast(v.get(STROKE)),
        STROKE,
        "the quill travels further than it is from the bit to the table",
        "check stroke and opening, or swap them");
    return new Tool.DrillPress(
        v.name(), v.get(THROAT), v.get(TABLE), v.get(STROKE), v.get(OPENING), v.find(ToolForm.BUY));
  }

  private static Tool.CentringBit centringBit(Values v) {
    requirePointOnBit(v, BEYOND);
    Length nose = v.get(NOSE);
    Length tip = v.find(TIP).orElse(nose);
    v.require(
        nose.isAtLeast(tip),
        TIP,
        "the nose is wider at its end than at its shoulder",
        "check both, or swap them");
    v.require(
        v.get(DIAMETER).isLessThan(Length.min(nose, tip)),
        DIAMETER,
        "a bit is thinner than the nose that it runs in",
        "check the bit and its nose");
    return new Tool.CentringBit(
        v.name(),
        v.get(DIAMETER),
        nose,
        tip,
        v.find(NOSE_LENGTH),
        v.get(POINT),
        v.get(BEYOND),
        v.find(ToolForm.BUY));
  }
}
