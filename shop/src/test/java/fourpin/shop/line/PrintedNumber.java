package fourpin.shop.line;

import fourpin.measure.FigureText;
import fourpin.measure.Quantity;
import fourpin.measure.Unit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number as a reader takes it from a page: its last writing, as in {@code 52.8 kg/m (0.517
 * N/mm)}.
 *
 * @param value in the unit that formulas are worked in
 * @param half by how much it may have been rounded, either way
 */
record PrintedNumber(double value, double half) {

  private static final Pattern LAST = Pattern.compile("(?:.*[(,] ?)?(?<last>[^(,]+?)\\)?");

  /** {@code 12.5}, {@code 31 1/2}, {@code 5/8}, after signs and currencies. */
  private static final Pattern NUMBER =
      Pattern.compile(
          "[^0-9-]*(?<sign>-?)(?:(?<top>\\d+)/(?<parts>\\d+)"
              + "|(?<whole>\\d+)(?: (?<more>\\d+)/(?<of>\\d+)|(?<decimals>\\.\\d+)?))(?<unit>.*)");

  static PrintedNumber ofInput(FigureText text, Quantity quantity) {
    return of(text.input(quantity), quantity, text.style().unit());
  }

  static PrintedNumber ofValue(FigureText text, Quantity quantity) {
    return of(text.value(quantity), quantity, text.style().unit());
  }

  private static PrintedNumber of(String written, Quantity quantity, Unit system) {
    Matcher last = LAST.matcher(written);
    Matcher number = NUMBER.matcher(last.matches() ? last.group("last") : written);
    if (!number.matches()) {
      throw new AssertionError("no number in '" + written + "'");
    }
    String unit = number.group("unit").strip();
    boolean worked = unit.equals(quantity.unit().computed());
    double factor = worked ? 1 : quantity.unit().factor(system);
    double value = (number.group("sign").isEmpty() ? 1 : -1) * amount(number);
    return new PrintedNumber(value / factor, half(number, quantity, value) / factor);
  }

  private static double amount(Matcher number) {
    if (number.group("top") != null) {
      return Double.parseDouble(number.group("top")) / Double.parseDouble(number.group("parts"));
    }
    double whole = Double.parseDouble(number.group("whole"));
    if (number.group("more") != null) {
      return whole
          + Double.parseDouble(number.group("more")) / Double.parseDouble(number.group("of"));
    }
    return number.group("decimals") == null
        ? whole
        : Double.parseDouble(number.group("whole") + number.group("decimals"));
  }

  /**
   * Half of its last digit, or all of it where that is rounded down; fractions that are printed
   * last are exact.
   */
  private static double half(Matcher number, Quantity quantity, double value) {
    if (number.group("top") != null || number.group("more") != null) {
      return 0;
    }
    String decimals = number.group("decimals");
    double last = decimals == null ? 1 : Math.pow(10, 1 - decimals.length());
    return switch (quantity.unit()) {
      case COUNT -> 0;
      case LENGTH, DIAMETER, MONEY -> last / 2;
      case LARGEST_LOAD -> significant(Math.abs(value));
      default -> significant(Math.abs(value)) / 2;
    };
  }

  /** What the last of three digits counts, of four from a thousand on. */
  private static double significant(double value) {
    int digits = value >= 1000 ? 4 : 3;
    return value == 0 ? 0 : Math.pow(10, Math.floor(Math.log10(value)) + 1 - digits);
  }
}
