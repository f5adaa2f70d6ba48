package fourpin.strength.wood;

import fourpin.measure.Source;
import fourpin.reference.Constant;
import fourpin.reference.Reference;

/**
 * How hard wood or a panel bears a round of steel pressed sideways into it, by Eurocode 5:
 * characteristic. Screws of an effective diameter up to 6 mm go by the rules of nails (8.7.1), and
 * dowels start at 6 mm (8.6, 10.4.4), so that thinner pins go by those of nails as well, which are
 * the lesser; thicker ones by those of bolts.
 *
 * @param formula of it, d being the diameter
 */
public record Embedment(double mpa, String formula, Source source) {

  /** Along the grain of wood, solid or laminated, bored: alike for nails and bolts. */
  public static Embedment ofWood(double density, double diameter) {
    Constant factor = Reference.constant("EC5 embedment");
    return new Embedment(
        factor.value() * shrunk(diameter) * density, "0.082 (1 - 0.01 d) ρ", factor.source());
  }

  /** Of wood across its grain. @param k90 along over across */
  public Embedment across(double k90) {
    return new Embedment(mpa / k90, formula + " / k₉₀", source);
  }

  /** In plywood, any way. @param density characteristic, kg/m³; {@code diameter} mm */
  public static Embedment ofPlywood(double density, double diameter) {
    if (isNail(diameter)) {
      Constant nails = Reference.constant("EC5 embedment of plywood by nails");
      double mpa = nails.value() * Math.pow(diameter, -0.3) * density;
      return new Embedment(mpa, "0.11 d^-0.3 ρ", nails.source());
    }
    Constant bolts = Reference.constant("EC5 embedment of plywood");
    double mpa = bolts.value() * shrunk(diameter) * density;
    return new Embedment(mpa, "0.11 (1 - 0.01 d) ρ", bolts.source());
  }

  /**
   * In particleboard and strand board, any way; in fibreboard as well, of which the code knows
   * hardboard alone, and that harder.
   *
   * @param diameter mm
   * @param thickness mm
   */
  public static Embedment ofBoard(double diameter, double thickness) {
    if (isNail(diameter)) {
      Constant nails = Reference.constant("EC5 embedment of particleboard by nails");
      double mpa = nails.value() * Math.pow(diameter, -0.7) * Math.pow(thickness, 0.1);
      return new Embedment(mpa, "65 d^-0.7 T^0.1", nails.source());
    }
    Constant bolts = Reference.constant("EC5 embedment of particleboard");
    double mpa = bolts.value() * Math.pow(diameter, -0.6) * Math.pow(thickness, 0.2);
    return new Embedment(mpa, "50 d^-0.6 T^0.2", bolts.source());
  }

  /** The formula and whose rule it is. */
  public String words() {
    return formula + " by EN 1995-1-1, " + source.place();
  }

  private static boolean isNail(double diameter) {
    return diameter <= Reference.constant("EC5 thickest by the rules of nails").value();
  }

  private static double shrunk(double diameter) {
    return 1 - Reference.constant("EC5 loss of embedment").value() * diameter;
  }
}
