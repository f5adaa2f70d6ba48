package fourpin.cutting;

import fourpin.measure.Length;
import java.util.List;

/**
 * Identical sheets to cut from.
 *
 * @param name different for each stock of a problem
 * @param length before trimming, above zero
 * @param width before trimming, above zero; may exceed the length
 * @param price of one sheet in the smallest coin of the job's money, at least zero; what is on hand
 *     and paid for usually counts zero
 * @param defects that no part may hold anything of; of stock with defects there is one at most
 * @param roughEdge all that goes at the near edge, kerf included, of what is ripped, before it is
 *     ripped, so that it lies straight against the fence; zero where the edges are straight. A part
 *     as wide as the stock is only cut to length, and keeps its edges.
 */
public record StockSheet(
    String name,
    Length length,
    Length width,
    SheetGrain grain,
    Supply supply,
    long price,
    Origin origin,
    List<Defect> defects,
    Length roughEdge) {

  public StockSheet {
    Require.named(name, "name of a sheet");
    Require.positive(length, "length of sheet " + name);
    Require.positive(width, "width of sheet " + name);
    Require.notNegative(price, "price of sheet " + name);
    Require.notNegative(roughEdge, "rough edge of sheet " + name);
    defects = List.copyOf(defects);
    if (!defects.isEmpty() && supply.most() > 1) {
      throw new IllegalArgumentException(
          "sheet " + name + " has defects, so that there is one of it");
    }
  }

  /** A sheet without defects and with straight edges. */
  public StockSheet(
      String name,
      Length length,
      Length width,
      SheetGrain grain,
      Supply supply,
      long price,
      Origin origin) {
    this(name, length, width, grain, supply, price, origin, List.of(), Length.ZERO);
  }

  /** The same in another supply. */
  StockSheet with(Supply other) {
    return new StockSheet(name, length, width, grain, other, price, origin, defects, roughEdge);
  }

  /** The same taken for clear. */
  StockSheet withoutDefects() {
    return new StockSheet(name, length, width, grain, supply, price, origin, List.of(), roughEdge);
  }

  /** The same with another grain. */
  StockSheet with(SheetGrain other) {
    return new StockSheet(name, length, width, other, supply, price, origin, defects, roughEdge);
  }
}
