package fourpin.strength.plate;

import fourpin.strength.plate.Plate.Hold;
import fourpin.strength.plate.Plate.Support;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;

/**
 * Bends a plate, by rectangles of Bogner, Fox and Schmit: bicubic, with slopes that run on from one
 * to the next, right for each state of even bending and twist. A plate with free edges is held on
 * three of its supports while it is bent, and then rolled on to those that it rests on.
 */
public final class PlateSolver {

  /** Spaces along the plate; {@code docs/plate-convergence.md} shows what more would change. */
  public static final int PARTS = 10;

  /** In words, for workings. */
  public static final String MESH =
      "at least " + PARTS + " spaces along and " + Mesh.overDepth(PARTS) + " over the depth";

  /** Sets of supports whose holds differ by rounding alone hold alike. */
  private static final double SAME = 1e-12;

  private final Plate plate;
  private final double depth;
  private final Fold fold;
  private final Footing footing;
  private final List<Movement> movements;
  private final Mesh mesh;
  private final Stiffness stiffness;

  /**
   * Supports that hold the plate while it is bent, three for a whole one; none where its edges are
   * held.
   */
  private final List<Integer> base;

  /** The plate bent by 1 N down at each support. */
  private final double[][] poked;

  private final Contact contact;

  /** How unit loads bend it while it is held: whatever their amount, each place is solved once. */
  private final Map<PlateLoad, double[]> bentByUnits = new HashMap<>();

  public PlateSolver(Plate plate) {
    this(plate, PARTS);
  }

  /**
   * @param parts spaces along the plate
   * @throws IllegalArgumentException if neither edges nor supports hold it
   */
  public PlateSolver(Plate plate, int parts) {
    this(plate, parts, Fold.WHOLE);
  }

  PlateSolver(Plate plate, int parts, Fold fold) {
    this.plate = plate;
    this.depth = plate.depth();
    this.fold = fold;
    this.footing = Footing.of(plate, fold);
    this.movements = Movement.of(plate, fold);
    this.mesh = new Mesh(plate, parts, fold);
    this.base = widest();
    this.stiffness = new Stiffness(plate, mesh, held());
    int count = footing.count();
    this.poked = new double[count][];
    double[][] give = new double[count][count];
    double[][] rolling = new double[count][];
    for (int i = 0; i < count; i++) {
      Support support = footing.support(i);
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
        .find(atSupports(bent), work(loads), footing.of(low))
        .map(touch -> lying(bent, touch));
  }

  private BentPlate lying(double[] bent, Contact.Touch touch) {
    return new BentPlate(plate, mesh, field(bent, touch), footing.spread(touch.pushes()));
  }

  /** The plate held down on level supports, so that some of them may have to pull. */
  BentPlate heldDown(List<PlateLoad> loads) {
    double[] bent = bent(loads);
    return lying(bent, contact.all(atSupports(bent), work(loads), new double[footing.count()]));
  }

  /**
   * How hard each support would push if all of them touched and held the plate down: where all come
   * out positive, that is how it lies. Grows evenly with the loads and with how low supports lie.
   */
  public double[] pushesIfAllTouch(List<PlateLoad> loads, List<Double> low) {
    double[] bent = bent(loads);
    return footing.spread(contact.all(atSupports(bent), work(loads), footing.of(low)).pushes());
  }

  private double[] bent(List<PlateLoad> loads) {
    double[] bent = new double[mesh.unknowns()];
    for (PlateLoad load : onPart(loads)) {
      double[] unit = bentByUnits.computeIfAbsent(load.unit(), this::bentBy);
      for (int i = 0; i < bent.length; i++) {
        bent[i] += load.amount() * unit[i];
      }
    }
    return bent;
  }

  private double[] bentBy(PlateLoad unit) {
    return stiffness.solve(Forces.of(mesh, List.of(unit)));
  }

  /** What of the loads lies on the part that is bent. */
  private List<PlateLoad> onPart(List<PlateLoad> loads) {
    return fold == Fold.WHOLE
        ? loads
        : loads.stream().flatMap(load -> load.leftOf(plate.length() / 2).stream()).toList();
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
    for (int m = 0; m < rolled.length; m++) {
      Movement movement = movements.get(m);
      for (int column = 0; column < mesh.x().count(); column++) {
        for (int row = 0; row < mesh.y().count(); row++) {
          int unknown = mesh.crossing(column, row);
          double x = mesh.x().at(column) / plate.length();
          double y = mesh.y().at(row) / depth;
          field[unknown] += rolled[m] * movement.at(x, y);
          field[unknown + 1] += rolled[m] * movement.alongX() / plate.length();
          field[unknown + 2] += rolled[m] * movement.alongY() / depth;
        }
      }
    }
  }

  /** How far a place goes down by each of the movements. */
  private double[] movements(double x, double y) {
    return movements.stream().mapToDouble(m -> m.at(x / plate.length(), y / depth)).toArray();
  }

  private double[] work(List<PlateLoad> loads) {
    double[] work = new double[movements.size()];
    for (PlateLoad load : onPart(loads)) {
      double[] movements = movements(load.middleX(), load.middleY());
      for (int m = 0; m < work.length; m++) {
        work[m] += load.total() * movements[m];
      }
    }
    return work;
  }

  private double[] atSupports(double[] field) {
    return IntStream.range(0, footing.count())
        .mapToObj(footing::support)
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

  /** As many supports as there are movements, those that hold the plate best against them. */
  private List<Integer> widest() {
    List<Integer> widest = List.of();
    double most = 0;
    for (int set = 0; set < 1 << footing.count(); set++) {
      if (Integer.bitCount(set) == movements.size()) {
        List<Integer> some = members(set);
        double hold = Math.abs(hold(some));
        widest = hold > most + SAME ? some : widest;
        most = Math.max(most, hold);
      }
    }
    if (widest.size() < movements.size()) {
      throw new IllegalArgumentException("these supports do not hold a plate: " + plate.supports());
    }
    return widest;
  }

  private static List<Integer> members(int set) {
    return IntStream.range(0, Integer.SIZE).filter(i -> (set >> i & 1) == 1).boxed().toList();
  }

  /** For three supports of a whole plate, the triangle that they span. */
  private double hold(List<Integer> supports) {
    int count = movements.size();
    DMatrixRMaj moved = new DMatrixRMaj(count, count);
    for (int i = 0; i < count; i++) {
      Support support = footing.support(supports.get(i));
      System.arraycopy(movements(support.x(), support.y()), 0, moved.data, i * count, count);
    }
    return count == 0 ? 1 : CommonOps_DDRM.det(moved);
  }

  /** Which unknowns are nothing: along held edges, and at the supports of the base. */
  private boolean[] held() {
    boolean[] held = new boolean[mesh.unknowns()];
    int lastColumn = mesh.x().count() - 1;
    int lastRow = mesh.y().count() - 1;
    for (int row = 0; row <= lastRow; row++) {
      hold(held, mesh.crossing(0, row), plate.edges().left(), 1, 2);
      holdRight(held, mesh.crossing(lastColumn, row));
    }
    for (int column = 0; column <= lastColumn; column++) {
      hold(held, mesh.crossing(column, 0), plate.edges().front(), 2, 1);
      hold(held, mesh.crossing(column, lastRow), plate.edges().back(), 2, 1);
    }
    for (int index : base) {
      Support support = footing.support(index);
      held[mesh.crossing(mesh.x().line(support.x()), mesh.y().line(support.y()))] = true;
    }
    return held;
  }

  /** The right edge of a half lies on the middle line: it runs on into its image. */
  private void holdRight(boolean[] held, int crossing) {
    switch (fold) {
      case WHOLE -> hold(held, crossing, plate.edges().right(), 1, 2);
      case EVEN -> {
        held[crossing + 1] = true;
        held[crossing + 3] = true;
      }
      case ODD -> hold(held, crossing, Hold.HINGED, 1, 2);
    }
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
