package fourpin.strength.plate;

/**
 * The four cubics of an element's side: value and slope at its start, value and slope at its end.
 * Products of them, one along x and one along y, are the 16 shapes of the rectangle of Bogner, Fox
 * and Schmit (1965).
 */
final class Hermite {

  static final int SHAPES = 4;

  /** Points and weights of Gauss's rule on 0 to 1, exact for the sixth power of these cubics. */
  static final double[] POINTS = {
    0.069431844202973712, 0.330009478207571868, 0.669990521792428132, 0.930568155797026288
  };

  static final double[] WEIGHTS = {
    0.173927422568726929, 0.326072577431273071, 0.326072577431273071, 0.173927422568726929
  };

  private Hermite() {}

  /**
   * All four, or their derivatives.
   *
   * @param at from 0 to 1 along the side
   * @param side its length
   */
  static double[] shapes(int derivative, double at, double side) {
    return switch (derivative) {
      case 0 -> values(at, side);
      case 1 -> slopes(at, side);
      case 2 -> curvatures(at, side);
      default -> throw new IllegalArgumentException("no derivative " + derivative);
    };
  }

  private static double[] values(double s, double side) {
    double end = s * s * (3 - 2 * s);
    return new double[] {1 - end, s * (1 - s) * (1 - s) * side, end, s * s * (s - 1) * side};
  }

  private static double[] slopes(double s, double side) {
    double end = 6 * s * (1 - s) / side;
    return new double[] {-end, (1 - s) * (1 - 3 * s), end, s * (3 * s - 2)};
  }

  private static double[] curvatures(double s, double side) {
    double end = (6 - 12 * s) / (side * side);
    return new double[] {-end, (6 * s - 4) / side, end, (6 * s - 2) / side};
  }

  /** The integrals over a side of the products of two derivatives of each pair of shapes. */
  record Products(double[][] values, double[][] slopes, double[][] mixed, double[][] curvatures) {

    /**
     * @param side the length of the side
     */
    static Products of(double side) {
      return new Products(
          scaled(VALUES, 1, side),
          scaled(SLOPES, -1, side),
          scaled(MIXED, -1, side),
          scaled(CURVATURES, -3, side));
    }
  }

  private static final double[][] VALUES = onUnitSide(0, 0);
  private static final double[][] SLOPES = onUnitSide(1, 1);
  private static final double[][] MIXED = onUnitSide(0, 2);
  private static final double[][] CURVATURES = onUnitSide(2, 2);

  private static double[][] onUnitSide(int first, int second) {
    double[][] sum = new double[SHAPES][SHAPES];
    for (int point = 0; point < POINTS.length; point++) {
      double[] ones = shapes(first, POINTS[point], 1);
      double[] others = shapes(second, POINTS[point], 1);
      for (int i = 0; i < SHAPES; i++) {
        for (int j = 0; j < SHAPES; j++) {
          sum[i][j] += ones[i] * others[j] * WEIGHTS[point];
        }
      }
    }
    return sum;
  }

  /** Slopes of a longer side bend it more; each derivative bends it less. */
  private static double[][] scaled(double[][] unit, int power, double side) {
    double values = Math.pow(side, power);
    double[] bySlopes = {values, values * side, values * side * side};
    double[][] scaled = new double[SHAPES][SHAPES];
    for (int i = 0; i < SHAPES; i++) {
      for (int j = 0; j < SHAPES; j++) {
        scaled[i][j] = unit[i][j] * bySlopes[i % 2 + j % 2];
      }
    }
    return scaled;
  }

  /**
   * The integral of each shape over a part of its side.
   *
   * @param from where the part begins, from 0 to 1 along the side
   * @param to where it ends
   */
  static double[] sums(double from, double to, double side) {
    double[] sums = new double[SHAPES];
    for (int point = 0; point < POINTS.length; point++) {
      double[] values = values(from + (to - from) * POINTS[point], side);
      for (int i = 0; i < SHAPES; i++) {
        sums[i] += values[i] * WEIGHTS[point] * (to - from) * side;
      }
    }
    return sums;
  }
}
