package fourpin.sheets.solid;

import fourpin.boring.BayGrid;
import fourpin.casework.Axis;
import fourpin.casework.BuiltCase;
import fourpin.casework.DoorLeaf;
import fourpin.casework.Part;
import fourpin.casework.Point;
import fourpin.job.Job;
import fourpin.measure.Counted;
import fourpin.measure.Length;
import fourpin.plan.Plan;
import fourpin.sheets.drawings.Drafter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A case in three dimensions. What is bought is not in it: supports, standards, hinges.
 *
 * @param about in a sentence, for those who do not see it
 * @param bodies parts in the order of the cut list, then doors
 */
public record Solid(String name, String about, List<Body> bodies) {

  private static final Point FOOT = new Point(Length.ZERO, Length.ZERO, Length.ZERO);

  public Solid {
    bodies = List.copyOf(bodies);
  }

  /**
   * One of each case, shelves on their levels, doors shut, by a name for files: that of the case,
   * numbered where two share it.
   */
  public static Map<String, Solid> byName(Plan plan) {
    Map<String, Solid> solids = new LinkedHashMap<>();
    for (BuiltCase built : plan.cases()) {
      String name = Drafter.name(built.order().name());
      String free = name;
      for (int next = 2; solids.containsKey(free); next++) {
        free = name + "-" + next;
      }
      solids.put(free, of(plan, built));
    }
    return solids;
  }

  /** One of the cases of a plan. */
  public static Solid of(Plan plan, BuiltCase built) {
    List<Body> bodies = new ArrayList<>();
    for (Part part : built.parts()) {
      bodies.add(body(plan.job(), part, lifts(plan, built, part)));
    }
    bodies.addAll(DoorBodies.of(built));
    return new Solid(built.order().name(), about(built), bodies);
  }

  private static Body body(Job job, Part part, Optional<Body.Lifts> lifts) {
    Point origin = lifts.map(_ -> FOOT.with(Axis.Z, part.box().high().z())).orElse(FOOT);
    return new Body(
        part.mark(),
        part.name(),
        origin,
        lifts.<Body.Move>map(l -> l).orElseGet(Body.Still::new),
        PartBody.skins(job, part, origin));
  }

  private static Optional<Body.Lifts> lifts(Plan plan, BuiltCase built, Part part) {
    return plan.grids().stream()
        .filter(grid -> grid.caseName().equals(built.order().name()))
        .flatMap(grid -> lifts(grid, part))
        .findFirst();
  }

  private static Stream<Body.Lifts> lifts(BayGrid grid, Part part) {
    List<BayGrid.Seat> rising =
        grid.seats().stream().sorted(Comparator.comparing(BayGrid.Seat::level)).toList();
    List<Integer> numbers = grid.levels().stream().map(BayGrid.Level::number).toList();
    List<Length> tops =
        grid.levels().stream().map(l -> l.underside().plus(part.thickness())).toList();
    return rising.stream()
        .filter(seat -> seat.shelf().equals(part.mark()))
        .map(
            seat ->
                new Body.Lifts(
                    grid.bay(), rising.indexOf(seat) + 1, numbers.indexOf(seat.level()) + 1, tops));
  }

  /** A case in a sentence: "bookcase: 3 bays, 12 shelves to move". */
  public static String about(BuiltCase built) {
    int doors = DoorLeaf.of(built).size();
    long shelves = built.parts().stream().filter(p -> p.role() == Part.Role.SHELF).count();
    return built.order().name()
        + ": "
        + Counted.of(built.bays().size(), "bay")
        + ", "
        + Counted.of(shelves, "shelf to move", "shelves to move")
        + (doors == 0 ? "" : ", " + Counted.of(doors, "door"));
  }
}
