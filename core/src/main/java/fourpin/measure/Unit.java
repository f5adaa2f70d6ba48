package fourpin.measure;

/** A unit that a maker writes lengths in, with its exact size. */
public enum Unit {
  MILLIMETRE("mm", 1_000_000_000L),
  CENTIMETRE("cm", 10_000_000_000L),
  METRE("m", 1_000_000_000_000L),
  /** 25.4 mm exactly (international yard and pound agreement of 1959). */
  INCH("in", 25_400_000_000L),
  FOOT("ft", 304_800_000_000L);

  private final String symbol;
  private final long picometres;

  Unit(String symbol, long picometres) {
    this.symbol = symbol;
    this.picometres = picometres;
  }

  public String symbol() {
    return symbol;
  }

  /** The size of the unit in whole picometres. */
  public long picometres() {
    return picometres;
  }

  /** Whether makers who use this unit write fractions. */
  public boolean customary() {
    return this == INCH || this == FOOT;
  }
}
