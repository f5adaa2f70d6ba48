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

  /** More would tell of rounding errors. */
  private static final int MOST_DIGITS = 8;

  public Quantity {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("a quantity is finite, not " + value + " " + unit);
    }
  }

  public static Quantity of(Length length) {
    return new Quantity(length.mm(), QuantityUnit.LENGTH);
  }

  /** Across a bit, a bushing or a hole. */
  public static Quantity across(Length diameter) {
    return new Quantity(diameter.mm(), QuantityUnit.DIAMETER);
  }

  /**
   * The length that it is, to the picometre: one that was made from a {@link Length} is that again.
   *
   * @throws IllegalStateException if it is none
   */
  public Length length() {
    if (unit != QuantityUnit.LENGTH && unit != QuantityUnit.DIAMETER) {
      throw new IllegalStateException("no length, but " + unit);
    }
    return new Length(Math.round(value * Unit.MILLIMETRE.picometres()), Unit.MILLIMETRE);
  }

  public static Quantity of(double value, QuantityUnit unit) {
    return new Quantity(value, unit);
  }

  public static Quantity count(long count) {
    return new Quantity(count, QuantityUnit.COUNT);
  }

  /**
   * The number and unit for a reader who works in {@code system}: three significant digits, four of
   * a thousand and more, money to the cent, counts in full; the largest loads are rounded down.
   * Independent of locale.
   */
  public String text(Unit system) {
    return text(system, unit.rounding());
  }

  /**
   * The same, with as many digits more as tell it from another that it is held against: what is
   * over a limit does not read as the limit.
   */
  public String textBeside(Quantity other, Unit system) {
    int digits = DIGITS;
    while (digits < MOST_DIGITS && number(system, digits).equals(other.number(system, digits))) {
      digits++;
    }
    return value == other.value ? text(system) : withSymbol(number(system, digits), system);
  }

  private String number(Unit system, int digits) {
    return significant(BigDecimal.valueOf(value * unit.factor(system)), digits, unit.rounding());
  }

  /** The same without its unit, for columns that have it at their head. */
  public String numberText(Unit system) {
    return number(value * unit.factor(system), unit.rounding());
  }

  /** The same, rounded down in the last digit shown, for what must not be more. */
  public String textAtMost(Unit system) {
    return text(system, RoundingMode.DOWN);
  }

  /** The same, rounded up in the last digit shown, for what must not be less. */
  public String textAtLeast(Unit system) {
    return text(system, RoundingMode.UP);
  }

  private String text(Unit system, RoundingMode rounding) {
    return withSymbol(number(value * unit.factor(system), rounding), system);
  }

  private String withSymbol(String number, Unit system) {
    String symbol = unit.symbol(system);
    return symbol.isEmpty() ? number : number + " " + symbol;
  }

  /** The number and unit that formulas are worked in; independent of who reads it. */
  public String computedText() {
    String number = number(value, unit.rounding());
    return unit.computed().isEmpty() ? number : number + " " + unit.computed();
  }

  private String number(double shownValue, RoundingMode rounding) {
    BigDecimal shown = BigDecimal.valueOf(shownValue);
    return switch (unit) {
      case MONEY -> Money.text(shown, rounding);
      case COUNT -> shown.setScale(0, rounding).toPlainString();
      default -> significant(shown, DIGITS, rounding);
    };
  }

  private static String significant(BigDecimal shown, int least, RoundingMode rounding) {
    int digits = shown.precision() - shown.scale() > least ? least + 1 : least;
    BigDecimal rounded = shown.round(new MathContext(digits, rounding));
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
