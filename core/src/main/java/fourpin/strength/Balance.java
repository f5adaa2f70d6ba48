package fourpin.strength;

import fourpin.casework.Axis;
import fourpin.casework.BaySpace;
import fourpin.casework.Box;
import fourpin.casework.BuiltCase;
import fourpin.casework.Part;
import fourpin.job.Drawers;
import fourpin.job.Job;
import fourpin.measure.Gravity;
import java.util.ArrayList;
import java.util.List;

/**
 * Weights of a case and of what stands in it, with their places.
 *
 * @param weights each where its middle is
 */
record Balance(List<Weight> weights) {

  /**
   * One weight.
   *
   * @param newton what it weighs
   * @param back from the front of the sides to its middle, mm
   * @param up from the floor to its middle, mm
   */
  record Weight(double newton, double back, double up) {}

  /** What stands on the shelves. */
  enum Load {
    NONE("empty", "empty"),
    /** What stands above half the height of the case, and nothing below. */
    UPPER_HALF("top-heavy", "loaded above half its height alone"),
    ALL("loaded", "loaded as stated");

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

  static Balance of(Job job, BuiltCase built, Load load) {
    Masses masses = new Masses(job);
    List<Weight> weights = new ArrayList<>();
    built
        .parts()
        .forEach(
            part -> weights.add(at(masses.of(part) * Gravity.STANDARD, part.box(), middle(part))));
    for (BaySpace bay : built.bays()) {
      for (Part floor : floors(built, bay)) {
        if (counts(load, floor, built)) {
          weights.add(contents(built, bay, floor));
        }
      }
    }
    built
        .order()
        .drawers()
        .filter(drawers -> counts(load, drawers, built))
        .ifPresent(drawers -> weights.add(shut(drawers)));
    return new Balance(weights);
  }

  /** All of them at the height of the highest. */
  private static Weight shut(Drawers drawers) {
    double newton = drawers.count() * drawers.mass().value() * Gravity.STANDARD;
    return new Weight(newton, drawers.length().mm() / 2, drawers.height().mm());
  }

  private static boolean counts(Load load, Drawers drawers, BuiltCase built) {
    return switch (load) {
      case NONE -> false;
      case UPPER_HALF -> drawers.height().mm() > built.outside().high().z().mm() / 2;
      case ALL -> true;
    };
  }

  private static boolean counts(Load load, Part floor, BuiltCase built) {
    return switch (load) {
      case NONE -> false;
      case UPPER_HALF -> floor.box().high().z().mm() > built.outside().high().z().mm() / 2;
      case ALL -> true;
    };
  }

  private static Weight at(double newton, Box box, double up) {
    double back = (box.low().y().mm() + box.high().y().mm()) / 2;
    return new Weight(newton, back, up);
  }

  private static double middle(Part part) {
    return (part.box().low().z().mm() + part.box().high().z().mm()) / 2;
  }

  /**
   * Things stand in the middle of the depth of their shelf, deeper ones against its back, their
   * middles half an opening up.
   */
  private static Weight contents(BuiltCase built, BaySpace bay, Part floor) {
    double line = ShelfLoad.of(built.order(), bay.number()).perMm(floor.box().size(Axis.Y));
    double top = floor.box().high().z().mm();
    double next =
        floors(built, bay).stream()
            .mapToDouble(f -> f.box().low().z().mm())
            .filter(z -> z > top)
            .min()
            .orElse(bay.clear().high().z().mm());
    double newton = line * bay.clear().size(Axis.X).mm();
    return new Weight(newton, middle(built, bay, floor.box()), (top + next) / 2);
  }

  private static double middle(BuiltCase built, BaySpace bay, Box floor) {
    double half =
        ShelfLoad.depthOfThings(built.order(), bay.number())
            .map(deep -> Math.max(deep.number(), floor.size(Axis.Y).mm()) / 2)
            .orElse(floor.size(Axis.Y).mm() / 2);
    return floor.high().y().mm() - half;
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
