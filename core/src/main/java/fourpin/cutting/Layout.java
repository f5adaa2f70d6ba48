package fourpin.cutting;

import java.util.List;

/** An answer: the sheets to cut, what is left out, and how good the answer can be shown to be. */
public record Layout(List<SheetPattern> patterns, List<Unplaced> unplaced, LowerBound bound) {

  public Layout {
    patterns = List.copyOf(patterns);
    unplaced = List.copyOf(unplaced);
  }

  /** The same with another bound. */
  Layout with(LowerBound other) {
    return new Layout(patterns, unplaced, other);
  }

  /** With the better of its bound and that of another layout, where both place all parts. */
  Layout raised(Layout other) {
    return unplaced.isEmpty() && other.unplaced.isEmpty() ? with(bound.raised(other.bound)) : this;
  }

  /** The price of all sheets in the smallest coin. */
  public long price() {
    return patterns.stream()
        .mapToLong(p -> Math.multiplyExact(p.sheet().price(), (long) p.quantity()))
        .sum();
  }

  /** The number of sheets. */
  public long sheets() {
    return patterns.stream().mapToLong(SheetPattern::quantity).sum();
  }

  /** Whether all parts are placed, and nothing can be cheaper. */
  public boolean isProven() {
    return unplaced.isEmpty() && bound.reachedBy(price(), sheets());
  }

  /**
   * How far the price may be above the best possible: 0.02 is 2 %; 0 where it is proven to be the
   * best; infinite where the bound is nothing at all, which says nothing.
   */
  public double priceGap() {
    return gap(price(), bound.price());
  }

  /** How far the number of sheets may be above the fewest possible, in the same way. */
  public double sheetGap() {
    return gap(sheets(), bound.sheets());
  }

  private static double gap(long found, long bound) {
    return found == bound ? 0 : (double) (found - bound) / bound;
  }
}
