package fourpin.strength.plate;

import java.util.List;
import java.util.stream.IntStream;
import org.ejml.data.DMatrixRMaj;
import org.ejml.data.DMatrixSparseCSC;
import org.ejml.interfaces.linsol.LinearSolverSparse;
import org.ejml.sparse.FillReducing;
import org.ejml.sparse.csc.factory.LinearSolverFactory_DSCC;

/**
 * The equations of a plate, solved once for all its loads. Unknowns are numbered column by column,
 * so that the matrix is a narrow band and needs no other order.
 */
final class Stiffness {

  private static final int HELD = -1;

  /** Sides that differ by rounding alone are alike. */
  private static final double ALIKE = 1e-12;

  private final Mesh mesh;

  /** The number of each unknown among those that are free, or {@link #HELD}. */
  private final int[] free;

  private final int freeCount;
  private final int width;

  /** The half of the band that ends in the diagonal, column by column. */
  private final double[][] band;

  private final LinearSolverSparse<DMatrixSparseCSC, DMatrixRMaj> solver;

  /**
   * @param held for each unknown, whether it is nothing
   * @throws IllegalArgumentException if that does not hold the plate
   */
  Stiffness(Plate plate, Mesh mesh, boolean[] held) {
    this.mesh = mesh;
    this.free = new int[held.length];
    int count = 0;
    for (int i = 0; i < held.length; i++) {
      free[i] = held[i] ? HELD : count++;
    }
    this.freeCount = count;
    this.width = plate.pullsAcross() ? mesh.crossing(2, 0) : mesh.crossing(1, 2);
    this.band = new double[count][width];
    elements(plate);
    plate.strips().ifPresent(this::strips);
    this.solver = LinearSolverFactory_DSCC.cholesky(FillReducing.NONE);
    if (!solver.setA(sparse())) {
      throw new IllegalArgumentException("nothing holds this plate: " + plate);
    }
  }

  /** Deflections, slopes and twists under forces on the unknowns. */
  double[] solve(double[] forces) {
    DMatrixRMaj right = new DMatrixRMaj(freeCount, 1);
    DMatrixRMaj unknowns = new DMatrixRMaj(freeCount, 1);
    for (int i = 0; i < free.length; i++) {
      if (free[i] != HELD) {
        right.data[free[i]] = forces[i];
      }
    }
    solver.solve(right, unknowns);
    double[] field = new double[free.length];
    for (int i = 0; i < free.length; i++) {
      field[i] = free[i] == HELD ? 0 : unknowns.data[free[i]];
    }
    return field;
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
    int[] places = new int[Mesh.SHAPES];
    for (int column = 0; column < mesh.x().spaces(); column++) {
      element = likeLast(column) ? element : element(alongX.get(column), alongY, rigidity);
      for (int shape = 0; shape < Mesh.SHAPES; shape++) {
        places[shape] = free[mesh.unknown(column, row, shape)];
      }
      add(places, element);
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
      int row = free[one.unknowns()[i]];
      double much = times * one.factors()[i];
      for (int j = 0; row != HELD && j < Mesh.SHAPES; j++) {
        int column = free[other.unknowns()[j]];
        if (column >= row) {
          band[column][width - 1 - (column - row)] += much * other.factors()[j];
        }
      }
    }
  }

  /** Only the half over the diagonal is kept, and nothing of what is held. */
  private void add(int[] places, double[][] element) {
    for (int one = 0; one < places.length; one++) {
      int row = places[one];
      for (int other = 0; row != HELD && other < places.length; other++) {
        int column = places[other];
        if (column >= row) {
          band[column][width - 1 - (column - row)] += element[one][other];
        }
      }
    }
  }

  private DMatrixSparseCSC sparse() {
    DMatrixSparseCSC matrix = new DMatrixSparseCSC(freeCount, freeCount, freeCount * width);
    for (int column = 0; column < freeCount; column++) {
      matrix.col_idx[column] = matrix.nz_length;
      for (int row = Math.max(0, column - width + 1); row <= column; row++) {
        double value = band[column][width - 1 - (column - row)];
        if (value != 0) {
          matrix.nz_rows[matrix.nz_length] = row;
          matrix.nz_values[matrix.nz_length++] = value;
        }
      }
    }
    matrix.col_idx[freeCount] = matrix.nz_length;
    matrix.indicesSorted = true;
    return matrix;
  }
}
