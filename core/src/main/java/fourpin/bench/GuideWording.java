package fourpin.bench;

import fourpin.bench.Step.GuideHole;
import fourpin.measure.Length;
import fourpin.measure.LengthStyle;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Work through guides as instructions. */
final class GuideWording {

  private final LengthStyle style;

  GuideWording(LengthStyle style) {
    this.style = style;
  }

  String make(Step.MakeGuide make) {
    String block = make.block().isPositive() ? "the stop face of its block" : "its index end";
    return say(
        "%s long from %s (zero), %s wide, %s thick. %s.",
        text(make.length()), block, text(make.width()), text(make.thickness()), holes(make));
  }

  /** Holes that lie on one line and have one size share a sentence. */
  private String holes(Step.MakeGuide make) {
    record Line(Length across, Length diameter) {}
    Map<Line, List<GuideHole>> lines = new LinkedHashMap<>();
    for (GuideHole hole : make.holes()) {
      lines
          .computeIfAbsent(new Line(hole.across(), hole.diameter()), _ -> new ArrayList<>())
          .add(hole);
    }
    List<String> all = new ArrayList<>();
    lines.forEach((line, holes) -> all.add(line(line.across(), line.diameter(), holes)));
    return String.join(". ", all);
  }

  private String line(Length across, Length diameter, List<GuideHole> holes) {
    return say(
        "Holes of %s, centres %s from its index edge, numbered and measured from zero: %s",
        style.diameter(diameter),
        text(across),
        NumberedMarks.words(
            style,
            holes.stream().map(GuideHole::number).toList(),
            holes.stream().map(GuideHole::along).toList()));
  }

  String make(Step.MakeSpacer make) {
    return say(
        "%s from side to side, which is what it keeps apart, %s long, from %s.",
        text(make.size()), text(make.length()), make.stock());
  }

  String mask(Step.MaskHoles mask) {
    return say(
        "on both sides, tape over %s: nothing is bored through %s.",
        holes(mask.numbers()), mask.numbers().size() == 1 ? "it" : "them");
  }

  String bit(Step.SetBit bit) {
    boolean guided = bit.runs().isPositive();
    return say(
        "%s, bores %s%s; stop set so that the full diameter goes %s beyond the %s.",
        bit.tool(),
        style.diameter(bit.diameter()),
        guided ? say(", %s runs in the holes of the guide", style.diameter(bit.runs())) : "",
        text(bit.stop()),
        guided ? "guide's upper side" : "surface");
  }

  String clamp(Step.ClampGuide clamp) {
    return say(
        "guide “%s” on %s, its side %s showing: %s; %s.",
        clamp.guide(), clamp.surface().words(), clamp.showing(), ends(clamp), edges(clamp.edges()));
  }

  private String ends(Step.ClampGuide clamp) {
    Step.Against ends = clamp.ends();
    boolean index = ends.ofGuide() == Surface.INDEX_END;
    String place = ends.ofPiece().words();
    String far = say("%s from %s of the piece", text(ends.gap().abs()), place);
    if (clamp.on().isPresent()) {
      return say("its index end stands on %s, %s", rest(clamp.on().get()), far);
    }
    String what = index ? "its block" : "its far end";
    if (ends.gap().isZero()) {
      return say("%s against %s", what, place);
    }
    return ends.spacer()
        .map(between -> say("%s with spacer %s against %s", what, text(between), place))
        .orElseGet(
            () ->
                ends.gap().isNegative()
                    ? say("%s stands %s over %s", what, text(ends.gap().abs()), place)
                    : say("%s %s", index ? "its zero" : what, far));
  }

  private String rest(Step.Rest rest) {
    return rest.spacer()
        .map(between -> say("spacer %s on %s", text(between), rest.piece()))
        .orElse(rest.piece());
  }

  private String edges(Step.Against edges) {
    String what = "its " + edges.ofGuide().words().replace("the ", "");
    String place = edges.ofPiece().words();
    Length gap = edges.gap();
    if (gap.isZero()) {
      return say("%s flush with %s", what, place);
    }
    if (gap.isNegative()) {
      return say("%s stands %s over %s", what, text(gap.abs()), place);
    }
    return edges
        .spacer()
        .map(b -> say("%s against spacer %s, which lies flush with %s", what, text(b), place))
        .orElseGet(() -> say("%s %s from %s", what, text(gap), place));
  }

  String shift(Step.ShiftGuide shift) {
    return say(
        "move guide “%s” along the same edge, same side showing, until the pin through its hole %d"
            + " goes into the hole just bored through its hole %d; clamp it there.",
        shift.guide(), shift.pin(), shift.into());
  }

  String fit() {
    return "off the panel with it, and its block on again by the same holes, both battens on zero.";
  }

  String bore(Step.BoreThrough bore) {
    int count = bore.numbers().size();
    return say(
        "%s: through guide “%s” bore %s: %d %s in all.",
        bore.purpose(), bore.guide(), holes(bore.numbers()), count, count == 1 ? "hole" : "holes");
  }

  private static String holes(List<Integer> numbers) {
    return (numbers.size() == 1 ? "hole " : "holes ") + Numbers.words(numbers, "hole");
  }

  private String text(Step.Between between) {
    return say("“%s” (%s)", between.spacer(), text(between.size()));
  }

  private String text(Length length) {
    return style.text(length);
  }

  private static String say(String words, Object... values) {
    return String.format(Locale.ROOT, words, values);
  }
}
