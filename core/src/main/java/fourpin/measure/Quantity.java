package fourpin.measure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * A computed number with its unit.
 *
 * @param value in the metric unit of {@code unit} (N, mm, MPa, kg ...); finite
 */
public record Quantity(double value, QuantityUnit unit) {

  private static final int DIGITS = 3;
  private static final int MONEY_DECIMALS = 2;

  public Quantity {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("a quantity is finite, not " + value + " " + unit);
    }
  }

  public static Quantity of(Length length) {
    return new Quantity(length.mm(), QuantityUnit.LENGTH);
  }

  public static Quantity of(double value, QuantityUnit unit) {
    return new Quantity(value, unit);
  }

  public static Quantity count(long count) {
    return new Quantity(count, QuantityUnit.COUNT);
  }

  /**
   * The number and unit for a reader who works in {@code system}: three significant digits, four of
   * a thousand and more, money to the cent, counts in full. Independent of locale.
   */
  public String text(Unit system) {
    String number = number(value * unit.factor(system));
    String symbol = unit.symbol(system);
    return symbol.isEmpty() ? number : number + " " + symbol;
  }

  /** The number and unit that formulas are worked in; independent of who reads it. */
  public String computedText() {
    String number = number(value);
    return unit.computed().isEmpty() ? number : number + " " + unit.computed();
  }

  private String number(double shownValue) {
    BigDecimal shown = BigDecimal.valueOf(shownValue);
    return switch (unit) {
      case MONEY -> shown.setScale(MONEY_DECIMALS, RoundingMode.HALF_UP).toPlainString();
      case COUNT -> shown.setScale(0, RoundingMode.HALF_UP).toPlainString();
      default -> significant(shown);
    };
  }

  private static String significant(BigDecimal shown) {
    int digits = shown.precision() - shown.scale() > DIGITS ? DIGITS + 1 : DIGITS;
    BigDecimal rounded = shown.round(new MathContext(digits, RoundingMode.HALF_UP));
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
