package fourpin.bench;

import fourpin.measure.Length;
import fourpin.measure.LengthStyle;
import java.util.ArrayList;
import java.util.List;

/**
 * The settings of a fence for passes side by side, as they are printed. Two edges that are each
 * rounded to the nearest part can come nearer to each other than planned, and what should go into
 * the groove then has no play. So the nearest pass is rounded, and the farthest is set from it as
 * printed: the groove comes out at least as wide as planned, and less than a part wider. Passes
 * between them lie no farther apart than planned, so that no ridge stays where the last one
 * overlaps by a part for each of them.
 */
final class FenceSettings {

  private final LengthStyle style;

  FenceSettings(LengthStyle style) {
    this.style = style;
  }

  /**
   * @param fences to the near side of each cut, the farthest first; at least one
   * @return one for each, as printed
   */
  List<Length> printed(List<Length> fences) {
    Length near = fences.getLast();
    Length shown = style.rounded(near);
    List<Length> printed = new ArrayList<>();
    printed.add(style.roundedUp(shown.plus(fences.getFirst().minus(near))));
    for (int i = 1; i < fences.size() - 1; i++) {
      Length gap = fences.get(i - 1).minus(fences.get(i));
      printed.add(style.roundedUp(printed.getLast().minus(gap)));
    }
    if (fences.size() > 1) {
      printed.add(shown);
    }
    return printed;
  }
}
