package fourpin.sheets.packet;

import fourpin.bench.Numbers;
import fourpin.boring.way.Clamping;
import fourpin.boring.way.Clamping.Bearing;
import fourpin.boring.way.Clamping.Reach;
import fourpin.casework.Face;
import fourpin.measure.Length;

/** How a guide is clamped, in a maker's words. */
record ClampingWords(Words words) {

  /** The guide's edge at the panel's. */
  String edge(Clamping clamping) {
    String edge = clamping.edge() == Face.FRONT ? "front edge" : "back edge";
    Length across = clamping.across();
    if (across.isZero()) {
      return "guide's " + edge + " flush with the panel's " + edge;
    }
    return across.isNegative()
        ? "guide's " + edge + " stands " + words.length(across.abs()) + " over the panel's " + edge
        : "guide's "
            + edge
            + " against a strip "
            + words.length(across)
            + " wide that is flush with the panel's "
            + edge;
  }

  /** The guide's block, or its end, on what it bears on. */
  String end(Clamping clamping) {
    return switch (clamping.bearing()) {
      case Bearing.End _ when clamping.along().isZero() -> "block against the lower end";
      case Bearing.End _ ->
          "spacer "
              + words.length(clamping.along().abs())
              + " thick between the block and the lower end";
      case Bearing.PanelBelow(String mark, Length spacer) ->
          "square end on panel "
              + mark
              + (spacer.isZero() ? "" : ", spacer " + words.length(spacer) + " thick between");
    };
  }

  /** What is bored from one place. */
  String reach(Reach reach) {
    return reach
        .step()
        .map(
            step ->
                "move the guide along until a pin through its hole "
                    + step.pin()
                    + " goes into the hole just bored through "
                    + step.into()
                    + ", clamp, bore holes "
                    + Numbers.words(reach.holes(), "hole"))
        .orElse("bore holes " + Numbers.words(reach.holes(), "hole"));
  }
}
