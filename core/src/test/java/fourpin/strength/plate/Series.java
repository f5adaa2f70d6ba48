package fourpin.strength.plate;

import java.util.function.DoubleBinaryOperator;

/**
 * Closed forms for thin plates that are alike in all directions, Poisson ratio 0.3, summed here:
 * Navier's and Lévy's series (Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, 2nd
 * ed. 1959, art. 30, 34 and 48).
 */
public final class Series {

  private static final double POISSON = 0.3;

  /** Odd terms up to this one; what is left out counts less than 1e-5 of the sum. */
  private static final int TERMS = 800;

  private Series() {}

  /**
   * Two ends hinged, front and back free, even load, in the middle of the span: sag over {@code q
   * a⁴ / D}.
   *
   * @param depth over the span a
   * @param out 0 in the middle of the depth, 1 at a free edge
   */
  public static double levy(double depth, double out) {
    double sum = 0;
    for (int m = 1; m < 60; m += 2) {
      double u = m * Math.PI * depth / 2;
      double tanh = Math.tanh(u);
      double ratio = ((1 + POISSON) * tanh - (1 - POISSON) * u) / ((1 - POISSON) * tanh);
      double b = POISSON / ((1 - POISSON) * ratio + 2 + (1 - POISSON) * u * tanh);
      // The shape over the depth, with its hyperbolic functions over cosh u so that none overflows.
      double shape =
          1
              + b * ratio * Math.cosh(out * u) / Math.cosh(u)
              + b * out * u * Math.sinh(out * u) / Math.cosh(u);
      sum += alternate(m) * 4 / Math.pow(Math.PI * m, 5) * shape;
    }
    return sum;
  }

  /**
   * All edges hinged, even load, in the middle: sag over {@code q b⁴ / D}. @param ratio a over b
   */
  public static double sag(double ratio) {
    return even(ratio, 6, (a, b) -> 1);
  }

  /** Likewise the moment that bends along b, over {@code q b²}. */
  public static double momentAcross(double ratio) {
    return even(ratio, 4, (a, b) -> b * b + POISSON * a * a);
  }

  /** Likewise the moment that bends along a. */
  public static double momentAlong(double ratio) {
    return even(ratio, 4, (a, b) -> a * a + POISSON * b * b);
  }

  /** All edges hinged, force in the middle: sag there over {@code P b² / D}. */
  public static double poked(double ratio) {
    double sum = 0;
    for (int m = 1; m < TERMS; m += 2) {
      for (int n = 1; n < TERMS; n += 2) {
        sum += 1 / square(m / ratio, n);
      }
    }
    return 4 * sum / (ratio * Math.pow(Math.PI, 4));
  }

  /**
   * All edges hinged, even load: the force that holds each corner down, 2 Mxy, over {@code q b²}.
   */
  public static double corner(double ratio) {
    double sum = 0;
    for (int m = 1; m < TERMS; m += 2) {
      for (int n = 1; n < TERMS; n += 2) {
        sum += 1 / square(m / ratio, n);
      }
    }
    return 2 * (1 - POISSON) * 16 / Math.pow(Math.PI, 4) * sum / ratio;
  }

  /** A plate of two stiffnesses (the same work, art. 85): sag in the middle under 1 MPa, mm. */
  public static double sag(Rigidity d, double length, double depth) {
    double sum = 0;
    for (int m = 1; m < TERMS; m += 2) {
      for (int n = 1; n < TERMS; n += 2) {
        double a = m / length;
        double b = n / depth;
        double stiff =
            d.alongX() * a * a * a * a
                + 2 * (d.coupling() + 2 * d.twist()) * a * a * b * b
                + d.alongY() * b * b * b * b;
        sum += alternate(m) * alternate(n) / (m * n * stiff);
      }
    }
    return 16 * sum / Math.pow(Math.PI, 6);
  }

  private static double even(double ratio, int power, DoubleBinaryOperator weight) {
    double sum = 0;
    for (int m = 1; m < TERMS; m += 2) {
      for (int n = 1; n < TERMS; n += 2) {
        double a = m / ratio;
        sum += alternate(m) * alternate(n) * weight.applyAsDouble(a, n) / (m * n * square(a, n));
      }
    }
    return 16 * sum / Math.pow(Math.PI, power);
  }

  private static double square(double a, double b) {
    return (a * a + b * b) * (a * a + b * b);
  }

  /** The sine in the middle: 1, -1, 1, ... for 1, 3, 5, ... */
  private static int alternate(int odd) {
    return odd / 2 % 2 == 0 ? 1 : -1;
  }
}
