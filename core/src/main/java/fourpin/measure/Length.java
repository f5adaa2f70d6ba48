package fourpin.measure;

import java.math.BigDecimal;

/**
 * An exact length: a whole number of picometres, with the unit that it was written in.
 *
 * <p>Exact for 256ths and ten-thousandths of an inch (1/256 in = 99,218,750 pm) and for
 * micrometres. The range is about +-9,223 km; beyond it arithmetic throws {@link
 * ArithmeticException}. The unit only says how the maker wrote the length and takes no part in
 * {@code equals}; arithmetic keeps the unit of the left operand.
 */
public record Length(long picometres, Unit unit) implements Comparable<Length> {

  /** Nothing, in millimetres. */
  public static final Length ZERO = new Length(0, Unit.MILLIMETRE);

  private static final double PM_PER_MM = Unit.MILLIMETRE.picometres();
  private static final int PM_PER_MM_DIGITS = 9;

  public static Length mm(long millimetres) {
    return of(millimetres, Unit.MILLIMETRE);
  }

  public static Length inches(long whole) {
    return of(whole, Unit.INCH);
  }

  /**
   * A fraction of an inch.
   *
   * @throws ArithmeticException if it is not a whole number of picometres (thirds, sevenths) or out
   *     of range
   */
  public static Length inches(long numerator, long denominator) {
    return of(numerator, Unit.INCH).exactlyOver(denominator);
  }

  public static Length of(long count, Unit unit) {
    return new Length(Math.multiplyExact(count, unit.picometres()), unit);
  }

  /**
   * The nearest length to a computed number of millimetres, to the nanometre; for results, never
   * for stated sizes.
   *
   * @throws ArithmeticException if it is not a number or out of range
   */
  public static Length nearestMm(double millimetres) {
    if (!Double.isFinite(millimetres)) {
      throw new ArithmeticException("a length is finite, not " + millimetres + " mm");
    }
    return new Length(Math.multiplyExact(Math.round(millimetres * 1e6), 1_000L), Unit.MILLIMETRE);
  }

  public Length plus(Length other) {
    return new Length(Math.addExact(picometres, other.picometres), unit);
  }

  public Length minus(Length other) {
    return new Length(Math.subtractExact(picometres, other.picometres), unit);
  }

  public Length times(long factor) {
    return new Length(Math.multiplyExact(picometres, factor), unit);
  }

  /**
   * This length divided into equal parts, to the nearest picometre.
   *
   * @throws ArithmeticException if there is no part
   */
  public Length over(long parts) {
    if (parts < 1) {
      throw new ArithmeticException("a length is divided into one part or more, not " + parts);
    }
    return new Length(Math.floorDiv(Math.addExact(picometres, parts / 2), parts), unit);
  }

  private Length exactlyOver(long divisor) {
    if (picometres % divisor != 0) {
      throw new ArithmeticException(
          picometres + " pm is not a whole number of picometres when divided by " + divisor);
    }
    return new Length(picometres / divisor, unit);
  }

  public Length negated() {
    return new Length(Math.negateExact(picometres), unit);
  }

  public Length abs() {
    return picometres < 0 ? negated() : this;
  }

  /**
   * How many whole times {@code step} goes into this length; both at least zero, step above zero.
   */
  public long wholeTimes(Length step) {
    return Math.floorDiv(picometres, step.picometres);
  }

  /** What is left after the whole times that {@code step} goes into this length. */
  public Length remainder(Length step) {
    return new Length(Math.floorMod(picometres, step.picometres), unit);
  }

  /** This length as a multiple of another. */
  public double ratioTo(Length other) {
    return (double) picometres / other.picometres;
  }

  /** In millimetres, for computing; good to 15 digits. */
  public double mm() {
    return picometres / PM_PER_MM;
  }

  /** In millimetres, exactly. */
  public BigDecimal exactMm() {
    return BigDecimal.valueOf(picometres, PM_PER_MM_DIGITS).stripTrailingZeros();
  }

  /** In inches, for computing; good to 15 digits. */
  public double inches() {
    return (double) picometres / Unit.INCH.picometres();
  }

  /** The same length, to be shown in another unit. */
  public Length in(Unit other) {
    return new Length(picometres, other);
  }

  public boolean isZero() {
    return picometres == 0;
  }

  public boolean isPositive() {
    return picometres > 0;
  }

  public boolean isNegative() {
    return picometres < 0;
  }

  public boolean isLessThan(Length other) {
    return picometres < other.picometres;
  }

  public boolean isMoreThan(Length other) {
    return picometres > other.picometres;
  }

  public boolean isAtLeast(Length other) {
    return picometres >= other.picometres;
  }

  public static Length min(Length a, Length b) {
    return a.picometres <= b.picometres ? a : b;
  }

  public static Length max(Length a, Length b) {
    return a.picometres >= b.picometres ? a : b;
  }

  @Override
  public int compareTo(Length other) {
    return Long.compare(picometres, other.picometres);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Length length && length.picometres == picometres;
  }

  @Override
  public int hashCode() {
    return Long.hashCode(picometres);
  }

  /** For messages of tests and debugging; what makers read is printed by {@link LengthStyle}. */
  @Override
  public String toString() {
    return exactMm().toPlainString() + " mm";
  }
}
