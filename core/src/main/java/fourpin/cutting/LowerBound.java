package fourpin.cutting;

/**
 * What no layout of the placed parts can go below, whatever its cuts.
 *
 * @param price in the smallest coin
 * @param sheets number of sheets, of whatever size
 */
public record LowerBound(long price, long sheets) {

  /**
   * Whether an answer is proven to be the best: by price, or by number where nothing has a price.
   */
  public boolean reachedBy(long otherPrice, long otherSheets) {
    return price > 0 ? otherPrice == price : otherPrice == 0 && otherSheets == sheets;
  }

  /** The better of each of two bounds of the same parts. */
  LowerBound raised(LowerBound other) {
    return new LowerBound(Math.max(price, other.price), Math.max(sheets, other.sheets));
  }
}
