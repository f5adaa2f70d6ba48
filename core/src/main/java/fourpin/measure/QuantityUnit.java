package fourpin.measure;

/**
 * What a computed number counts in, with the customary unit that it is shown in for jobs in inches.
 */
public enum QuantityUnit {
  /**
   * Shown by {@link LengthStyle} where a maker measures it, by this factor where it is only
   * compared (sag).
   */
  LENGTH("mm", "in", 1 / 25.4),
  AREA("m²", "sq ft", 1 / 0.09290304),
  FORCE("N", "lbf", 1 / 4.4482216152605),
  MASS("kg", "lb", 1 / 0.45359237),
  VOLUME("m³", "cu ft", 1 / 0.028316846592),
  /** 1 N/mm = 1 kN/m. */
  LINE_LOAD("N/mm", "lbf/ft", 304.8 / 4.4482216152605),
  AREA_LOAD("kPa", "lbf/sq ft", 92.90304 / 4.4482216152605),
  /** 1 MPa = 1 N/mm². */
  STRESS("MPa", "psi", 645.16 / 4.4482216152605),
  SECOND_MOMENT("mm⁴", "in⁴", 1 / 416231.4256),
  BENDING_STIFFNESS("N·mm²", "lbf·in²", 1 / (4.4482216152605 * 645.16)),
  MOMENT("N·mm", "lbf·in", 1 / (4.4482216152605 * 25.4)),
  DENSITY("kg/m³", "lb/cu ft", 0.028316846592 / 0.45359237),
  RATIO("", "", 1),
  PER_CENT("%", "%", 1),
  COUNT("", "", 1),
  TIME("min", "min", 1),
  /** In the job's own currency. */
  MONEY("", "", 1);

  private final String symbol;
  private final String customarySymbol;
  private final double customaryPerSi;

  QuantityUnit(String symbol, String customarySymbol, double customaryPerSi) {
    this.symbol = symbol;
    this.customarySymbol = customarySymbol;
    this.customaryPerSi = customaryPerSi;
  }

  public String symbol(Unit system) {
    return system.customary() ? customarySymbol : symbol;
  }

  /** How many of the units shown make one of the units computed in. */
  public double factor(Unit system) {
    return system.customary() ? customaryPerSi : 1;
  }
}
