package fourpin.strength;

import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.measure.Sourced;
import fourpin.strength.plate.Bent.Moments;
import fourpin.strength.plate.Rigidity;

/**
 * What a layer of a shelf is made of, as far as it bends both ways and twists.
 *
 * @param along modulus of elasticity along the shelf, MPa
 * @param across likewise from front to back
 * @param shear modulus in the plane of the shelf, MPa
 * @param poisson how much it narrows across for each part that it is stretched along
 */
public record Flat(Sourced along, Sourced across, Sourced shear, Sourced poisson) {

  private static final String EITHER_WAY =
      "of the weaker way, since parts of grain none may be cut either way";

  /** Whether it is as stiff one way as the other, as glass is, and so breaks in any direction. */
  boolean isAlikeAllWays() {
    return along.number() == across.number();
  }

  /** The moment that breaks it, N: of any direction where it is alike all ways, else along. */
  double breaks(Moments moments) {
    return isAlikeAllWays() ? moments.principal() : Math.abs(moments.x());
  }

  /** As stiff both ways as the weaker of them, and narrowing as little as the stiffer makes it. */
  Flat eitherWay() {
    Sourced weaker = along.number() < across.number() ? along : across;
    Sourced least = new Sourced(weaker.value(), eitherWay(weaker.source()));
    double ratio = poisson.number() * weaker.number() / Math.max(along.number(), across.number());
    return new Flat(
        least,
        least,
        shear,
        new Sourced(Quantity.of(ratio, QuantityUnit.RATIO), eitherWay(poisson.source())));
  }

  /** What is said of a figure of the weaker way. */
  static Source eitherWay(Source of) {
    return new Source(
        of.title(), of.place() + (of.place().isEmpty() ? "" : "; ") + EITHER_WAY, of.standing());
  }

  /**
   * Less stiff each way, and in twist as the one that loses more.
   *
   * @param times by which it is divided along, {@code deep} across
   */
  Flat lessened(double times, double deep) {
    double narrows = poisson.number() * Math.min(1, Math.sqrt(deep / times));
    return new Flat(
        divided(along, times),
        divided(across, deep),
        divided(shear, Math.max(times, deep)),
        new Sourced(Quantity.of(narrows, QuantityUnit.RATIO), poisson.source()));
  }

  private static Sourced divided(Sourced modulus, double by) {
    return new Sourced(Quantity.of(modulus.number() / by, QuantityUnit.STRESS), modulus.source());
  }

  /** As a plate. @param thickness mm */
  public Rigidity plate(double thickness) {
    return Rigidity.of(
        along.number(), across.number(), poisson.number(), shear.number(), thickness);
  }

  /**
   * As a strip on edge, spread over its width: it bends as a bar and twists as one.
   *
   * @param width from front to back, mm
   * @param height mm
   */
  public Rigidity strip(double width, double height) {
    double cubed = height * height * height / 12;
    double twist = shear.number() * torsion(width, height) / (4 * width);
    return Rigidity.bar(along.number() * cubed, across.number() * cubed, twist);
  }

  /**
   * Torsion constant of a rectangle, mm⁴: {@code a b³ (1/3 - 0.21 b / a (1 - b⁴ / (12 a⁴)))}, a the
   * longer side (Roark's Formulas for Stress and Strain, torsion of a rectangular section; from
   * memory).
   */
  static double torsion(double one, double other) {
    double a = Math.max(one, other);
    double b = Math.min(one, other);
    double ratio = b / a;
    return a * b * b * b * (1.0 / 3 - 0.21 * ratio * (1 - Math.pow(ratio, 4) / 12));
  }
}
