package fourpin.cutting;

import fourpin.measure.Length;

/**
 * Which offcuts are worth keeping: those at least so long and so wide, whichever way they lie, or
 * as wide as the stock that they come from, so that the ends of narrow boards count too.
 *
 * @param length least longer side, at least zero
 * @param width least shorter side, at least zero
 */
public record Reusable(Length length, Length width) {

  public Reusable {
    Require.notNegative(length, "length of a reusable offcut");
    Require.notNegative(width, "width of a reusable offcut");
  }

  /** Whether an offcut of that size is kept, that comes from such stock. */
  public boolean keeps(Length along, Length across, StockSheet stock) {
    Length longer = Length.max(along, across);
    Length shorter = Length.min(along, across);
    return longer.isAtLeast(length) && shorter.isAtLeast(Length.min(width, stock.width()));
  }

  /** The area of the largest offcut of a sheet that is kept, in square millimetres, or zero. */
  public double largest(SheetPattern pattern) {
    return pattern.offcuts().stream()
        .filter(offcut -> keeps(offcut.length(), offcut.width(), pattern.sheet()))
        .mapToDouble(offcut -> offcut.length().mm() * offcut.width().mm())
        .max()
        .orElse(0);
  }
}
