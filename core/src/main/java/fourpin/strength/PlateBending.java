package fourpin.strength;

import fourpin.measure.Figure;
import fourpin.measure.Lazy;
import fourpin.measure.Sourced;
import fourpin.strength.PlateAnswer.Bends;
import fourpin.strength.PlateAnswer.LowSupport;
import fourpin.strength.PlateAnswer.Relieved;
import fourpin.strength.PlateAnswer.Stress;
import fourpin.strength.Section.Layer;
import fourpin.strength.plate.Bent;
import fourpin.strength.plate.BentPlate;
import fourpin.strength.plate.MirroredPlate;
import fourpin.strength.plate.Plate;
import fourpin.strength.plate.PlateLoad;
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
import java.util.stream.Stream;

/** Bends a shelf in all the ways that are asked of it. */
final class PlateBending {

  /** The edges of a panel are looked at just inside it, in shares of its width. */
  private static final double INSIDE = 1e-6;

  /** What is less than this share of the sag is an error of the sums. */
  private static final double ROUNDING = 1e-9;

  /** Spaces along rough plates, in an eighth of the work. */
  static final int ROUGH_PARTS = 4;

  /** Parts of the length that a shelf is drawn by. */
  private static final int DRAWN = 24;

  /** Supports that carry less of an even load than this carry nothing of it. */
  private static final double LEAST_SHARE = 1e-6;

  private final ShelfPlate shelf;
  private final Plate plate;
  private final MirroredPlate solver;
  private final Map<Asked, Optional<Bends>> bends = new HashMap<>();

  private record Asked(LoadCase of, double load) {}

  private PlateBending(ShelfPlate shelf, int parts) {
    this.shelf = shelf;
    this.plate = shelf.plate();
    this.solver = new MirroredPlate(plate, parts);
  }

  /** Remembers what it has bent. */
  static final class Memory {

    private final Map<ShelfPlate, PlateBending> bent = new HashMap<>();
    private final int parts;
    private final Lazy<Memory> rough = Lazy.of(() -> new Memory(ROUGH_PARTS));

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
   * Under its own weight and a load.
   *
   * @param load along it, N/mm
   * @return nothing if it tips off its supports
   */
  Optional<Bends> under(LoadCase of, double load) {
    return bends.computeIfAbsent(new Asked(of, load), _ -> once(of, load));
  }

  /** The same for who asks but once. */
  Optional<Bends> once(LoadCase of, double load) {
    return bent(of, load).map(this::bends);
  }

  private Optional<? extends Bent> bent(LoadCase of, double load) {
    return switch (of) {
      case LoadCase.Even() -> with(shelf.evenly(load));
      case LoadCase.FrontRow(_), LoadCase.BackRow(_), LoadCase.OverEdge(_, _) ->
          with(shelf.between(load, of.lies(plate.depth())));
      case LoadCase.OneHalf() -> solver.underLeftOf(shelf.own(), shelf.evenly(load));
      case LoadCase.Hand(Sourced push) -> with(new Point(push.number(), plate.length() / 2, 0));
    };
  }

  private Optional<BentPlate> with(PlateLoad load) {
    List<PlateLoad> loads = new ArrayList<>(shelf.own());
    loads.add(load);
    return solver.under(loads);
  }

  /**
   * How it lies under its own weight and a load; nothing if it tips off its supports.
   *
   * @param now how far it goes down at the most
   * @param years the same after years
   */
  Optional<ShelfShape> shape(LoadCase of, double load, Figure now, Figure years) {
    return bent(of, load)
        .map(bent -> new ShelfShape(of.lying(), now, years, plate.length(), ends(), lines(bent)));
  }

  private Map<Spot, List<Double>> lines(Bent bent) {
    Map<Spot, List<Double>> sags = new EnumMap<>(Spot.class);
    for (Spot spot : Spot.values()) {
      sags.put(spot, line(bent, spot.share() * plate.depth()));
    }
    return sags;
  }

  private List<Double> line(Bent bent, double y) {
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

  private Bends bends(Bent bent) {
    double front = most(bent, Spot.FRONT);
    double middle = most(bent, Spot.MIDDLE);
    double back = most(bent, Spot.BACK);
    double sag = Math.max(Math.max(front, middle), Math.max(back, bent.deepest()));
    return new Bends(
        front,
        middle,
        back,
        sag,
        Lazy.of(() -> across(bent)),
        Lazy.of(() -> ofStrips(bent)),
        Lazy.of(() -> stresses(bent)),
        bent.reactions(),
        bent.lifted(),
        twist(bent, sag));
  }

  /** How far a corner lies out of the plane of the other three. */
  private double twist(Bent bent, double sag) {
    double twist =
        bent.deflection(0, 0)
            - bent.deflection(plate.length(), 0)
            - bent.deflection(0, plate.depth())
            + bent.deflection(plate.length(), plate.depth());
    return Math.abs(twist) < ROUNDING * sag ? 0 : Math.abs(twist);
  }

  private double most(Bent bent, Spot spot) {
    double y = spot.share() * plate.depth();
    return bent.alongX().stream().mapToDouble(x -> bent.deflection(x, y)).max().orElseThrow();
  }

  private List<Stress> across(Bent bent) {
    Layer panel = shelf.layers().getFirst();
    List<Double> few =
        Stream.of(INSIDE, 1.0 / 2, 1 - INSIDE)
            .map(share -> shelf.from(panel) + share * panel.width())
            .toList();
    return stresses(bent, List.of(plate.length() / 2), few);
  }

  private List<Stress> ofStrips(Bent bent) {
    return stresses(bent, bent.alongX(), List.of()).stream().skip(1).toList();
  }

  private List<Stress> stresses(Bent bent) {
    return stresses(bent, bent.alongX(), depths(bent, shelf.layers().getFirst()));
  }

  /** The panel first. */
  private List<Stress> stresses(Bent bent, List<Double> alongX, List<Double> depths) {
    List<Stress> most = new ArrayList<>();
    shelf.layers().forEach(layer -> most.add(new Stress(layer, 0, 0)));
    for (double x : alongX) {
      panel(bent, shelf.layers().getFirst(), x, depths)
          .forEach(s -> most.set(0, larger(s, most.get(0))));
      List<Stress> strips = strips(bent, x);
      for (int i = 0; i < strips.size(); i++) {
        most.set(i + 1, larger(strips.get(i), most.get(i + 1)));
      }
    }
    return List.copyOf(most);
  }

  private static Stress larger(Stress one, Stress other) {
    return one.all() > other.all() ? one : other;
  }

  /** Nearer to a support than its thickness, a panel is no thin plate. */
  private List<Stress> panel(Bent bent, Layer panel, double x, List<Double> depths) {
    return depths.stream()
        .filter(y -> !bent.isNearSupport(x, y, panel.thickness()))
        .map(y -> panel(bent, panel, x, y))
        .toList();
  }

  private List<Double> depths(Bent bent, Layer panel) {
    double front = shelf.from(panel) + INSIDE * panel.width();
    double back = shelf.from(panel) + (1 - INSIDE) * panel.width();
    return bent.alongY().stream().map(y -> Math.clamp(y, front, back)).distinct().toList();
  }

  private Stress panel(Bent bent, Layer panel, double x, double y) {
    double moment = panel.matter().flat().breaks(bent.moments(x, y));
    return new Stress(
        panel,
        6 * panel.matter().outer() * moment / (panel.thickness() * panel.thickness()),
        panel.outer() * Math.abs(bent.panelStrain(x, y)));
  }

  private List<Stress> strips(Bent bent, double x) {
    List<Double> forces = bent.stripForces(x);
    return IntStream.range(0, forces.size())
        .mapToObj(i -> strip(bent, shelf.layers().get(i + 1), x, forces.get(i)))
        .toList();
  }

  private Stress strip(Bent bent, Layer strip, double x, double force) {
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
  Optional<LowSupport> low(double low, double load) {
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
