package fourpin.measure;

import java.math.BigDecimal;
import java.util.List;
import java.util.Set;

/**
 * How lengths are printed: inches with fractions, or millimetres. Rounds first and then carries;
 * what is not exact as printed stands behind {@code ≈}. Independent of locale.
 *
 * @param unit {@link Unit#INCH} or {@link Unit#MILLIMETRE}
 * @param parts the finest part printed, as the number of them in one unit: 64 for 1/64 in (a power
 *     of two up to 256), 10 for 0.1 mm (1, 2, 10, 100 or 1000)
 */
public record LengthStyle(Unit unit, int parts) {

  /** Steel rules have half millimetres. */
  private static final Set<Long> DECIMALS = Set.of(1L, 2L, 10L, 100L, 1000L);

  /** Inches to the 64th. */
  public static final LengthStyle FRACTIONS = new LengthStyle(Unit.INCH, 64);

  /** Millimetres to the tenth. */
  public static final LengthStyle MILLIMETRES = new LengthStyle(Unit.MILLIMETRE, 10);

  private static final int FINEST_FRACTION = 256;
  private static final int THOUSANDTHS = 1000;
  private static final int MILLIONTHS = 1_000_000;
  private static final int TEN = 10;

  public LengthStyle {
    if (!canPrint(unit, parts)) {
      throw new IllegalArgumentException(
          "cannot print lengths in 1/" + parts + " " + unit.symbol());
    }
  }

  /** Whether there is a style that prints to {@code parts} of a unit. */
  public static boolean canPrint(Unit unit, long parts) {
    return switch (unit) {
      case INCH -> parts >= 1 && parts <= FINEST_FRACTION && Long.bitCount(parts) == 1;
      case MILLIMETRE -> DECIMALS.contains(parts);
      case CENTIMETRE, METRE, FOOT -> false;
    };
  }

  /**
   * The number alone, as on a dimension line: {@code 31 1/2}, {@code ≈ 12.3}. Below an inch, where
   * a calliper reads, what the fractions miss stands in thousandths: {@code 0.71}, {@code ≈ 0.664}.
   */
  public String number(Length length) {
    long part = part(length);
    long rounded = rounded(length, part);
    String sign = (rounded * part == length.picometres() ? "" : "≈ ") + (rounded < 0 ? "-" : "");
    long count = Math.abs(rounded);
    return sign
        + (part == unit.picometres() / parts ? inParts(count) : decimal(count, THOUSANDTHS));
  }

  /** The number with its unit: {@code 31 1/2 in}. */
  public String text(Length length) {
    return number(length) + " " + unit.symbol();
  }

  /**
   * The same, but what is not exact so stands in decimals, from thousandths on as many as tell it
   * from another: {@code ≈ 1.003 in} beside 1 in.
   */
  public String textApart(Length length, Length other) {
    if (rounded(length).equals(length)) {
      return text(length);
    }
    int fine = THOUSANDTHS;
    while (fine < MILLIONTHS && count(length, fine) == count(other, fine)) {
      fine *= TEN;
    }
    long count = count(length, fine);
    boolean exact = count * (unit.picometres() / fine) == length.picometres();
    String sign = (exact ? "" : "≈ ") + (count < 0 ? "-" : "");
    return sign + decimal(Math.abs(count), fine) + " " + unit.symbol();
  }

  private long count(Length length, int fine) {
    return rounded(length, unit.picometres() / fine);
  }

  /**
   * The diameter of a bit, a bushing or a hole as it stands on the bit, however fine lengths are
   * printed: in 64ths or thousandths of an inch, or in tenths of a millimetre, the job's unit
   * first: {@code 13/64 in}, {@code 5 mm}. One that is neither is printed like any length.
   */
  public String diameter(Length diameter) {
    return asOnTheBit(diameter).text(diameter);
  }

  /** The same without its unit where that is the job's: {@code 13/64}, {@code 5 mm}. */
  public String diameterNumber(Length diameter) {
    LengthStyle style = asOnTheBit(diameter);
    return style.unit == unit ? style.number(diameter) : style.text(diameter);
  }

  private LengthStyle asOnTheBit(Length diameter) {
    List<LengthStyle> sold =
        unit.customary() ? List.of(FRACTIONS, MILLIMETRES) : List.of(MILLIMETRES, FRACTIONS);
    return sold.stream()
        .filter(style -> style.rounded(diameter).equals(diameter))
        .findFirst()
        .orElse(this);
  }

  /** The length that the printed number states. */
  public Length rounded(Length length) {
    long part = part(length);
    return new Length(Math.multiplyExact(rounded(length, part), part), unit);
  }

  /** The least length that is printed exactly and not shorter. */
  public Length roundedUp(Length length) {
    long part = part(length);
    long count = Math.ceilDiv(length.picometres(), part);
    return new Length(Math.multiplyExact(count, part), unit);
  }

  /** The size of the part that a length is rounded to, in picometres. */
  private long part(Length length) {
    long part = unit.picometres() / parts;
    boolean small = Math.abs(length.picometres()) < unit.picometres();
    boolean fine = unit.customary() && small && length.picometres() % part != 0;
    return fine ? unit.picometres() / THOUSANDTHS : part;
  }

  private static long rounded(Length length, long part) {
    return Math.floorDiv(Math.addExact(length.picometres(), part / 2), part);
  }

  private String inParts(long count) {
    return unit.customary() ? fraction(count) : decimal(count, parts);
  }

  private String fraction(long count) {
    long whole = count / parts;
    long top = count % parts;
    if (top == 0) {
      return Long.toString(whole);
    }
    int shift = Math.min(Long.numberOfTrailingZeros(top), Integer.numberOfTrailingZeros(parts));
    String small = (top >> shift) + "/" + (parts >> shift);
    return whole == 0 ? small : whole + " " + small;
  }

  /** Exact, because the parts are a power of ten. */
  private static String decimal(long count, int parts) {
    BigDecimal digits = BigDecimal.valueOf(count).divide(BigDecimal.valueOf(parts));
    return digits.signum() == 0 ? "0" : digits.stripTrailingZeros().toPlainString();
  }
}
