package fourpin.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * How values of figures are written out for a job: lengths as its pages print them, with a decimal
 * beside those that are not exact so; below an inch that decimal alone; all else by {@link
 * Quantity#text(Unit)}. Independent of locale.
 *
 * @param currency stands before amounts of money
 */
public record FigureText(LengthStyle style, String currency) {

  /** Decimals beside a length keep so many digits or so many places, whichever is finer. */
  private static final int DIGITS = 3;

  /** A thousandth of an inch is what a calliper reads, a hundredth of a millimetre likewise. */
  private static final int INCH_PLACES = 3;

  private static final int MM_PLACES = 2;

  private static final Length INCH = Length.inches(1);

  /** {@code 9 23/32 in}, {@code ≈ 31 1/2 in (31.496 in)}, {@code 0.0312 in}, {@code GBP 12.50}. */
  public String value(Quantity quantity) {
    return switch (quantity.unit()) {
      case LENGTH -> length(quantity, Set.of());
      case DIAMETER -> style.diameter(quantity.length());
      case MONEY -> currency + " " + quantity.text(style.unit());
      default -> quantity.text(style.unit());
    };
  }

  /**
   * The same and, where that differs, what the formula is worked with: {@code 9 23/32 in (246.85625
   * mm)}. A length that is printed exactly is stated exactly there too.
   */
  public String input(Quantity quantity) {
    if (quantity.unit() == QuantityUnit.LENGTH) {
      return length(quantity, Set.of(millimetres(quantity)));
    }
    String shown = value(quantity);
    String worked = quantity.computedText();
    boolean same = quantity.unit().computed().isEmpty() || shown.equals(worked);
    return same ? shown : shown + " (" + worked + ")";
  }

  private String length(Quantity quantity, Set<String> more) {
    boolean small = quantity.length().abs().isLessThan(INCH);
    Set<String> written = new LinkedHashSet<>();
    if (isExact(quantity) || !small) {
      written.add(style.text(quantity.length()));
    }
    if (!isExact(quantity)) {
      written.add(
          decimal(quantity, style.unit(), style.unit().customary() ? INCH_PLACES : MM_PLACES));
    }
    written.addAll(more);
    List<String> all = List.copyOf(written);
    List<String> rest = all.subList(1, all.size());
    return all.getFirst() + (rest.isEmpty() ? "" : " (" + String.join(", ", rest) + ")");
  }

  private String millimetres(Quantity quantity) {
    return isExact(quantity)
        ? quantity.length().exactMm().toPlainString() + " " + Unit.MILLIMETRE.symbol()
        : decimal(quantity, Unit.MILLIMETRE, MM_PLACES);
  }

  private boolean isExact(Quantity quantity) {
    return style.rounded(quantity.length()).equals(quantity.length());
  }

  private static String decimal(Quantity quantity, Unit unit, int places) {
    BigDecimal number = BigDecimal.valueOf(quantity.value() * quantity.unit().factor(unit));
    int digits = DIGITS - number.precision() + number.scale();
    BigDecimal rounded = number.setScale(Math.max(places, digits), RoundingMode.HALF_UP);
    return rounded.stripTrailingZeros().toPlainString() + " " + unit.symbol();
  }
}
