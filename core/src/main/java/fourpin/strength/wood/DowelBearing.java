package fourpin.strength.wood;

import fourpin.reference.PowerLaw;
import fourpin.reference.Reference;
import fourpin.reference.Wood;

/**
 * How hard wood bears a dowel pressed sideways into it, MPa: mean values of the National Design
 * Specification, characteristic ones of Eurocode 5.
 */
public final class DowelBearing {

  /** From this diameter on, 1/4 in, the grain counts in the NDS (12.3.3). */
  private static final double LARGE_MM = 6.35;

  private DowelBearing() {}

  /** The NDS formula for dowels of a diameter in mm that press along the grain. */
  public static PowerLaw ndsAlong(double diameter) {
    return law(diameter, "dowel bearing along the grain");
  }

  /** The same across the grain. */
  public static PowerLaw ndsAcross(double diameter) {
    return law(diameter, "dowel bearing across the grain");
  }

  private static PowerLaw law(double diameter, String large) {
    return Reference.powerLaws().get(diameter < LARGE_MM ? "dowel bearing of small dowels" : large);
  }

  /**
   * By the NDS.
   *
   * @param gravity specific gravity
   * @param diameter mm
   * @param degrees between the push and the grain
   */
  public static double nds(double gravity, double diameter, double degrees) {
    double across = ndsAcross(diameter).of(gravity, diameter);
    return hankinson(ndsAlong(diameter).of(gravity, diameter), across, degrees);
  }

  /** Between along and across the grain (Hankinson; Wood Handbook FPL-GTR-282, Eq. 8-16). */
  public static double hankinson(double along, double across, double degrees) {
    double sine = Math.pow(Math.sin(Math.toRadians(degrees)), 2);
    return along * across / (along * sine + across * (1 - sine));
  }

  /**
   * By Eurocode 5.
   *
   * @param density characteristic, kg/m³
   * @param diameter mm
   * @param degrees between the push and the grain
   */
  public static double ec5(Wood.Kind kind, double density, double diameter, double degrees) {
    double along = Embedment.ofWood(density, diameter).mpa();
    return hankinson(along, along / k90(kind, diameter), degrees);
  }

  /** Along over across the grain. */
  public static double k90(Wood.Kind kind, double diameter) {
    double base =
        switch (kind) {
          case SOFTWOOD -> number("EC5 k90 of softwood");
          case HARDWOOD -> number("EC5 k90 of hardwood");
        };
    return base + number("EC5 growth of k90") * diameter;
  }

  private static double number(String constant) {
    return Reference.constant(constant).value();
  }
}
