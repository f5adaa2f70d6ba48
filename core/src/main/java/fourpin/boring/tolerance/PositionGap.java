package fourpin.boring.tolerance;

import java.util.Optional;

/**
 * How a shelf lies at one place.
 *
 * @param level number in the bay's grid
 * @param gap how the gap under the fourth pin is spread, or under a corner pin of six
 * @param slope how the difference in height from left to right is spread
 * @param proud how the height of a middle pin is spread round the line of its neighbours; the wider
 *     of both sides; none without middle pins
 * @param odds that the gap is more than the one felt, 0 to 1
 * @param usual gap that 95 of 100 shelves stay within, mm
 */
public record PositionGap(
    int bay,
    int level,
    Distribution gap,
    Spread slope,
    Optional<Spread> proud,
    double odds,
    double usual) {

  /** Of all shelves that are said to stay within a distance. */
  public static final double USUAL_SHARE = 0.95;
}
