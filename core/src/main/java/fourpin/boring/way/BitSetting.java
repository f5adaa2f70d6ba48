package fourpin.boring.way;

import fourpin.measure.Length;
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
 */
public record BitSetting(
    String tool,
    Length diameter,
    Length runs,
    Length over,
    Length depth,
    Length point,
    Length reserve) {

  /** What the stop is set to. */
  public Length stop() {
    return stopSum().total();
  }

  /** The same as it comes together: hole plus guide. */
  public Sum stopSum() {
    return Sum.of("hole", depth).plus("guide", over);
  }
}
