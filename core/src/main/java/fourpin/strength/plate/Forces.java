package fourpin.strength.plate;

import java.util.ArrayList;
import java.util.List;

/** Loads as forces on the unknowns of a mesh, by the work that they do. */
final class Forces {

  private Forces() {}

  static double[] of(Mesh mesh, List<PlateLoad> loads) {
    double[] forces = new double[mesh.unknowns()];
    for (PlateLoad load : loads) {
      switch (load) {
        case PlateLoad.Point(double force, double x, double y) ->
            mesh.weights(x, y, 0, 0).addTo(forces, force);
        case PlateLoad.Patch patch -> add(mesh, patch, forces);
      }
    }
    return forces;
  }

  /** An even load does its work one way after the other. */
  private static void add(Mesh mesh, PlateLoad.Patch patch, double[] forces) {
    List<double[]> alongX = sums(mesh.x(), patch.fromX(), patch.toX());
    List<double[]> alongY = sums(mesh.y(), patch.fromY(), patch.toY());
    for (int column = 0; column < alongX.size(); column++) {
      for (int row = 0; row < alongY.size(); row++) {
        for (int shape = 0; shape < Mesh.SHAPES; shape++) {
          forces[mesh.unknown(column, row, shape)] +=
              patch.pressure()
                  * alongX.get(column)[shape / Hermite.SHAPES]
                  * alongY.get(row)[shape % Hermite.SHAPES];
        }
      }
    }
  }

  /** For each space, the integrals of its shapes over what of it the load covers. */
  private static List<double[]> sums(Lines lines, double from, double to) {
    List<double[]> sums = new ArrayList<>();
    for (int space = 0; space < lines.spaces(); space++) {
      double start = Math.clamp((from - lines.start(space)) / lines.side(space), 0, 1);
      double end = Math.clamp((to - lines.start(space)) / lines.side(space), 0, 1);
      sums.add(Hermite.sums(start, end, lines.side(space)));
    }
    return sums;
  }
}
