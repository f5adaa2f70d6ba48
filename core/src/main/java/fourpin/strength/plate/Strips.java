package fourpin.strength.plate;

import java.util.List;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;

/**
 * Strips glued along a panel, whose middles lie off the middle of the panel. Where the shelf bends,
 * strip and panel pull at each other, which stiffens both; the panel stretches evenly and bends
 * sideways in its own plane, in which nothing holds it. For strips alike on both edges this is the
 * transformed section; for a strip on one edge it is the L section that is free to bend sideways.
 *
 * @param panelStretch E A of the panel, N
 * @param panelDepth mm
 * @param panelMiddle y of the panel's middle
 */
public record Strips(
    double panelStretch, double panelDepth, double panelMiddle, List<Strip> strips) {

  /**
   * One strip.
   *
   * @param y of its middle
   * @param stretch E A, N
   * @param below its middle below the panel's, mm
   */
  public record Strip(double y, double stretch, double below) {}

  public Strips {
    strips = List.copyOf(strips);
  }

  /** By how much the moment of each strip grows with the curvature of each, N·mm². */
  double[][] stiffness() {
    DMatrixRMaj pull = pull();
    double[][] stiffness = new double[strips.size()][strips.size()];
    for (int i = 0; i < strips.size(); i++) {
      for (int j = 0; j < strips.size(); j++) {
        stiffness[i][j] = strips.get(i).below() * pull.get(i, j) * strips.get(j).below();
      }
    }
    return stiffness;
  }

  /**
   * The force in each strip, N; positive pulls.
   *
   * @param curvatures of the panel along x at each strip, 1/mm
   */
  double[] forces(double[] curvatures) {
    DMatrixRMaj pull = pull();
    double[] forces = new double[strips.size()];
    for (int i = 0; i < forces.length; i++) {
      for (int j = 0; j < forces.length; j++) {
        forces[i] += pull.get(i, j) * strips.get(j).below() * curvatures[j];
      }
    }
    return forces;
  }

  /** Stretch of the panel along x, in its middle plane at {@code y}, under the strips' forces. */
  double panelStrain(double y, double[] forces) {
    double strain = 0;
    for (int i = 0; i < forces.length; i++) {
      strain -= forces[i] * give(y, strips.get(i).y());
    }
    return strain;
  }

  /** Forces in the strips for each unit of stretch that they are forced apart by. */
  private DMatrixRMaj pull() {
    DMatrixRMaj give = new DMatrixRMaj(strips.size(), strips.size());
    for (int i = 0; i < strips.size(); i++) {
      for (int j = 0; j < strips.size(); j++) {
        double own = i == j ? 1 / strips.get(i).stretch() : 0;
        give.set(i, j, own + give(strips.get(i).y(), strips.get(j).y()));
      }
    }
    CommonOps_DDRM.invert(give);
    return give;
  }

  /** Stretch of the panel at one place for each N along it at another: evenly and sideways. */
  private double give(double one, double other) {
    double sideways = 12 * (one - panelMiddle) * (other - panelMiddle) / (panelDepth * panelDepth);
    return (1 + sideways) / panelStretch;
  }
}
