package fourpin.strength;

import fourpin.casework.Axis;
import fourpin.casework.BaySpace;
import fourpin.casework.Box;
import fourpin.casework.BuiltCase;
import fourpin.casework.Part;
import fourpin.job.Drawers;
import fourpin.job.Job;
import fourpin.measure.Gravity;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Weights of a case and of what stands in it, with their places.
 *
 * @param weights each where its middle is
 */
record Balance(List<Weight> weights) {

  /**
   * One weight.
   *
   * @param of whose
   * @param newton what it weighs
   * @param back from the front of the sides to its middle, mm
   * @param up from the floor to its middle, mm
   */
  record Weight(Of of, double newton, double back, double up) {}

  /** Whose weight. */
  enum Of {
    CASE("the case"),
    DOORS("its doors, shut"),
    CONTENTS("what stands in it"),
    DRAWERS("its drawers and what is in them");

    private final String words;

    Of(String words) {
      this.words = words;
    }

    String words() {
      return words;
    }
  }

  /** What stands on the shelves. */
  enum Load {
    NONE("empty", "empty"),
    /** What stands above half the height of the case, and nothing below. */
    UPPER_HALF("top-heavy", "loaded above half its height alone"),
    ALL("loaded", "loaded as stated"),
    /**
     * Whatever turns it forward about a foot and nothing else, things in a row at the front edge as
     * shelves are judged by: of all partial loads the worst.
     */
    FORWARD("forward", "loaded only where things turn it forward, in rows at the front edges");

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

  /** What does not turn with a foot; doors shut. */
  static Balance of(Job job, BuiltCase built, Load load) {
    return of(job, built, load, _ -> false);
  }

  /**
   * Doors shut.
   *
   * @param forward what turns the case forward where it stands
   */
  static Balance of(Job job, BuiltCase built, Load load, Predicate<Weight> forward) {
    Balance balance = withoutDoors(job, built, load, forward);
    OpenDoors doors = new OpenDoors(job, built, 0);
    return balance.and(doors.shut());
  }

  /**
   * Doors left out.
   *
   * @param forward what turns the case forward where it stands
   */
  static Balance withoutDoors(Job job, BuiltCase built, Load load, Predicate<Weight> forward) {
    Masses masses = new Masses(job);
    List<Weight> weights = new ArrayList<>();
    built
        .parts()
        .forEach(
            part ->
                weights.add(
                    new Weight(
                        Of.CASE,
                        masses.of(part) * Gravity.STANDARD,
                        middle(part.box()),
                        middle(part))));
    for (BaySpace bay : built.bays()) {
      for (Part floor : floors(built, bay)) {
        LoadCases of = LoadCases.of(built.order(), bay.number(), floor.box().size(Axis.Y));
        if (counts(load, floor, built)) {
          weights.add(contents(built, bay, floor, middle(floor, of, of.asStated())));
        }
        if (load == Load.FORWARD) {
          Weight row = contents(built, bay, floor, middle(floor, of, of.forward()));
          Stream.of(row).filter(forward).forEach(weights::add);
        }
      }
    }
    if (load == Load.FORWARD && OpenTop.isOpen(job, built.order())) {
      Stream.of(onTop(job, built)).filter(forward).forEach(weights::add);
    }
    built
        .order()
        .drawers()
        .filter(drawers -> counts(load, drawers, built))
        .ifPresent(drawers -> weights.add(shut(drawers)));
    return new Balance(weights);
  }

  private Balance and(List<Weight> others) {
    return new Balance(Stream.concat(weights.stream(), others.stream()).toList());
  }

  /** What is taken to stand on the top, as far forward as it may, and as high as it is deep. */
  private static Weight onTop(Job job, BuiltCase built) {
    Part top = built.part("T");
    Length depth = top.box().size(Axis.Y);
    LoadCases of = LoadCases.ofTop(built.order(), depth);
    double newton = OpenTop.newton(job, built);
    return new Weight(Of.CONTENTS, newton, middle(top, of, of.forward()), upOnTop(built));
  }

  private static double upOnTop(BuiltCase built) {
    Part top = built.part("T");
    Length depth = top.box().size(Axis.Y);
    LoadCase row = LoadCases.ofTop(built.order(), depth).forward();
    return top.box().high().z().mm() + row.middle(depth.mm());
  }

  /** What is taken to stand on the top, spread evenly from side to side. */
  static Spread spreadOnTop(Job job, BuiltCase built) {
    Box top = built.part("T").box();
    return new Spread(
        top.low().x().mm(), top.high().x().mm(), OpenTop.perMm(job, built), upOnTop(built));
  }

  /** All of them at the height of the highest. */
  private static Weight shut(Drawers drawers) {
    double newton = drawers.count() * drawers.mass().value() * Gravity.STANDARD;
    return new Weight(Of.DRAWERS, newton, drawers.length().mm() / 2, drawers.height().mm());
  }

  private static boolean counts(Load load, Drawers drawers, BuiltCase built) {
    return switch (load) {
      case NONE, FORWARD -> false;
      case UPPER_HALF -> drawers.height().mm() > built.outside().high().z().mm() / 2;
      case ALL -> true;
    };
  }

  private static boolean counts(Load load, Part floor, BuiltCase built) {
    return switch (load) {
      case NONE, FORWARD -> false;
      case UPPER_HALF -> floor.box().high().z().mm() > built.outside().high().z().mm() / 2;
      case ALL -> true;
    };
  }

  private static double middle(Box box) {
    return (box.low().y().mm() + box.high().y().mm()) / 2;
  }

  private static double middle(Part part) {
    return (part.box().low().z().mm() + part.box().high().z().mm()) / 2;
  }

  /** Things reach half an opening up with their middles. */
  private static Weight contents(BuiltCase built, BaySpace bay, Part floor, double back) {
    double line = line(built, bay, floor);
    return new Weight(
        Of.CONTENTS, line * bay.clear().size(Axis.X).mm(), back, up(built, bay, floor));
  }

  private static double line(BuiltCase built, BaySpace bay, Part floor) {
    return ShelfLoad.of(built.order(), bay.number()).perMm(floor.box().size(Axis.Y));
  }

  /**
   * What stands on one floor of a bay, spread evenly from side to side.
   *
   * @param low left end, mm
   * @param high right end, mm
   * @param perMm N for each mm
   * @param up from the floor to its middle, mm
   */
  record Spread(double low, double high, double perMm, double up) {}

  /** All that stands in a case but its drawers, and not on it. */
  static List<Spread> spread(BuiltCase built) {
    return built.bays().stream()
        .flatMap(bay -> floors(built, bay).stream().map(floor -> spread(built, bay, floor)))
        .toList();
  }

  private static Spread spread(BuiltCase built, BaySpace bay, Part floor) {
    return new Spread(
        bay.clear().low().x().mm(),
        bay.clear().high().x().mm(),
        line(built, bay, floor),
        up(built, bay, floor));
  }

  private static double up(BuiltCase built, BaySpace bay, Part floor) {
    double top = floor.box().high().z().mm();
    double next =
        floors(built, bay).stream()
            .mapToDouble(f -> f.box().low().z().mm())
            .filter(z -> z > top)
            .min()
            .orElse(bay.clear().high().z().mm());
    return (top + next) / 2;
  }

  /** Where the middle of things on a floor comes to lie, behind the front of the sides. */
  private static double middle(Part floor, LoadCases of, LoadCase lying) {
    return floor.box().low().y().mm() + lying.middle(of.depth());
  }

  private static List<Part> floors(BuiltCase built, BaySpace bay) {
    return built.parts().stream()
        .filter(p -> p.role() == Part.Role.BOTTOM || isShelfIn(bay, p))
        .toList();
  }

  private static boolean isShelfIn(BaySpace bay, Part part) {
    boolean shelf = part.role() == Part.Role.SHELF || part.role() == Part.Role.FIXED_SHELF;
    return shelf && part.box().overlaps(bay.clear());
  }

  /** The weights of the same, each as one; without what weighs nothing. */
  Map<Of, Balance> parts() {
    Map<Of, Balance> parts = new EnumMap<>(Of.class);
    for (Of of : Of.values()) {
      List<Weight> own = weights.stream().filter(w -> w.of() == of).toList();
      Balance part = new Balance(own);
      if (part.newton() > 0) {
        parts.put(of, part);
      }
    }
    return parts;
  }

  double newton() {
    return weights.stream().mapToDouble(Weight::newton).sum();
  }

  /** The middle of all of it behind the front of the sides, mm. */
  double back() {
    return weights.stream().mapToDouble(w -> w.newton() * w.back()).sum() / newton();
  }

  /** The middle of all of it above the floor, mm. */
  double up() {
    return weights.stream().mapToDouble(w -> w.newton() * w.up()).sum() / newton();
  }
}
