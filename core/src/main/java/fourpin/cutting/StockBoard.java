package fourpin.cutting;

import fourpin.measure.Length;

/**
 * Identical boards to cut from.
 *
 * @param name different for each stock of a problem
 * @param length before trimming, above zero
 * @param price of one board in the smallest coin, at least zero
 */
public record StockBoard(String name, Length length, Supply supply, long price, Origin origin) {

  public StockBoard {
    Require.named(name, "name of a board");
    Require.positive(length, "length of board " + name);
    Require.notNegative(price, "price of board " + name);
  }
}
