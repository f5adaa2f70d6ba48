package fourpin.strength.wood;

import fourpin.reference.Reference;

/**
 * How stiffly a screw in a lead hole holds two parts against sliding on each other, N/mm; before
 * anything yields.
 */
public final class Slip {

  private static final double MM_PER_INCH = 25.4;
  private static final double NEWTON_PER_POUND = 4.4482216152605;

  private Slip() {}

  /**
   * By Eurocode 5, Table 7.1: √(ρ₁ ρ₂)^1.5 d / 23. Four public copies of the code agree on it, and
   * one of them works a number; no textbook's was found, so that it never counts beyond {@link
   * #nds}.
   *
   * @param one mean density of one part, kg/m³; {@code other} of the other
   * @param diameter of the smooth shank, mm
   */
  public static double ec5(double one, double other, double diameter) {
    double density = Math.sqrt(one * other);
    return Math.pow(density, 1.5) * diameter / Reference.constant("EC5 slip").value();
  }

  /**
   * By the NDS: 180,000 D^1.5 lb/in between parts of wood, D in inches; knows no density.
   *
   * @param diameter mm
   */
  public static double nds(double diameter) {
    double pounds =
        Reference.constant("NDS load over slip").value() * Math.pow(diameter / MM_PER_INCH, 1.5);
    return pounds * NEWTON_PER_POUND / MM_PER_INCH;
  }
}
