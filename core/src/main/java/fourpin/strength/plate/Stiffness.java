package fourpin.strength.plate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.ejml.data.DMatrixRMaj;
import org.ejml.data.DMatrixSparseCSC;
import org.ejml.interfaces.linsol.LinearSolverSparse;
import org.ejml.sparse.FillReducing;
import org.ejml.sparse.csc.factory.LinearSolverFactory_DSCC;

/** The equations of a plate, solved once for all its loads. */
final class Stiffness {

  /** Sides that differ by rounding alone are alike. */
  private static final double ALIKE = 1e-12;

  private final Mesh mesh;
  private final Numbering numbering;
  private final Profile profile;
  private final LinearSolverSparse<DMatrixSparseCSC, DMatrixRMaj> solver;

  /**
   * @param held for each unknown, whether it is nothing
   * @throws IllegalArgumentException if that does not hold the plate
   */
  Stiffness(Plate plate, Mesh mesh, boolean[] held) {
    this.mesh = mesh;
    this.numbering = Numbering.least(mesh, held, together(plate));
    this.profile = new Profile(numbering);
    elements(plate);
    plate.strips().ifPresent(this::strips);
    this.solver = LinearSolverFactory_DSCC.cholesky(FillReducing.NONE);
    if (!solver.setA(profile.matrix())) {
      throw new IllegalArgumentException("nothing holds this plate: " + plate);
    }
  }

  /** Deflections, slopes and twists under forces on the unknowns. */
  double[] solve(double[] forces) {
    DMatrixRMaj right = DMatrixRMaj.wrap(numbering.count(), 1, numbering.numbered(forces));
    DMatrixRMaj unknowns = new DMatrixRMaj(numbering.count(), 1);
    solver.solve(right, unknowns);
    return numbering.spread(unknowns.data);
  }

  /** The unknowns of each element, and of those that strips join. */
  private List<int[]> together(Plate plate) {
    List<int[]> together = new ArrayList<>();
    for (int column = 0; column < mesh.x().spaces(); column++) {
      for (int row = 0; row < mesh.y().spaces(); row++) {
        together.add(unknowns(column, row));
      }
    }
    plate.strips().ifPresent(strips -> together.addAll(joined(strips)));
    return together;
  }

  private List<int[]> joined(Strips strips) {
    return IntStream.range(0, mesh.x().spaces())
        .mapToObj(
            column ->
                strips.strips().stream()
                    .flatMapToInt(s -> Arrays.stream(unknowns(column, mesh.y().space(s.y()))))
                    .toArray())
        .toList();
  }

  private int[] unknowns(int column, int row) {
    int[] unknowns = new int[Mesh.SHAPES];
    for (int shape = 0; shape < Mesh.SHAPES; shape++) {
      unknowns[shape] = mesh.unknown(column, row, shape);
    }
    return unknowns;
  }

  private void elements(Plate plate) {
    List<Hermite.Products> alongX =
        IntStream.range(0, mesh.x().spaces())
            .mapToObj(column -> Hermite.Products.of(mesh.x().side(column)))
            .toList();
    double edge = 0;
    for (Plate.Band band : plate.bands()) {
      double middle = edge + band.depth() / 2;
      edge += band.depth();
      for (int row = 0; row < mesh.y().spaces(); row++) {
        double at = (mesh.y().start(row) + mesh.y().end(row)) / 2;
        if (Math.abs(at - middle) < band.depth() / 2) {
          row(row, alongX, band.rigidity());
        }
      }
    }
  }

  private void row(int row, List<Hermite.Products> alongX, Rigidity rigidity) {
    Hermite.Products alongY = Hermite.Products.of(mesh.y().side(row));
    double[][] element = new double[0][];
    for (int column = 0; column < mesh.x().spaces(); column++) {
      element = likeLast(column) ? element : element(alongX.get(column), alongY, rigidity);
      add(unknowns(column, row), element);
    }
  }

  /** Whether a space is as long as the one before it, so that its element is the same. */
  private boolean likeLast(int column) {
    return column > 0 && Math.abs(mesh.x().side(column) / mesh.x().side(column - 1) - 1) < ALIKE;
  }

  /** The energy of bending, {@code ∫ Dx w,xx² + 2 D1 w,xx w,yy + Dy w,yy² + 4 Dxy w,xy²}. */
  static double[][] element(Hermite.Products x, Hermite.Products y, Rigidity d) {
    double[][] sum = new double[Mesh.SHAPES][Mesh.SHAPES];
    for (int one = 0; one < Mesh.SHAPES; one++) {
      int i = one / Hermite.SHAPES;
      int j = one % Hermite.SHAPES;
      for (int other = 0; other < Mesh.SHAPES; other++) {
        int k = other / Hermite.SHAPES;
        int l = other % Hermite.SHAPES;
        double bothWays = x.mixed()[k][i] * y.mixed()[j][l] + x.mixed()[i][k] * y.mixed()[l][j];
        sum[one][other] =
            d.alongX() * x.curvatures()[i][k] * y.values()[j][l]
                + d.alongY() * x.values()[i][k] * y.curvatures()[j][l]
                + d.coupling() * bothWays
                + 4 * d.twist() * x.slopes()[i][k] * y.slopes()[j][l];
      }
    }
    return sum;
  }

  /** Strips off the middle plane: {@code Σ kᵢⱼ ∫ w,xx at i w,xx at j}. */
  private void strips(Strips strips) {
    double[][] stiffness = strips.stiffness();
    for (int column = 0; column < mesh.x().spaces(); column++) {
      double side = mesh.x().side(column);
      for (int point = 0; point < Hermite.POINTS.length; point++) {
        double x = mesh.x().start(column) + side * Hermite.POINTS[point];
        List<Mesh.Weights> bent =
            strips.strips().stream().map(s -> mesh.weights(x, s.y(), 2, 0)).toList();
        for (int i = 0; i < bent.size(); i++) {
          for (int j = 0; j < bent.size(); j++) {
            add(bent.get(i), bent.get(j), stiffness[i][j] * side * Hermite.WEIGHTS[point]);
          }
        }
      }
    }
  }

  private void add(Mesh.Weights one, Mesh.Weights other, double times) {
    for (int i = 0; i < Mesh.SHAPES; i++) {
      double much = times * one.factors()[i];
      for (int j = 0; j < Mesh.SHAPES; j++) {
        add(one.unknowns()[i], other.unknowns()[j], much * other.factors()[j]);
      }
    }
  }

  private void add(int[] unknowns, double[][] element) {
    for (int one = 0; one < unknowns.length; one++) {
      for (int other = 0; other < unknowns.length; other++) {
        add(unknowns[one], unknowns[other], element[one][other]);
      }
    }
  }

  /** Nothing of what is held is kept. */
  private void add(int one, int other, double value) {
    int row = numbering.of(one);
    int column = numbering.of(other);
    if (row != Numbering.HELD && column != Numbering.HELD) {
      profile.add(row, column, value);
    }
  }
}
