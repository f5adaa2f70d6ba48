package fourpin.cutting;

import fourpin.measure.Length;

/**
 * Identical sheets to cut from.
 *
 * @param name different for each stock of a problem
 * @param length before trimming, above zero
 * @param width before trimming, above zero; may exceed the length
 * @param price of one sheet in the smallest coin of the job's money, at least zero; what is on hand
 *     and paid for usually counts zero
 */
public record StockSheet(
    String name,
    Length length,
    Length width,
    SheetGrain grain,
    Supply supply,
    long price,
    Origin origin) {

  public StockSheet {
    Require.named(name, "name of a sheet");
    Require.positive(length, "length of sheet " + name);
    Require.positive(width, "width of sheet " + name);
    Require.notNegative(price, "price of sheet " + name);
  }

  /** The same in another supply. */
  StockSheet with(Supply other) {
    return new StockSheet(name, length, width, grain, other, price, origin);
  }
}
