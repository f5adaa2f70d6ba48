package fourpin.plan;

import fourpin.bench.BenchRun;
import fourpin.bench.Removal.Bore;
import fourpin.bench.Step;
import fourpin.bench.VirtualBench;
import fourpin.bench.WorkedPiece;
import fourpin.boring.BayGrid;
import fourpin.casework.BaySpace;
import fourpin.casework.BuiltCase;
import fourpin.casework.Part;
import fourpin.casework.Point;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;

/**
 * The uprights of a case as they come out with a mistake on the virtual bench: whether a panel with
 * it will do if the others are bored likewise, or two that went wrong alike beside the others.
 */
final class AllSpoilt {

  private static final int Y = 1;
  private static final int Z = 2;

  private final BuiltCase built;
  private final List<BayGrid> grids;
  private final List<Upright> uprights = new ArrayList<>();
  private final BenchRun run;

  /** One of them as it is then. */
  private record Upright(Part part, WorkedPiece made, SpoiltRows rows) {}

  /** How far a hole lies behind the front of the case and above its foot, picometres. */
  private record Place(long behind, long above) {}

  /**
   * With the same mistake in all.
   *
   * @param grids of any cases
   * @param mistake as it is made with one panel
   */
  AllSpoilt(
      BuiltCase built,
      List<BayGrid> grids,
      List<Step> steps,
      Function<Blunder, List<Step>> mistake) {
    BenchRun right = VirtualBench.run(steps);
    List<Step> done = steps;
    for (Part part : Mistakes.uprights(built)) {
      RowNames names = new RowNames(built, part, grids);
      done = mistake.apply(Blunder.of(names, piece(right, part), Mistakes.rows(part), done));
    }
    this(built, grids, right, VirtualBench.run(done));
  }

  /**
   * @param right as it should be, {@code run} as it went
   */
  AllSpoilt(BuiltCase built, List<BayGrid> grids, BenchRun right, BenchRun run) {
    this.built = built;
    this.grids = grids.stream().filter(g -> g.caseName().equals(built.order().name())).toList();
    this.run = run;
    for (Part part : Mistakes.uprights(built)) {
      WorkedPiece made = piece(run, part);
      uprights.add(
          new Upright(part, made, SpoiltRows.of(piece(right, part), made, Mistakes.rows(part))));
    }
  }

  private static WorkedPiece piece(BenchRun run, Part part) {
    return Objects.requireNonNull(run.pieces().get(part.mark()));
  }

  /** Whether each bay has its holes at the same places on both hands, as many as it should. */
  boolean doRowsMeet() {
    return run.mishaps().isEmpty()
        && uprights.stream().allMatch(u -> u.rows().made().size() == u.rows().wanted().size())
        && grids.stream().allMatch(this::doRowsMeet);
  }

  private boolean doRowsMeet(BayGrid grid) {
    BaySpace bay = built.bays().get(grid.bay() - 1);
    return places(bay.left(), grid).equals(places(bay.right(), grid));
  }

  private List<Place> places(String mark, BayGrid grid) {
    List<String> rows = grid.rows().stream().map(grid::purpose).toList();
    return uprights.stream()
        .filter(u -> u.part().mark().equals(mark))
        .flatMap(u -> places(u, rows).stream())
        .sorted(Comparator.comparing(Place::above).thenComparing(Place::behind))
        .toList();
  }

  private static List<Place> places(Upright upright, List<String> rows) {
    PiecePlacer placer =
        new PiecePlacer(
            upright.made(),
            corner(upright.part().box().low()),
            corner(upright.part().box().high()));
    return upright.rows().made().stream()
        .filter(b -> rows.contains(b.purpose()))
        .map(b -> place(placer, b))
        .toList();
  }

  private static Place place(PiecePlacer placer, Bore bore) {
    List<Long> at = placer.centre(bore).low();
    return new Place(at.get(Y), at.get(Z));
  }

  private static long[] corner(Point point) {
    return new long[] {point.x().picometres(), point.y().picometres(), point.z().picometres()};
  }

  /** The least wood round a wrong hole of any upright, to all that is not of its own row, mm. */
  double leastWood() {
    return uprights.stream()
        .mapToDouble(u -> Math.min(u.rows().leastRound(), u.rows().leastToOtherHoles()))
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  /** Whether holes from both faces of each upright keep this wood, or as much as they should. */
  boolean doWebsStay(Length least) {
    return uprights.stream().allMatch(u -> u.rows().doWebsStay(least));
  }
}
