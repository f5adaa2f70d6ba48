package fourpin.measure;

/**
 * How lengths are printed: inches with fractions, or millimetres. Rounds first and then carries;
 * what is not exact as printed stands behind {@code ≈}. Independent of locale.
 *
 * @param unit {@link Unit#INCH} or {@link Unit#MILLIMETRE}
 * @param parts the finest part printed, as the number of them in one unit: 64 for 1/64 in (a power
 *     of two up to 256), 10 for 0.1 mm (1, 10, 100 or 1000)
 */
public record LengthStyle(Unit unit, int parts) {

  /** Inches to the 64th. */
  public static final LengthStyle FRACTIONS = new LengthStyle(Unit.INCH, 64);

  /** Millimetres to the tenth. */
  public static final LengthStyle MILLIMETRES = new LengthStyle(Unit.MILLIMETRE, 10);

  private static final int FINEST_FRACTION = 256;
  private static final int FINEST_DECIMAL = 1000;

  public LengthStyle {
    boolean fits =
        switch (unit) {
          case INCH -> parts >= 1 && parts <= FINEST_FRACTION && Integer.bitCount(parts) == 1;
          case MILLIMETRE -> parts == 1 || parts == 10 || parts == 100 || parts == FINEST_DECIMAL;
          case CENTIMETRE, METRE, FOOT -> false;
        };
    if (!fits) {
      throw new IllegalArgumentException(
          "cannot print lengths in 1/" + parts + " " + unit.symbol());
    }
  }

  /** The number alone, as on a dimension line: {@code 31 1/2}, {@code ≈ 12.3}. */
  public String number(Length length) {
    long rounded = roundedParts(length);
    boolean exact = rounded * (unit.picometres() / parts) == length.picometres();
    String digits = unit.customary() ? fraction(Math.abs(rounded)) : decimal(Math.abs(rounded));
    return (exact ? "" : "≈ ") + (rounded < 0 ? "-" : "") + digits;
  }

  /** The number with its unit: {@code 31 1/2 in}. */
  public String text(Length length) {
    return number(length) + " " + unit.symbol();
  }

  /** The length that the printed number states. */
  public Length rounded(Length length) {
    return new Length(Math.multiplyExact(roundedParts(length), unit.picometres() / parts), unit);
  }

  private long roundedParts(Length length) {
    long step = unit.picometres() / parts;
    return Math.floorDiv(Math.addExact(length.picometres(), step / 2), step);
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

  private String decimal(long count) {
    String digits = Long.toString(count % parts + parts).substring(1);
    String trimmed = digits.replaceAll("0+$", "");
    return count / parts + (trimmed.isEmpty() ? "" : "." + trimmed);
  }
}
