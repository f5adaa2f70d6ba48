package fourpin.plan;

import fourpin.cutting.SawLimits;
import fourpin.cutting.SawLimits.FirstCut;
import fourpin.measure.LengthStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * A limit of the saw that is stated.
 *
 * @param told the setting and its value
 * @param others all limits but this one
 */
record SawLimit(String told, SawLimits others) {

  /** The setting of the first cut. */
  static String firstCut(Wanted.Kind kind) {
    return kind == Wanted.Kind.BOARDS ? "board-first-cut" : "first-cut";
  }

  static List<SawLimit> stated(SawLimits all, Wanted.Kind kind, LengthStyle style) {
    List<SawLimit> stated = new ArrayList<>();
    all.longestRip()
        .ifPresent(
            most -> stated.add(new SawLimit("longest-rip " + style.text(most), all.withAnyRip())));
    all.widestCrosscut()
        .ifPresent(
            most ->
                stated.add(
                    new SawLimit("widest-crosscut " + style.text(most), all.withAnyCrosscut())));
    if (all.first() != FirstCut.EITHER) {
      stated.add(
          new SawLimit(
              firstCut(kind) + " " + all.first().name().toLowerCase(Locale.ROOT),
              all.withFirst(FirstCut.EITHER)));
    }
    if (all.stages() != SawLimits.FREE) {
      stated.add(new SawLimit("cut-stages " + all.stages(), all.withStages(SawLimits.FREE)));
    }
    return stated;
  }

  static String told(List<SawLimit> limits) {
    return limits.stream().map(SawLimit::told).collect(Collectors.joining(", "));
  }
}
