package fourpin.boring.way;

import fourpin.measure.Length;
import fourpin.measure.Source;
import fourpin.measure.Sum;

/**
 * How a bit is set for one depth of hole.
 *
 * @param tool what it is, in words
 * @param diameter that it bores
 * @param runs diameter of what runs in the guide's holes: the bit itself, a nose, a bushing; zero
 *     without a guide
 * @param over thickness of the guide that the stop has to reach over; zero without
 * @param depth of the hole to the full diameter
 * @param point how far the bit's point reaches beyond
 * @param reserve wood left behind the point in the thinnest panel bored so
 * @param pointFrom who says how far the point reaches: a tool of the shop, or a setting
 */
public record BitSetting(
    String tool,
    Length diameter,
    Length runs,
    Length over,
    Length depth,
    Length point,
    Length reserve,
    Source pointFrom) {

  /** A bit whose point is stated. */
  public BitSetting(
      String tool,
      Length diameter,
      Length runs,
      Length over,
      Length depth,
      Length point,
      Length reserve) {
    this(tool, diameter, runs, over, depth, point, reserve, Source.STATED);
  }

  /** The same, with who says how far the point reaches. */
  BitSetting pointFrom(Source source) {
    return new BitSetting(tool, diameter, runs, over, depth, point, reserve, source);
  }

  /** What the stop is set to. */
  public Length stop() {
    return stopSum().total();
  }

  /** The same as it comes together: hole plus guide. */
  public Sum stopSum() {
    return Sum.of("hole", depth).plus("guide", over);
  }
}
