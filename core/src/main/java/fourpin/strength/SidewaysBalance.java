package fourpin.strength;

import fourpin.casework.BuiltCase;
import fourpin.casework.DoorLeaf;
import fourpin.casework.Part;
import fourpin.job.Drawers;
import fourpin.job.Job;
import fourpin.measure.Gravity;
import fourpin.strength.Balance.Spread;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Weights of a case seen from the side about which it tips.
 *
 * @param weights each where its middle is
 */
record SidewaysBalance(List<Weight> weights) {

  SidewaysBalance {
    weights = List.copyOf(weights);
  }

  /** About which of its sides a case turns. */
  enum Side {
    LEFT("to the left"),
    RIGHT("to the right");

    private final String words;

    Side(String words) {
      this.words = words;
    }

    String words() {
      return words;
    }
  }

  /** What stands in it. */
  enum Load {
    NONE("empty", "empty"),
    ALL("loaded", "loaded as stated"),
    ONE_SIDE("one-side", "loaded on that side of its middle alone"),
    /** Whatever turns it to that side where it stands, and nothing else; doors open or shut. */
    TURNING("turning", "loaded only where things turn it to that side, doors open where they do");

    private final String id;
    private final String words;

    Load(String id, String words) {
      this.id = id;
      this.words = words;
    }

    /** In the ids of figures. */
    String id() {
      return id;
    }

    String words() {
      return words;
    }
  }

  /**
   * One weight.
   *
   * @param newton what it weighs
   * @param from the foot about which all turns to its middle, sideways, mm
   * @param up from that foot to its middle, mm
   */
  record Weight(double newton, double from, double up) {}

  /**
   * Where a case stands.
   *
   * @param inwards from the foot about which all turns to the side of this case, mm
   * @param under from that foot to the foot of this case, mm
   * @param slope how far the floor falls to that side over its length
   */
  record Stand(Side side, double inwards, double under, double slope) {}

  static SidewaysBalance of(Job job, BuiltCase built, Load load, Stand stand) {
    Masses masses = new Masses(job);
    OpenDoors doors = new OpenDoors(job, built, 0);
    List<Weight> weights = new ArrayList<>();
    for (Part part : built.parts()) {
      double x = (part.box().low().x().mm() + part.box().high().x().mm()) / 2;
      double z = (part.box().low().z().mm() + part.box().high().z().mm()) / 2;
      weights.add(at(built, stand, masses.of(part) * Gravity.STANDARD, x, z));
    }
    for (DoorLeaf leaf : DoorLeaf.of(built)) {
      weights.add(door(built, stand, load, leaf, doors.weight(leaf)));
    }
    things(job, built, load).map(of -> part(built, of, load, stand)).forEach(weights::add);
    built
        .order()
        .drawers()
        .filter(_ -> load == Load.ALL)
        .map(drawers -> drawers(built, drawers, stand))
        .ifPresent(weights::add);
    return new SidewaysBalance(weights.stream().filter(w -> w.newton() > 0).toList());
  }

  /**
   * Straight out from its hinges where that turns the case; how much further they go nobody says.
   */
  private static Weight door(
      BuiltCase built, Stand stand, Load load, DoorLeaf leaf, double newton) {
    double middle = (leaf.shut().low().x().mm() + leaf.shut().high().x().mm()) / 2;
    double z = (leaf.shut().low().z().mm() + leaf.shut().high().z().mm()) / 2;
    Weight shut = at(built, stand, newton, middle, z);
    Weight open = at(built, stand, newton, leaf.shut().at(leaf.hinges()).mm(), z);
    return load == Load.TURNING && open.from() < shut.from() ? open : shut;
  }

  /** What stands on its top holds it down but where it turns it. */
  private static Stream<Spread> things(Job job, BuiltCase built, Load load) {
    Stream<Spread> in = Balance.spread(built).stream();
    return load == Load.TURNING
        ? Stream.concat(in, Stream.of(Balance.spreadOnTop(job, built)))
        : in;
  }

  private static Weight at(BuiltCase built, Stand stand, double newton, double x, double z) {
    return new Weight(newton, from(built, stand, x), z + stand.under());
  }

  private static double from(BuiltCase built, Stand stand, double x) {
    return stand.inwards()
        + switch (stand.side()) {
          case LEFT -> x - left(built);
          case RIGHT -> right(built) - x;
        };
  }

  private static double left(BuiltCase built) {
    return built.part("L").box().low().x().mm();
  }

  private static double right(BuiltCase built) {
    return built.part("R").box().high().x().mm();
  }

  /** Over the sides, on which it stands, mm. */
  static double width(BuiltCase built) {
    return right(built) - left(built);
  }

  /** As much of what stands on one floor as counts, from the end that lies nearer to the foot. */
  private static Weight part(BuiltCase built, Spread of, Load load, Stand stand) {
    double one = from(built, stand, of.low());
    double other = from(built, stand, of.high());
    double near = Math.min(one, other);
    double far = Math.clamp(reach(built, of, load, stand), near, Math.max(one, other));
    return new Weight(of.perMm() * (far - near), (near + far) / 2, of.up() + stand.under());
  }

  /** How far from the foot things stand that count, mm. */
  private static double reach(BuiltCase built, Spread of, Load load, Stand stand) {
    return switch (load) {
      case NONE -> 0;
      case ALL -> Double.MAX_VALUE;
      case ONE_SIDE -> stand.inwards() + width(built) / 2;
      case TURNING -> stand.slope() * (of.up() + stand.under());
    };
  }

  /** In the middle of the case, since no job states where they are from side to side. */
  private static Weight drawers(BuiltCase built, Drawers drawers, Stand stand) {
    return new Weight(
        drawers.count() * drawers.mass().value() * Gravity.STANDARD,
        stand.inwards() + width(built) / 2,
        drawers.height().mm() + stand.under());
  }

  double newton() {
    return weights.stream().mapToDouble(Weight::newton).sum();
  }

  double from() {
    return weights.stream().mapToDouble(w -> w.newton() * w.from()).sum() / newton();
  }

  double up() {
    return weights.stream().mapToDouble(w -> w.newton() * w.up()).sum() / newton();
  }
}
