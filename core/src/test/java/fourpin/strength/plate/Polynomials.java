package fourpin.strength.plate;

/**
 * Legendre's polynomials of even degree on -1 to 1, and what {@link Ritz} needs of them; for
 * clamped ends each times {@code (1 - x²)²}.
 */
final class Polynomials {

  private static final int DERIVATIVES = 3;

  private final int count;
  private final boolean clamped;

  /** Of the product of two of them: the derivatives of both, then both. */
  private final double[][][][] products;

  private final double[] wholes;

  Polynomials(int count, boolean clamped) {
    this.count = count;
    this.clamped = clamped;
    this.products = new double[DERIVATIVES][DERIVATIVES][count][count];
    this.wholes = new double[count];
    int points = 2 * count + 4;
    for (int point = 0; point < points; point++) {
      double x = node(points, point);
      double slope = legendre(points, x)[1];
      add(x, 2 / ((1 - x * x) * slope * slope));
    }
  }

  /** Newton's way to a root of the polynomial of a degree: a point of Gauss's rule. */
  private static double node(int points, int point) {
    double x = Math.cos(Math.PI * (point + 0.75) / (points + 0.5));
    for (int step = 0; step < 20; step++) {
      double[] at = legendre(points, x);
      x -= at[0] / at[1];
    }
    return x;
  }

  private void add(double x, double weight) {
    double[][] at = at(x);
    for (int i = 0; i < count; i++) {
      wholes[i] += weight * at[i][0];
      for (int j = 0; j < count; j++) {
        for (int p = 0; p < DERIVATIVES; p++) {
          for (int q = 0; q < DERIVATIVES; q++) {
            products[p][q][i][j] += weight * at[i][p] * at[j][q];
          }
        }
      }
    }
  }

  int count() {
    return count;
  }

  double whole(int one) {
    return wholes[one];
  }

  double product(int one, int derivative, int other, int otherDerivative) {
    return products[derivative][otherDerivative][one][other];
  }

  /** Each of them with its two derivatives. */
  double[][] at(double x) {
    double[][] at = new double[count][];
    for (int i = 0; i < count; i++) {
      double[] p = legendre(2 * i, x);
      at[i] = clamped ? times(p, x) : p;
    }
    return at;
  }

  private static double[] times(double[] p, double x) {
    double inside = 1 - x * x;
    double[] hold = {inside * inside, -4 * x * inside, 12 * x * x - 4};
    return new double[] {
      hold[0] * p[0],
      hold[1] * p[0] + hold[0] * p[1],
      hold[2] * p[0] + 2 * hold[1] * p[1] + hold[0] * p[2]
    };
  }

  /** One with its two derivatives, by the recurrences. */
  private static double[] legendre(int degree, double x) {
    double[] before = {0, 0, 0};
    double[] now = {1, 0, 0};
    for (int n = 0; n < degree; n++) {
      double[] next = {
        ((2 * n + 1) * x * now[0] - n * before[0]) / (n + 1),
        before[1] + (2 * n + 1) * now[0],
        before[2] + (2 * n + 1) * now[1]
      };
      before = now;
      now = next;
    }
    return now;
  }
}
