package fourpin.strength;

import java.util.List;
import java.util.stream.IntStream;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;

/**
 * A plate hinged along both ends and maybe its front edge, free behind, by a series of Ritz: sines
 * along it and powers over its depth, which shares nothing with the program's elements. Energy of
 * an orthotropic plate: Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed.
 * (1959), art. 85.
 *
 * @param front how its front edge is held
 * @param along modulus along, MPa; the others likewise
 * @param patches of even load
 */
record BottomRitz(
    Front front,
    double length,
    double depth,
    double thickness,
    double along,
    double across,
    double shear,
    double poisson,
    List<Patch> patches) {

  private static final int SINES = 41;
  private static final int POWERS = 7;

  /** How a front edge is held. */
  enum Front {
    FREE(0),
    HINGED(1);

    private final int least;

    Front(int least) {
      this.least = least;
    }
  }

  /** MPa, from and to along and over the depth. */
  record Patch(double pressure, double fromX, double toX, double fromY, double toY) {}

  /** How far a place of the back edge goes down, mm. */
  double backEdge(double x) {
    return IntStream.rangeClosed(1, SINES)
        .mapToDouble(m -> CommonOps_DDRM.elementSum(terms(m)) * Math.sin(wave(m) * x))
        .sum();
  }

  private double wave(int m) {
    return m * Math.PI / length;
  }

  private DMatrixRMaj terms(int m) {
    DMatrixRMaj energy = new DMatrixRMaj(POWERS, POWERS);
    DMatrixRMaj force = new DMatrixRMaj(POWERS, 1);
    for (int i = 0; i < POWERS; i++) {
      for (int j = 0; j < POWERS; j++) {
        energy.set(i, j, energy(wave(m), i + front.least, j + front.least));
      }
      int power = i + front.least;
      force.set(i, 0, patches.stream().mapToDouble(p -> force(p, wave(m), power)).sum());
    }
    DMatrixRMaj terms = new DMatrixRMaj(POWERS, 1);
    CommonOps_DDRM.solve(energy, force, terms);
    return terms;
  }

  private double energy(double a, int i, int j) {
    double cube = thickness * thickness * thickness / 12;
    double held = 1 - poisson * poisson * across / along;
    double stiffAcross = across * cube / held;
    double d = depth;
    return length
        / 2
        * d
        * (along * cube / held * Math.pow(a, 4) * over(i, 0, j, 0)
            + stiffAcross / Math.pow(d, 4) * over(i, 2, j, 2)
            - poisson * stiffAcross * a * a / (d * d) * (over(i, 0, j, 2) + over(i, 2, j, 0))
            + 4 * shear * cube * a * a / (d * d) * over(i, 1, j, 1));
  }

  /** Of s^i, derived so often, times s^j, likewise, for s from 0 to 1. */
  private static double over(int i, int derivedI, int j, int derivedJ) {
    double factor = factor(i, derivedI) * factor(j, derivedJ);
    return factor == 0 ? 0 : factor / (i - derivedI + j - derivedJ + 1);
  }

  private static double factor(int power, int derived) {
    return IntStream.range(0, derived).mapToDouble(d -> power - d).reduce(1, (x, y) -> x * y);
  }

  private double force(Patch p, double a, int power) {
    double x = (Math.cos(a * p.fromX()) - Math.cos(a * p.toX())) / a;
    double y =
        Math.pow(p.toY() / depth, power + 1.0)
            - Math.pow(Math.max(0, p.fromY()) / depth, power + 1.0);
    return p.pressure() * x * depth * y / (power + 1);
  }
}
