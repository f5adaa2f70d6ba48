package fourpin.measure;

import java.math.RoundingMode;

/**
 * What a computed number counts in, with the units that makers who work in millimetres and in
 * inches are shown.
 */
public enum QuantityUnit {
  /**
   * Shown by {@link LengthStyle} where a maker measures it, by this factor where it is only
   * compared (sag).
   */
  LENGTH("mm", "in", 1 / 25.4),
  /** Of a bit, a bushing or a hole: shown by {@link LengthStyle#diameter}. */
  DIAMETER("mm", "in", 1 / 25.4),
  AREA("m²", "sq ft", 1 / 0.09290304),
  FORCE("N", "lbf", 1 / 4.4482216152605),
  MASS("kg", "lb", 1 / 0.45359237),
  VOLUME("m³", "cu ft", 1 / 0.028316846592),
  /** Sawn wood. A board foot is 1 ft by 1 ft by 1 in: 144 cubic inches. */
  LUMBER("m³", "bd ft", 1 / 0.002359737216),
  /** Computed in N/mm; shown as the mass that weighs as much at standard gravity, 9.80665 m/s². */
  LINE_LOAD("N/mm", "kg/m", 1000 / Gravity.STANDARD, "lb/ft", 304.8 / 4.4482216152605),
  /** The same, for what must not be more: rounded down wherever it is shown. */
  LARGEST_LOAD("N/mm", "kg/m", 1000 / Gravity.STANDARD, "lb/ft", 304.8 / 4.4482216152605),
  AREA_LOAD("kPa", "lbf/sq ft", 92.90304 / 4.4482216152605),
  /** 1 MPa = 1 N/mm². */
  STRESS("MPa", "psi", 645.16 / 4.4482216152605),
  SECOND_MOMENT("mm⁴", "in⁴", 1 / 416231.4256),
  BENDING_STIFFNESS("N·mm²", "lbf·in²", 1 / (4.4482216152605 * 645.16)),
  /** How stiffly something gives way along a line. */
  SPRING("N/mm", "lbf/in", 25.4 / 4.4482216152605),
  MOMENT("N·mm", "lbf·in", 1 / (4.4482216152605 * 25.4)),
  DENSITY("kg/m³", "lb/cu ft", 0.028316846592 / 0.45359237),
  RATIO("", "", 1),
  PER_CENT("%", "%", 1),
  COUNT("", "", 1),
  TIME("min", "min", 1),
  /** In the job's own currency. */
  MONEY("", "", 1);

  private final String computed;
  private final String metric;
  private final double metricPerComputed;
  private final String customary;
  private final double customaryPerComputed;

  QuantityUnit(String computed, String customary, double customaryPerComputed) {
    this(computed, computed, 1, customary, customaryPerComputed);
  }

  QuantityUnit(
      String computed,
      String metric,
      double metricPerComputed,
      String customary,
      double customaryPerComputed) {
    this.computed = computed;
    this.metric = metric;
    this.metricPerComputed = metricPerComputed;
    this.customary = customary;
    this.customaryPerComputed = customaryPerComputed;
  }

  /** The unit that values are kept and computed in. */
  public String computed() {
    return computed;
  }

  /** The unit shown to makers who work in {@code system}. */
  public String symbol(Unit system) {
    return system.customary() ? customary : metric;
  }

  /** In the last digit shown. */
  RoundingMode rounding() {
    return this == LARGEST_LOAD ? RoundingMode.DOWN : RoundingMode.HALF_UP;
  }

  /** How many of the units shown make one of the units computed in. */
  public double factor(Unit system) {
    return system.customary() ? customaryPerComputed : metricPerComputed;
  }
}
