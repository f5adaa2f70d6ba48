package fourpin.sheets.packet;

import fourpin.bench.Numbers;
import fourpin.boring.BayGrid;
import fourpin.boring.way.Clamping;
import fourpin.boring.way.Clamping.Bearing;
import fourpin.boring.way.Clamping.Reach;
import fourpin.boring.way.Guide;
import fourpin.casework.Face;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

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

  /** What is bored from each place; the block comes off before the guide is moved on. */
  String reaches(Clamping clamping) {
    boolean block = clamping.bearing() instanceof Bearing.End;
    List<String> told = new ArrayList<>();
    for (Reach reach : clamping.reaches()) {
      told.add((block && told.size() == 1 ? "take the block off, " : "") + reach(reach));
    }
    return String.join(". Then ", told);
  }

  /** Numbers on the guide and numbers of the bay, at the ends of what is bored. */
  String key(Clamping clamping, Guide guide, Length lowerEnd, BayGrid grid) {
    List<Reach> reaches = clamping.reaches();
    int first = reaches.getFirst().holes().getFirst();
    int last = reaches.getLast().holes().getLast();
    Length zero = lowerEnd.plus(clamping.along());
    Length moved = reaches.stream().map(r -> moved(r, guide)).reduce(zero, Length::plus);
    return String.format(
        Locale.ROOT,
        "hole %d of the guide is level %d of the bay, hole %d%s level %d",
        first,
        level(zero.plus(guide.hole(first).along()), grid),
        last,
        reaches.size() == 1 ? "" : ", where the guide comes to last,",
        level(moved.plus(guide.hole(last).along()), grid));
  }

  private static Length moved(Reach reach, Guide guide) {
    return reach
        .step()
        .map(step -> guide.hole(step.into()).along().minus(guide.hole(step.pin()).along()))
        .orElse(Length.ZERO.in(guide.length().unit()));
  }

  /** Number of the level that a hole so high above the foot of the case is of. */
  private static int level(Length height, BayGrid grid) {
    return grid.levels().stream()
        .min(Comparator.comparing(level -> level.height().minus(height).abs()))
        .orElseThrow()
        .number();
  }

  /** What is bored from one place. */
  private String reach(Reach reach) {
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
