package fourpin.strength.plate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fourpin.strength.plate.Plate.Edges;
import fourpin.strength.plate.Plate.Support;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The patch test of the finite element method (Irons; see Strang and Fix, An Analysis of the Finite
 * Element Method, 1973): a field of even curvature is in balance inside a mesh of any spacing, and
 * its energy is exact.
 */
class PatchTest {

  private static final double LENGTH = 700;
  private static final double DEPTH = 300;
  private static final Rigidity WOOD = Rigidity.of(12_000, 900, 0.4, 800, 20);

  /** Fields {@code w} with their slopes and twist. */
  private enum Field {
    FLAT(1, 0, 0, 0, 0, 0),
    TILTED(0, 2e-3, -3e-3, 0, 0, 0),
    BENT_ALONG(0, 0, 0, 1e-5, 0, 0),
    BENT_ACROSS(0, 0, 0, 0, 2e-5, 0),
    TWISTED(0, 0, 0, 0, 0, 3e-5),
    ALL(0.4, 1e-3, -2e-3, 1e-5, -2e-5, 3e-5);

    private final double w;
    private final double slopeX;
    private final double slopeY;
    private final double bendX;
    private final double bendY;
    private final double twist;

    Field(double w, double slopeX, double slopeY, double bendX, double bendY, double twist) {
      this.w = w;
      this.slopeX = slopeX;
      this.slopeY = slopeY;
      this.bendX = bendX;
      this.bendY = bendY;
      this.twist = twist;
    }

    private double[] at(double x, double y) {
      double sum = w + slopeX * x + slopeY * y + bendX * x * x + bendY * y * y + twist * x * y;
      return new double[] {
        sum, slopeX + 2 * bendX * x + twist * y, slopeY + 2 * bendY * y + twist * x, twist
      };
    }

    /** The energy of a plate of the size above, twice. */
    private double energy(Rigidity d) {
      return LENGTH
          * DEPTH
          * (d.alongX() * 4 * bendX * bendX
              + 2 * d.coupling() * 4 * bendX * bendY
              + d.alongY() * 4 * bendY * bendY
              + 4 * d.twist() * twist * twist);
    }
  }

  /** Supports at odd places make the spacing of the mesh uneven. */
  private static Plate uneven() {
    List<Support> supports =
        List.of(
            new Support(3, 37), new Support(655, 11), new Support(100, 290), new Support(690, 222));
    return Plate.even(LENGTH, DEPTH, WOOD, Edges.FREE, supports);
  }

  @ParameterizedTest
  @EnumSource(Field.class)
  void evenBendingAndTwistAreExact(Field field) {
    Mesh mesh = new Mesh(uneven(), 6, Fold.WHOLE);
    double[] forces = new double[mesh.unknowns()];
    double energy = 0;
    double largest = 0;
    for (int column = 0; column < mesh.x().spaces(); column++) {
      for (int row = 0; row < mesh.y().spaces(); row++) {
        double[][] element =
            Stiffness.element(
                Hermite.Products.of(mesh.x().side(column)),
                Hermite.Products.of(mesh.y().side(row)),
                WOOD);
        for (int one = 0; one < Mesh.SHAPES; one++) {
          for (int other = 0; other < Mesh.SHAPES; other++) {
            double force = element[one][other] * value(mesh, field, column, row, other);
            forces[mesh.unknown(column, row, one)] += force;
            energy += force * value(mesh, field, column, row, one);
            largest = Math.max(largest, Math.abs(force));
          }
        }
      }
    }
    assertThat(energy).isCloseTo(field.energy(WOOD), within(1e-6 * largest));
    for (int column = 1; column < mesh.x().count() - 1; column++) {
      for (int row = 1; row < mesh.y().count() - 1; row++) {
        for (int unknown = 0; unknown < Mesh.UNKNOWNS; unknown++) {
          assertThat(forces[mesh.crossing(column, row) + unknown])
              .isCloseTo(0, within(1e-9 * largest));
        }
      }
    }
  }

  private static double value(Mesh mesh, Field field, int column, int row, int shape) {
    int unknown = mesh.unknown(column, row, shape);
    int crossing = unknown / Mesh.UNKNOWNS;
    double x = mesh.x().at(crossing / mesh.y().count());
    double y = mesh.y().at(crossing % mesh.y().count());
    return field.at(x, y)[unknown % Mesh.UNKNOWNS];
  }

  /**
   * One corner of four forced down twists a plate evenly: {@code w = d x y / (a b)}, and each
   * corner takes {@code 2 Mxy = 4 Dxy d / (a b)} (Timoshenko and Woinowsky-Krieger, 2nd ed. 1959,
   * art. 11 and 22: corner reactions and anticlastic surface).
   */
  @Test
  void aPlateTwistedByItsCornersIsExact() {
    List<Support> corners =
        List.of(
            new Support(0, 0),
            new Support(LENGTH, 0),
            new Support(0, DEPTH),
            new Support(LENGTH, DEPTH));
    Plate plate = Plate.even(LENGTH, DEPTH, WOOD, Edges.FREE, corners);
    // Enough load to keep it down everywhere, taken off again afterwards.
    List<PlateLoad> load = List.of(plate.evenly(0.01));
    PlateSolver solver = new PlateSolver(plate);
    BentPlate level = solver.under(load).orElseThrow();
    BentPlate twisted = solver.under(load, List.of(0.0, 0.0, 0.0, 2.0)).orElseThrow();
    double corner = 4 * WOOD.twist() * 2 / (LENGTH * DEPTH);
    assertThat(twisted.reactions().get(0) - level.reactions().get(0))
        .isCloseTo(-corner, within(1e-6));
    assertThat(twisted.reactions().get(1) - level.reactions().get(1))
        .isCloseTo(corner, within(1e-6));
    for (double x = 0; x <= LENGTH; x += 70) {
      for (double y = 0; y <= DEPTH; y += 50) {
        assertThat(twisted.deflection(x, y) - level.deflection(x, y))
            .isCloseTo(2 * x * y / (LENGTH * DEPTH), within(1e-7));
        assertThat(twisted.moments(x, y).twist() - level.moments(x, y).twist())
            .isCloseTo(2 * WOOD.twist() * 2 / (LENGTH * DEPTH), within(1e-6));
      }
    }
  }

  @Test
  void aPlateThatNothingHoldsIsRefused() {
    List<Support> inLine = List.of(new Support(0, 50), new Support(50, 50), new Support(90, 50));
    Plate plate = Plate.even(100, 100, WOOD, Edges.FREE, inLine);
    assertThatThrownBy(() -> new PlateSolver(plate)).hasMessageContaining("do not hold");
  }
}
