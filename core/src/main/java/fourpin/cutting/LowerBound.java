package fourpin.cutting;

/**
 * What no layout of the placed parts can go below, whatever its cuts.
 *
 * @param price in the smallest coin
 * @param sheets number of sheets, of whatever size
 */
public record LowerBound(long price, long sheets) {}
