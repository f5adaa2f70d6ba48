package fourpin.reference;

import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import java.util.Map;

/**
 * A published strength of fasteners that grows with powers of specific gravity and of diameter.
 *
 * @param factor in the unit of the work that printed it
 * @param unit that {@code factor} gives: psi, or pounds for each inch of thread
 * @param note what it holds for
 */
public record PowerLaw(
    String name,
    double factor,
    double gravityPower,
    double diameterPower,
    String unit,
    String note,
    Source source)
    implements Listed {

  private static final double MM_PER_INCH = 25.4;

  /** 1 psi is 1 lbf/in²; 1 lbf is 4.4482216152605 N (NIST SP 811, B.8). */
  private static final Map<String, Double> NEWTON_MM =
      Map.of(
          "psi",
          4.4482216152605 / (MM_PER_INCH * MM_PER_INCH),
          "lb/in",
          4.4482216152605 / MM_PER_INCH);

  static PowerLaw of(Row row) {
    return new PowerLaw(
        row.name(),
        row.number("factor"),
        row.number("gravity_power"),
        row.number("diameter_power"),
        row.text("unit"),
        row.text("note"),
        row.source());
  }

  /**
   * As printed.
   *
   * @param gravity specific gravity
   * @param inches diameter
   */
  public double printed(double gravity, double inches) {
    return factor * Math.pow(gravity, gravityPower) * Math.pow(inches, diameterPower);
  }

  /** In MPa, or N for each mm of thread. @param diameter mm */
  public double of(double gravity, double diameter) {
    return printed(gravity, diameter / MM_PER_INCH) * NEWTON_MM.getOrDefault(unit, Double.NaN);
  }

  /** The factor as an input of a formula. */
  public Quantity shown() {
    return Quantity.of(factor, QuantityUnit.RATIO);
  }
}
