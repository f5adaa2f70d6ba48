package fourpin.plan;

import fourpin.cutting.Defect;
import fourpin.cutting.SoFar;
import fourpin.job.Supply;
import fourpin.measure.Length;
import fourpin.measure.LengthStyle;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * Sheets or boards of one size, alike for the saw.
 *
 * @param name different for each stock of a material
 * @param count how many there are; empty means as many as wanted
 * @param price of one, where it is stated
 * @param worth of one that is on hand, where it is stated: what it would be worth to keep it
 * @param defects of a board, of which there is one then
 */
public record Stock(
    String name,
    Length length,
    Length width,
    Optional<Integer> count,
    Optional<BigDecimal> price,
    Supply supply,
    Optional<BigDecimal> worth,
    List<Defect> defects) {

  private static final String BOUGHT = ", already bought";

  public Stock {
    defects = List.copyOf(defects);
  }

  /** Stock without defects, of which nobody says what it is worth to keep it. */
  public Stock(
      String name,
      Length length,
      Length width,
      Optional<Integer> count,
      Optional<BigDecimal> price,
      Supply supply) {
    this(name, length, width, count, price, supply, Optional.empty(), List.of());
  }

  /** What is left of it; apart, what was bought for an earlier layout and is whole. */
  List<Stock> after(SoFar soFar) {
    Stock left = without(soFar.usedOf(name));
    int bought = Math.min(soFar.wholeOf(name), left.count.orElse(Integer.MAX_VALUE));
    return supply == Supply.TO_BUY && bought > 0
        ? List.of(left.bought(bought), left.without(bought))
        : List.of(left);
  }

  private Stock bought(int many) {
    return new Stock(
        name + BOUGHT, length, width, Optional.of(many), price, Supply.ON_HAND, worth, defects);
  }

  /** Whether it is what an earlier layout was bought for. */
  public boolean isBought() {
    return name.endsWith(BOUGHT);
  }

  /** The name of a stock as it was stated, whether or not some of it is bought by now. */
  public static String stated(String name) {
    return name.endsWith(BOUGHT) ? name.substring(0, name.length() - BOUGHT.length()) : name;
  }

  /** So many less. */
  private Stock without(int used) {
    return new Stock(
        name, length, width, count.map(c -> Math.max(0, c - used)), price, supply, worth, defects);
  }

  /** The name of the stock that stands in this place among those of its material, from 1. */
  public static String name(
      int place, Length length, Length width, Supply supply, LengthStyle style) {
    String size = style.number(length) + " x " + style.text(width);
    return place + ": " + size + (supply == Supply.ON_HAND ? ", on hand" : "");
  }
}
