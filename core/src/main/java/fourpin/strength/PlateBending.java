package fourpin.strength;

import fourpin.measure.Lazy;
import fourpin.strength.PlateAnswer.Bends;
import fourpin.strength.PlateAnswer.Half;
import fourpin.strength.PlateAnswer.Hand;
import fourpin.strength.PlateAnswer.LowSupport;
import fourpin.strength.PlateAnswer.Relieved;
import fourpin.strength.PlateAnswer.Row;
import fourpin.strength.PlateAnswer.Stress;
import fourpin.strength.Section.Layer;
import fourpin.strength.plate.BentPlate;
import fourpin.strength.plate.BentPlate.Moments;
import fourpin.strength.plate.MirroredPlate;
import fourpin.strength.plate.OneSided;
import fourpin.strength.plate.Plate;
import fourpin.strength.plate.PlateLoad;
import fourpin.strength.plate.PlateLoad.Patch;
import fourpin.strength.plate.PlateLoad.Point;
import fourpin.strength.plate.PlateSolver;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/** Bends a shelf in all the ways that are asked of it. */
final class PlateBending {

  /** The edges of a panel are looked at just inside it, in shares of its width. */
  private static final double INSIDE = 1e-6;

  /** Front edge, middle and back edge, as shares of the depth. */
  private static final double[] LINES = {0, 0.5, 1};

  /** What is less than this share of the sag is an error of the sums. */
  private static final double ROUNDING = 1e-9;

  /** Parts of the length that a shelf is drawn by. */
  private static final int DRAWN = 24;

  /** Supports that carry less of an even load than this carry nothing of it. */
  private static final double LEAST_SHARE = 1e-6;

  private final ShelfPlate shelf;
  private final Plate plate;
  private final MirroredPlate solver;
  private final Map<Double, Optional<Bends>> bends = new HashMap<>();
  private final Map<Double, Optional<ShelfShape>> shapes = new HashMap<>();
  private final Map<List<Object>, PlateAnswer> answers = new HashMap<>();

  private PlateBending(ShelfPlate shelf, int parts) {
    this.shelf = shelf;
    this.plate = shelf.plate();
    this.solver = new MirroredPlate(plate, parts);
  }

  /** Remembers what it has bent. */
  static final class Memory {

    private final Map<ShelfPlate, PlateBending> bent = new HashMap<>();
    private final int parts;
    private final Lazy<Memory> rough = Lazy.of(() -> new Memory(ShelfCures.ROUGH_PARTS));

    Memory() {
      this(PlateSolver.PARTS);
    }

    /**
     * @param parts spaces along each plate
     */
    Memory(int parts) {
      this.parts = parts;
    }

    /** Of coarser plates, for what is only about right. */
    Memory rough() {
      return rough.get();
    }

    PlateBending of(ShelfPlate shelf) {
      return bent.computeIfAbsent(shelf, plate -> new PlateBending(plate, parts));
    }
  }

  /**
   * Under its own weight and an even load.
   *
   * @param load along it, N/mm
   * @return nothing if it tips off its supports
   */
  Optional<Bends> under(double load) {
    return bends.computeIfAbsent(load, _ -> with(shelf.evenly(load)).map(this::bends));
  }

  /** How it lies under its own weight and an even load; nothing if it tips off its supports. */
  Optional<ShelfShape> shape(double load) {
    return shapes.computeIfAbsent(load, _ -> with(shelf.evenly(load)).map(this::shape));
  }

  private ShelfShape shape(BentPlate bent) {
    Map<Spot, List<Double>> sags = new EnumMap<>(Spot.class);
    sags.put(Spot.FRONT, line(bent, 0));
    sags.put(Spot.MIDDLE, line(bent, plate.depth() / 2));
    sags.put(Spot.BACK, line(bent, plate.depth()));
    return new ShelfShape(plate.length(), ends(), sags);
  }

  private List<Double> line(BentPlate bent, double y) {
    return IntStream.rangeClosed(0, DRAWN)
        .mapToObj(i -> bent.deflection(plate.length() * i / DRAWN, y))
        .toList();
  }

  /** A shelf in joints is carried by its very ends. */
  private List<Double> ends() {
    return plate.supports().isEmpty()
        ? List.of(0.0, plate.length())
        : plate.supports().stream().map(Plate.Support::x).distinct().sorted().toList();
  }

  /** Under things in a row, with one support low, and under a hand. */
  PlateAnswer asked(ShelfOnSupports of) {
    return answers.computeIfAbsent(
        List.of(of.loaded().load(), of.standing(), of.doubt()), _ -> answer(of));
  }

  private PlateAnswer answer(ShelfOnSupports of) {
    double load = of.loaded().load();
    Point hand = new Point(of.doubt().hand().number(), middle(), 0);
    return new PlateAnswer(
        of.standing()
            .flatMap(deep -> row(load, deep.number()))
            .flatMap(this::with)
            .map(bent -> new Row(bent.deflection(middle(), 0), most(bent.reactions()))),
        solver.underLeftOf(shelf.own(), shelf.evenly(load)).map(this::half),
        low(of.doubt().low().number(), load * plate.length()),
        with(hand).map(bent -> new Hand(bent.deflection(middle(), 0), bent.lifted())));
  }

  private Half half(OneSided bent) {
    double sag = 0;
    for (double x : bent.alike().alongX()) {
      for (double y : LINES) {
        sag = Math.max(sag, bent.deflection(x, y * plate.depth()));
      }
    }
    double twist =
        bent.deflection(0, 0)
            - bent.deflection(plate.length(), 0)
            - bent.deflection(0, plate.depth())
            + bent.deflection(plate.length(), plate.depth());
    boolean rounding = Math.abs(twist) < ROUNDING * sag;
    return new Half(sag, most(bent.reactions()), bent.lifted(), rounding ? 0 : Math.abs(twist));
  }

  private static double most(List<Double> pushes) {
    return pushes.stream().max(Double::compare).orElse(0.0);
  }

  /** Things that fill the depth stand in no row. */
  private Optional<PlateLoad> row(double load, double deep) {
    return deep < plate.depth()
        ? Optional.of(new Patch(load / deep, 0, plate.length(), 0, deep))
        : Optional.empty();
  }

  private double middle() {
    return plate.length() / 2;
  }

  private Optional<BentPlate> with(PlateLoad load) {
    List<PlateLoad> loads = new ArrayList<>(shelf.own());
    loads.add(load);
    return solver.under(loads);
  }

  private Bends bends(BentPlate bent) {
    return new Bends(
        most(bent, 0),
        most(bent, plate.depth() / 2),
        most(bent, plate.depth()),
        stress(bent),
        bent.reactions(),
        bent.lifted());
  }

  private double most(BentPlate bent, double y) {
    return bent.alongX().stream().mapToDouble(x -> bent.deflection(x, y)).max().orElseThrow();
  }

  private Stress stress(BentPlate bent) {
    List<Stress> stresses = new ArrayList<>();
    for (double x : bent.alongX()) {
      stresses.addAll(panel(bent, shelf.layers().getFirst(), x));
      stresses.addAll(strips(bent, x));
    }
    return Collections.max(stresses, Comparator.comparingDouble(Stress::all));
  }

  /** Nearer to a support than its thickness, a panel is no thin plate. */
  private List<Stress> panel(BentPlate bent, Layer panel, double x) {
    return depths(bent, panel).stream()
        .filter(y -> !bent.isNearSupport(x, y, panel.thickness()))
        .map(y -> panel(bent, panel, x, y))
        .toList();
  }

  private List<Double> depths(BentPlate bent, Layer panel) {
    double front = shelf.from(panel) + INSIDE * panel.width();
    double back = shelf.from(panel) + (1 - INSIDE) * panel.width();
    return bent.alongY().stream().map(y -> Math.clamp(y, front, back)).distinct().toList();
  }

  private Stress panel(BentPlate bent, Layer panel, double x, double y) {
    Moments moments = bent.moments(x, y);
    double moment =
        panel.matter().flat().isAlikeAllWays() ? moments.principal() : Math.abs(moments.x());
    return new Stress(
        panel,
        6 * panel.matter().outer() * moment / (panel.thickness() * panel.thickness()),
        panel.outer() * Math.abs(bent.panelStrain(x, y)));
  }

  private List<Stress> strips(BentPlate bent, double x) {
    List<Double> forces = bent.stripForces(x);
    return IntStream.range(0, forces.size())
        .mapToObj(i -> strip(bent, shelf.layers().get(i + 1), x, forces.get(i)))
        .toList();
  }

  private Stress strip(BentPlate bent, Layer strip, double x, double force) {
    double curvature = bent.curvature(x, shelf.from(strip) + strip.width() / 2);
    return new Stress(
        strip,
        strip.modulus() * Math.abs(curvature) * strip.thickness() / 2,
        Math.abs(force) / strip.area());
  }

  /**
   * With all supports touching, pushes grow evenly with load and with how low one lies. The shelf
   * lies still from the load on at which none of them has to pull.
   */
  private Optional<LowSupport> low(double low, double load) {
    List<Relieved> relieved = low > 0 ? relieved(low) : List.of();
    return relieved.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new LowSupport(
                Collections.max(relieved, Comparator.comparingDouble(Relieved::closedBy)),
                Collections.min(relieved, Comparator.comparingDouble(r -> r.times(load)))));
  }

  private List<Relieved> relieved(double far) {
    int count = plate.supports().size();
    double[] own = solver.pushesIfAllTouch(shelf.own(), level(count));
    PlateLoad unit = plate.evenly(1 / (plate.length() * plate.depth()));
    double[] share = solver.pushesIfAllTouch(List.of(unit), level(count));
    List<Relieved> relieved = new ArrayList<>();
    List<Integer> corners = corners();
    for (int low : corners) {
      List<Double> lows = new ArrayList<>(level(count));
      lows.set(low, far);
      double[] pushes = solver.pushesIfAllTouch(List.of(), lows);
      for (int other : corners) {
        if (pushes[other] < 0 && share[other] > LEAST_SHARE) {
          relieved.add(new Relieved(-pushes[other], own[other], share[other]));
        }
      }
    }
    return relieved;
  }

  /** A shelf that does not touch a support between the front and the back row lies still. */
  private List<Integer> corners() {
    DoubleSummaryStatistics rows =
        plate.supports().stream().mapToDouble(Plate.Support::y).summaryStatistics();
    return IntStream.range(0, plate.supports().size())
        .filter(i -> isIn(rows, plate.supports().get(i).y()))
        .boxed()
        .toList();
  }

  private static boolean isIn(DoubleSummaryStatistics ends, double place) {
    return place == ends.getMin() || place == ends.getMax();
  }

  private static List<Double> level(int count) {
    return Collections.nCopies(count, 0.0);
  }
}
