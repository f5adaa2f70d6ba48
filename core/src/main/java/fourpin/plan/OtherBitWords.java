package fourpin.plan;

import fourpin.job.Setting;
import fourpin.measure.Figure;
import fourpin.measure.Length;
import java.util.Locale;

/** What is said of the bit that is in by mistake. */
final class OtherBitWords {

  private final MistakeFigures figures;
  private final Length right;

  OtherBitWords(MistakeFigures figures, Length right) {
    this.figures = figures;
    this.right = right;
  }

  /** That it is in, or why none can be. */
  String what(OtherBit bit) {
    return switch (bit) {
      case OtherBit.Own(Length bores) ->
          say("The shop's bit of %s is in, instead of %s.", wrong(bores, "as stated"), right());
      case OtherBit.Unstated(Length bores) ->
          say(
              "A bit of %s, the next size that is sold, is in, instead of %s.",
              sold(bores), right());
      case OtherBit.Borrowed(Length bores, OtherBit.Lack lack) ->
          say(
              "A borrowed bit of %s is in, instead of %s: %s.",
              sold(bores), right(), lacking(lack));
      case OtherBit.None(OtherBit.Lack lack) ->
          say("%s, and no other size that is sold goes in either", lacking(lack));
    };
  }

  /** What is done before a bit goes in that is not the shop's own. */
  static String before(OtherBit bit) {
    return bit instanceof OtherBit.Borrowed ? " Measure a borrowed bit before it goes in." : "";
  }

  private String lacking(OtherBit.Lack lack) {
    String all = say("the shop file states no other %s near %s", lack.kind(), right());
    return lack.refused().isEmpty()
        ? all
        : all + " that fits: " + String.join(", ", lack.refused().stream().map(this::why).toList());
  }

  private String why(OtherBit.Refused bit) {
    return say(
        "%s (%s) does not go into %s (%s)",
        bit.name(),
        figures.across("refused", "size of a bit that does not fit", bit.size(), "as stated"),
        bit.into(),
        figures.across("room", "room for it", bit.room(), "as stated or planned"));
  }

  private String right() {
    return figures.across("right-bit", "diameter of the right bit", right);
  }

  private String sold(Length bores) {
    return wrong(
        bores,
        "the next that pins are sold for; wider than all of these, the next whole number of k",
        figures.input("k", Setting.CUTTER_STEP));
  }

  private String wrong(Length bores, String formula, Figure.Input... inputs) {
    return figures.across("wrong-bit", "diameter of the bit that is in", bores, formula, inputs);
  }

  private static String say(String words, Object... values) {
    return String.format(Locale.ROOT, words, values);
  }
}
