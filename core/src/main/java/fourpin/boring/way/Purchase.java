package fourpin.boring.way;

import fourpin.job.Setting;
import fourpin.job.Tool;
import fourpin.measure.LengthStyle;
import fourpin.measure.Source;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A tool that a way needs and the shop does not have, as far as anybody has stated.
 *
 * @param name what the shop calls it; each name once in a shop
 * @param size what to ask for where it is sold
 * @param price of one; none where nobody has stated it and nothing is usual
 */
public record Purchase(String name, String size, Need need, Optional<Price> price) {

  /** How it is known that the shop has to buy a tool. */
  public enum Need {
    /** The shop file states it with a price. */
    STATED,
    /** The way can't do without it, and no file states it. */
    TAKEN_FOR_GRANTED
  }

  /**
   * What a tool costs.
   *
   * @param amount in the job's currency
   * @param source the shop file, or the setting that it is estimated by
   */
  public record Price(BigDecimal amount, Source source) {}

  /** Those of the tools that are not at hand. */
  static List<Purchase> of(LengthStyle style, Tool... tools) {
    return Stream.of(tools).flatMap(tool -> of(style, tool).stream()).toList();
  }

  private static Optional<Purchase> of(LengthStyle style, Tool tool) {
    return tool.toBuy()
        .map(price -> new Price(price, Source.SHOP_FILE))
        .map(
            price ->
                new Purchase(
                    tool.name(), new ToolWords(style).size(tool), Need.STATED, Optional.of(price)));
  }

  /** A bit that no file states: what such bits cost is a setting. */
  static Purchase bit(Group group, String name) {
    Setting setting = Setting.BIT_PRICE;
    BigDecimal amount = BigDecimal.valueOf(group.settings().number(setting)).stripTrailingZeros();
    return granted(name, Optional.of(new Price(amount, group.settings().source(setting))));
  }

  /** A machine that no file states: prices are too far apart for an estimate. */
  static Purchase unpriced(String name) {
    return granted(name, Optional.empty());
  }

  private static Purchase granted(String name, Optional<Price> price) {
    return new Purchase(name, "to suit", Need.TAKEN_FOR_GRANTED, price);
  }

  /**
   * Of the sum of prices: as far as the weakest can be leaned on, the first that nobody has stated.
   *
   * @return empty where none has a price
   */
  public static Optional<Source> source(List<Purchase> purchases) {
    List<Source> sources =
        purchases.stream().flatMap(p -> p.price().stream()).map(Price::source).toList();
    return sources.stream()
        .filter(s -> !s.isStated())
        .findFirst()
        .or(() -> sources.stream().findFirst());
  }

  /** All prices that are known, together. */
  public static BigDecimal sum(List<Purchase> purchases) {
    return purchases.stream()
        .flatMap(p -> p.price().stream())
        .map(Price::amount)
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }
}
