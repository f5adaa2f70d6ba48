package fourpin.strength;

import fourpin.strength.PlateAnswer.Bends;
import fourpin.strength.PlateAnswer.Hand;
import fourpin.strength.PlateAnswer.LowSupport;
import fourpin.strength.PlateAnswer.Relieved;
import fourpin.strength.PlateAnswer.Stress;
import fourpin.strength.Section.Layer;
import fourpin.strength.plate.BentPlate;
import fourpin.strength.plate.Plate;
import fourpin.strength.plate.PlateLoad;
import fourpin.strength.plate.PlateSolver;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Bends a shelf in all the ways that are asked of it. */
final class PlateBending {

  /** Where over the depth of the panel its stress is looked at: just inside its edges, between. */
  private static final double[] SPOTS = {0.01, 0.5, 0.99};

  /** Supports that carry less of an even load than this carry nothing of it. */
  private static final double LEAST_SHARE = 1e-6;

  private final ShelfPlate shelf;
  private final Plate plate;
  private final PlateSolver solver;

  private PlateBending(ShelfPlate shelf) {
    this.shelf = shelf;
    this.plate = shelf.plate();
    this.solver = new PlateSolver(plate);
  }

  static PlateAnswer of(ShelfPlate shelf) {
    return new PlateBending(shelf).answer();
  }

  /** Remembers what it has bent. */
  static final class Memory {

    private final Map<ShelfPlate, PlateAnswer> answers = new HashMap<>();

    PlateAnswer of(ShelfPlate shelf) {
      return answers.computeIfAbsent(shelf, PlateBending::of);
    }
  }

  private PlateAnswer answer() {
    return new PlateAnswer(
        under(shelf.load()).map(this::bends),
        shelf.row().flatMap(this::under).map(bent -> bent.deflection(middle(), 0)),
        low(),
        under(new PlateLoad.Point(shelf.hand(), middle(), 0))
            .map(bent -> new Hand(bent.deflection(middle(), 0), bent.lifted())));
  }

  private double middle() {
    return plate.length() / 2;
  }

  private Optional<BentPlate> under(PlateLoad load) {
    List<PlateLoad> loads = new ArrayList<>(shelf.own());
    loads.add(load);
    return solver.under(loads);
  }

  private Bends bends(BentPlate bent) {
    return new Bends(
        bent.deflection(middle(), 0),
        bent.deflection(middle(), plate.depth() / 2),
        bent.deflection(middle(), plate.depth()),
        stress(bent),
        bent.reactions(),
        bent.lifted());
  }

  private Stress stress(BentPlate bent) {
    List<Stress> stresses = new ArrayList<>();
    for (double spot : SPOTS) {
      stresses.add(panel(bent, shelf.layers().getFirst(), spot));
    }
    List<Double> forces = bent.stripForces(middle());
    for (int i = 0; i < forces.size(); i++) {
      stresses.add(strip(bent, shelf.layers().get(i + 1), forces.get(i)));
    }
    return Collections.max(stresses, Comparator.comparingDouble(Stress::all));
  }

  private Stress panel(BentPlate bent, Layer panel, double spot) {
    double y = shelf.from(panel) + spot * panel.width();
    double moment = bent.moments(middle(), y).x();
    return new Stress(
        panel,
        6 * Math.abs(moment) / (panel.thickness() * panel.thickness()),
        panel.modulus() * Math.abs(bent.panelStrain(middle(), y)));
  }

  private Stress strip(BentPlate bent, Layer strip, double force) {
    double curvature = bent.curvature(middle(), shelf.from(strip) + strip.width() / 2);
    return new Stress(
        strip,
        strip.modulus() * Math.abs(curvature) * strip.thickness() / 2,
        Math.abs(force) / strip.area());
  }

  /**
   * With all supports touching, pushes grow evenly with load and with how low one lies. The shelf
   * lies still from the load on at which none of them has to pull.
   */
  private Optional<LowSupport> low() {
    List<Relieved> relieved = relieved();
    return relieved.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new LowSupport(
                Collections.max(relieved, Comparator.comparingDouble(Relieved::closedBy)),
                Collections.min(
                    relieved, Comparator.comparingDouble(r -> r.times(shelf.load().total())))));
  }

  private List<Relieved> relieved() {
    int count = plate.supports().size();
    double[] own = solver.pushesIfAllTouch(shelf.own(), level(count));
    PlateLoad unit = plate.evenly(1 / (plate.length() * plate.depth()));
    double[] share = solver.pushesIfAllTouch(List.of(unit), level(count));
    List<Relieved> relieved = new ArrayList<>();
    for (int low = 0; low < count && shelf.low() > 0; low++) {
      List<Double> lows = new ArrayList<>(level(count));
      lows.set(low, shelf.low());
      double[] pushes = solver.pushesIfAllTouch(List.of(), lows);
      for (int other = 0; other < count; other++) {
        if (pushes[other] < 0 && share[other] > LEAST_SHARE) {
          relieved.add(new Relieved(-pushes[other], own[other], share[other]));
        }
      }
    }
    return relieved;
  }

  private static List<Double> level(int count) {
    return Collections.nCopies(count, 0.0);
  }
}
