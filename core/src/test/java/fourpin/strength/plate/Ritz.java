package fourpin.strength.plate;

import java.util.function.IntToDoubleFunction;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;

/**
 * A second method, which shares nothing with the elements of the solver: polynomials over the whole
 * plate with the least energy (Ritz 1909), alike on both sides as what they bend under, and
 * supports held by a multiplier.
 */
public final class Ritz {

  private static final int FUNCTIONS = 16;

  private final double length;
  private final double depth;
  private final Rigidity rigidity;
  private final Polynomials polynomials;
  private final double[] shares;

  private Ritz(
      double length,
      double depth,
      Rigidity rigidity,
      Polynomials polynomials,
      DMatrixRMaj left,
      DMatrixRMaj right) {
    this.length = length;
    this.depth = depth;
    this.rigidity = rigidity;
    this.polynomials = polynomials;
    DMatrixRMaj unknowns = new DMatrixRMaj(left.numRows, 1);
    CommonOps_DDRM.solve(left, right, unknowns);
    this.shares = unknowns.data;
  }

  /** What there is to solve. */
  private record Setting(double length, double depth, Rigidity rigidity, Polynomials p) {

    int size() {
      return p.count() * p.count();
    }

    /** Of each product of two polynomials, twice its energy with another. */
    double energy(int one, int other) {
      int i = one / p.count();
      int k = one % p.count();
      int j = other / p.count();
      int l = other % p.count();
      return rigidity.alongX() * along(i, 2, j, 2) * across(k, 0, l, 0)
          + rigidity.alongY() * along(i, 0, j, 0) * across(k, 2, l, 2)
          + rigidity.coupling() * along(i, 2, j, 0) * across(k, 0, l, 2)
          + rigidity.coupling() * along(i, 0, j, 2) * across(k, 2, l, 0)
          + 4 * rigidity.twist() * along(i, 1, j, 1) * across(k, 1, l, 1);
    }

    private double along(int one, int derivative, int other, int otherDerivative) {
      return p.product(one, derivative, other, otherDerivative)
          * Math.pow(2 / length, derivative + otherDerivative - 1);
    }

    private double across(int one, int derivative, int other, int otherDerivative) {
      return p.product(one, derivative, other, otherDerivative)
          * Math.pow(2 / depth, derivative + otherDerivative - 1);
    }

    /** Of 1 MPa all over. */
    double even(int product) {
      return p.whole(product / p.count()) * p.whole(product % p.count()) * length * depth / 4;
    }

    double at(int product, double x, double y) {
      return p.at(2 * x / length - 1)[product / p.count()][0]
          * p.at(2 * y / depth - 1)[product % p.count()][0];
    }

    DMatrixRMaj left(int more) {
      DMatrixRMaj left = new DMatrixRMaj(size() + more, size() + more);
      for (int one = 0; one < size(); one++) {
        for (int other = 0; other < size(); other++) {
          left.set(one, other, energy(one, other));
        }
      }
      return left;
    }

    DMatrixRMaj right(int more, IntToDoubleFunction load) {
      DMatrixRMaj right = new DMatrixRMaj(size() + more, 1);
      for (int one = 0; one < size(); one++) {
        right.set(one, 0, load.applyAsDouble(one));
      }
      return right;
    }

    Ritz solved(DMatrixRMaj left, DMatrixRMaj right) {
      return new Ritz(length, depth, rigidity, p, left, right);
    }
  }

  private static Setting setting(double length, double depth, Rigidity rigidity, boolean clamped) {
    return new Setting(length, depth, rigidity, new Polynomials(FUNCTIONS, clamped));
  }

  /** All edges clamped, under 1 MPa. */
  public static Ritz clamped(double length, double depth, Rigidity rigidity) {
    Setting setting = setting(length, depth, rigidity, true);
    return setting.solved(setting.left(0), setting.right(0, setting::even));
  }

  /** All edges clamped, under 1 N in the middle. */
  public static Ritz clampedAndPoked(double length, double depth, Rigidity rigidity) {
    Setting setting = setting(length, depth, rigidity, true);
    return setting.solved(
        setting.left(0), setting.right(0, one -> setting.at(one, length / 2, depth / 2)));
  }

  /**
   * On four supports that lie alike, under 1 MPa.
   *
   * @param x of the supports, from the ends; {@code y} from front and back
   */
  public static Ritz onFour(double length, double depth, Rigidity rigidity, double x, double y) {
    Setting setting = setting(length, depth, rigidity, false);
    DMatrixRMaj left = setting.left(1);
    for (int one = 0; one < setting.size(); one++) {
      double held = setting.at(one, x, y);
      left.set(one, setting.size(), held);
      left.set(setting.size(), one, held);
    }
    return setting.solved(left, setting.right(1, setting::even));
  }

  /** Downward. */
  public double sag(double x, double y) {
    return sum(x, y, 0, 0);
  }

  /** The moment that bends along x, N for each mm of width. */
  public double momentX(double x, double y) {
    return -rigidity.alongX() * sum(x, y, 2, 0) - rigidity.coupling() * sum(x, y, 0, 2);
  }

  private double sum(double x, double y, int derivativeX, int derivativeY) {
    double[][] along = polynomials.at(2 * x / length - 1);
    double[][] across = polynomials.at(2 * y / depth - 1);
    double sum = 0;
    for (int i = 0; i < polynomials.count(); i++) {
      for (int j = 0; j < polynomials.count(); j++) {
        sum += shares[i * polynomials.count() + j] * along[i][derivativeX] * across[j][derivativeY];
      }
    }
    return sum * Math.pow(2 / length, derivativeX) * Math.pow(2 / depth, derivativeY);
  }
}
