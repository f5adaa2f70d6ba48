package fourpin.boring.tolerance;

import fourpin.bench.Step.ClampGuide.Side;
import fourpin.boring.BayGrid;
import fourpin.boring.way.Clamping;
import fourpin.boring.way.Clamping.Reach;
import fourpin.boring.way.Guide.GuideHole;
import fourpin.boring.way.Method;
import fourpin.casework.Face;
import fourpin.job.Setting;
import fourpin.job.Way;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.SplittableRandom;

/**
 * One case bored through a guide as a maker does it, who is never quite exact: the guide is made
 * once, with its holes and both battens of its block a little off; each row lays it on again; moved
 * along, it hangs on its pin in a hole that is where it is; then the block is screwed on again.
 * What comes of it is measured with a rule, in heights of holes, knowing nothing of causes that
 * holes share. Nothing wears.
 */
final class CaseByHand {

  private final Workshop shop;
  private final Method.Guided guided;
  private final Setting wander;
  private final SplittableRandom random;
  private final Map<Integer, Double> holes = new HashMap<>();
  private final Map<Side, Double> battens = new EnumMap<>(Side.class);
  private final Map<Double, Double> spacers = new HashMap<>();
  private final Map<Hole, Double> errors = new HashMap<>();
  private final Map<Integer, Map<Long, Integer>> levels = new HashMap<>();
  private boolean blockIsOff = true;

  private CaseByHand(Workshop shop, Way way, Method.Guided guided, SplittableRandom random) {
    this.shop = shop;
    this.guided = guided;
    this.wander = way == Way.ROUTER_GUIDE ? Setting.ROUTER_WANDER : Setting.DRILL_WANDER;
    this.random = random;
    for (BayGrid grid : shop.grids()) {
      Map<Long, Integer> heights = new HashMap<>();
      grid.levels().forEach(l -> heights.put(micrometres(l.height().mm()), l.number()));
      levels.put(grid.bay(), heights);
    }
    for (GuideHole hole : guided.guide().holes()) {
      holes.put(hole.number(), hole.along().mm() + normal(Setting.GUIDE_HOLE_ERROR));
    }
  }

  /**
   * @return by how much each hole that a shelf can lie on is too high, mm
   */
  static Map<Hole, Double> bored(
      Workshop shop, Way way, Method.Guided guided, SplittableRandom random) {
    CaseByHand made = new CaseByHand(shop, way, guided, random);
    guided.clampings().forEach(made::bore);
    return made.errors;
  }

  private double normal(Setting setting) {
    return shop.built().order().settings().length(setting).mm() / 2 * random.nextGaussian();
  }

  private double anywhere(double room) {
    return room * (random.nextDouble() - 0.5);
  }

  private void screwOn() {
    if (blockIsOff) {
      for (Side side : Side.values()) {
        battens.put(side, normal(Setting.BLOCK_ERROR));
      }
      blockIsOff = false;
    }
  }

  private void bore(Clamping clamping) {
    screwOn();
    double end = shop.built().part(clamping.part()).box().at(Face.BOTTOM).mm();
    double zero =
        end
            + clamping.along().mm()
            + normal(Setting.SEAT_ERROR)
            + battens.getOrDefault(clamping.showing(), 0.0)
            + spacer(clamping.along().mm());
    Map<Integer, Double> before = Map.of();
    double planned = end + clamping.along().mm();
    for (Reach reach : clamping.reaches()) {
      if (reach.step().isPresent()) {
        int pin = reach.step().get().pin();
        int into = reach.step().get().into();
        zero = before.getOrDefault(into, Double.NaN) + pinned() - holes.getOrDefault(pin, 0.0);
        planned += guided.guide().hole(into).along().mm() - guided.guide().hole(pin).along().mm();
        blockIsOff = true;
      }
      before = bored(clamping, reach, zero, planned);
    }
  }

  private double spacer(double thickness) {
    return thickness == 0
        ? 0
        : spacers.computeIfAbsent(thickness, _ -> normal(Setting.SPACER_ERROR));
  }

  /** The pin is thinner than both holes that it goes through, and out of line with itself. */
  private double pinned() {
    double slip = shop.built().order().settings().length(Setting.STEP_PIN_SLIP).mm();
    return anywhere(slip) + anywhere(slip) + normal(Setting.PIN_STEP_ERROR);
  }

  private Map<Integer, Double> bored(Clamping clamping, Reach reach, double zero, double planned) {
    Map<Integer, Double> heights = new HashMap<>();
    for (int number : reach.holes()) {
      GuideHole hole = guided.guide().hole(number);
      double play = Math.max(0, hole.diameter().minus(guided.bit().runs()).mm());
      double height = zero + holes.getOrDefault(number, 0.0) + anywhere(play) + normal(wander);
      heights.put(number, height);
      measure(clamping, planned + hole.along().mm(), height);
    }
    return heights;
  }

  private void measure(Clamping clamping, double planned, double height) {
    Integer level = levels.getOrDefault(clamping.bay(), Map.of()).get(micrometres(planned));
    if (level != null) {
      errors.put(
          new Hole(clamping.bay(), level, Hole.point(clamping.face(), clamping.row())),
          height - planned);
    }
  }

  private static long micrometres(double mm) {
    return Math.round(mm * 1000);
  }
}
