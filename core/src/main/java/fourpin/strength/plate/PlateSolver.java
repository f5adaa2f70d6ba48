package fourpin.strength.plate;

import fourpin.strength.plate.Plate.Edges;
import fourpin.strength.plate.Plate.Hold;
import fourpin.strength.plate.Plate.Support;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * Bends a plate, by rectangles of Bogner, Fox and Schmit: bicubic, with slopes that run on from one
 * to the next, right for each state of even bending and twist. A plate with free edges is held on
 * three of its supports while it is bent, and then rolled on to those that it rests on.
 */
public final class PlateSolver {

  /** Spaces along the plate; {@code docs/plate-convergence.md} shows what more would change. */
  public static final int PARTS = 10;

  private final Plate plate;
  private final Mesh mesh;
  private final Stiffness stiffness;

  /** Three supports that hold the plate while it is bent; none where its edges are held. */
  private final List<Integer> base;

  /** The plate bent by 1 N down at each support. */
  private final double[][] poked;

  private final Contact contact;

  public PlateSolver(Plate plate) {
    this(plate, PARTS);
  }

  /**
   * @param parts spaces along the plate
   * @throws IllegalArgumentException if neither edges nor supports hold it
   */
  public PlateSolver(Plate plate, int parts) {
    this.plate = plate;
    this.mesh = new Mesh(plate, parts);
    this.base = plate.edges().equals(Edges.FREE) ? widest(plate.supports()) : List.of();
    this.stiffness = new Stiffness(plate, mesh, held());
    int count = plate.supports().size();
    this.poked = new double[count][];
    double[][] give = new double[count][count];
    double[][] rolling = new double[count][];
    for (int i = 0; i < count; i++) {
      Support support = plate.supports().get(i);
      PlateLoad poke = new PlateLoad.Point(1, support.x(), support.y());
      poked[i] =
          base.contains(i)
              ? new double[mesh.unknowns()]
              : stiffness.solve(Forces.of(mesh, List.of(poke)));
      rolling[i] = movements(support.x(), support.y());
    }
    for (int i = 0; i < count; i++) {
      give[i] = atSupports(poked[i]);
    }
    this.contact = new Contact(transposed(give), rolling);
  }

  /**
   * The plate on level supports.
   *
   * @return nothing if it tips off them
   */
  public Optional<BentPlate> under(List<PlateLoad> loads) {
    return under(loads, Collections.nCopies(plate.supports().size(), 0.0));
  }

  /**
   * The plate on supports that do not lie level.
   *
   * @param low how low each support lies, mm
   * @return nothing if it tips off them
   */
  public Optional<BentPlate> under(List<PlateLoad> loads, List<Double> low) {
    double[] bent = bent(loads);
    return contact
        .find(atSupports(bent), work(loads), numbers(low))
        .map(touch -> new BentPlate(plate, mesh, field(bent, touch), touch.pushes()));
  }

  /**
   * How hard each support would push if all of them touched and held the plate down: where all come
   * out positive, that is how it lies. Grows evenly with the loads and with how low supports lie.
   */
  public double[] pushesIfAllTouch(List<PlateLoad> loads, List<Double> low) {
    double[] bent = bent(loads);
    return contact.all(atSupports(bent), work(loads), numbers(low));
  }

  private double[] bent(List<PlateLoad> loads) {
    return loads.isEmpty() ? new double[mesh.unknowns()] : stiffness.solve(Forces.of(mesh, loads));
  }

  private static double[] numbers(List<Double> low) {
    return low.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private double[] field(double[] bent, Contact.Touch touch) {
    double[] field = bent.clone();
    for (int i = 0; i < poked.length; i++) {
      for (int unknown = 0; unknown < field.length; unknown++) {
        field[unknown] -= touch.pushes()[i] * poked[i][unknown];
      }
    }
    roll(field, touch.rolled());
    return field;
  }

  private void roll(double[] field, double[] rolled) {
    if (rolled.length == 0) {
      return;
    }
    for (int column = 0; column < mesh.x().count(); column++) {
      for (int row = 0; row < mesh.y().count(); row++) {
        double[] movements = movements(mesh.x().at(column), mesh.y().at(row));
        int unknown = mesh.crossing(column, row);
        for (int m = 0; m < rolled.length; m++) {
          field[unknown] += rolled[m] * movements[m];
        }
        field[unknown + 1] += rolled[1] / plate.length();
        field[unknown + 2] += rolled[2] / plate.depth();
      }
    }
  }

  /** How far a place goes down when the plate sinks, and rolls about its left and front edge. */
  private double[] movements(double x, double y) {
    return base.isEmpty() ? new double[0] : new double[] {1, x / plate.length(), y / plate.depth()};
  }

  private double[] work(List<PlateLoad> loads) {
    double[] work = movements(0, 0);
    Arrays.fill(work, 0);
    for (PlateLoad load : loads) {
      double[] movements = movements(load.middleX(), load.middleY());
      for (int m = 0; m < work.length; m++) {
        work[m] += load.total() * movements[m];
      }
    }
    return work;
  }

  private double[] atSupports(double[] field) {
    return plate.supports().stream()
        .mapToDouble(s -> mesh.weights(s.x(), s.y(), 0, 0).of(field))
        .toArray();
  }

  private static double[][] transposed(double[][] square) {
    double[][] turned = new double[square.length][square.length];
    for (int i = 0; i < square.length; i++) {
      for (int j = 0; j < square.length; j++) {
        turned[j][i] = square[i][j];
      }
    }
    return turned;
  }

  /** The three supports that span the widest triangle. */
  private static List<Integer> widest(List<Support> supports) {
    List<Integer> widest = List.of();
    double most = 0;
    for (int i = 0; i < supports.size(); i++) {
      for (int j = i + 1; j < supports.size(); j++) {
        for (int k = j + 1; k < supports.size(); k++) {
          double area = area(supports.get(i), supports.get(j), supports.get(k));
          if (area > most) {
            most = area;
            widest = List.of(i, j, k);
          }
        }
      }
    }
    if (widest.isEmpty()) {
      throw new IllegalArgumentException("these supports do not hold a plate: " + supports);
    }
    return widest;
  }

  private static double area(Support a, Support b, Support c) {
    return Math.abs((b.x() - a.x()) * (c.y() - a.y()) - (c.x() - a.x()) * (b.y() - a.y()));
  }

  /** Which unknowns are nothing: along held edges, and at the supports of the base. */
  private boolean[] held() {
    boolean[] held = new boolean[mesh.unknowns()];
    int lastColumn = mesh.x().count() - 1;
    int lastRow = mesh.y().count() - 1;
    for (int row = 0; row <= lastRow; row++) {
      hold(held, mesh.crossing(0, row), plate.edges().left(), 1, 2);
      hold(held, mesh.crossing(lastColumn, row), plate.edges().right(), 1, 2);
    }
    for (int column = 0; column <= lastColumn; column++) {
      hold(held, mesh.crossing(column, 0), plate.edges().front(), 2, 1);
      hold(held, mesh.crossing(column, lastRow), plate.edges().back(), 2, 1);
    }
    for (int index : base) {
      Support support = plate.supports().get(index);
      held[mesh.crossing(mesh.x().line(support.x()), mesh.y().line(support.y()))] = true;
    }
    return held;
  }

  /**
   * @param across the unknown that is the slope across the edge
   * @param along likewise along it
   */
  private static void hold(boolean[] held, int crossing, Hold hold, int across, int along) {
    if (hold != Hold.FREE) {
      held[crossing] = true;
      held[crossing + along] = true;
    }
    if (hold == Hold.CLAMPED) {
      held[crossing + across] = true;
      held[crossing + 3] = true;
    }
  }
}
