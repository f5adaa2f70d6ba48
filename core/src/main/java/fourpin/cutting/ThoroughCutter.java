package fourpin.cutting;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The cutter for a plan: the quick answer first, and where that is not proven to be the best, a
 * better one as far as the work goes. Sheets are cut by {@link PatternCutter}; where every part is
 * as wide as the stock, so that only crosscuts are left to choose, by {@link BoardCutter}. Where
 * the stock runs out, {@link Shortage} is asked first. Then every sheet is laid out anew for larger
 * offcuts and fewer set-ups, and of all layouts the one of most {@link Merit} is the answer.
 *
 * <p>Work is limited by the number of parts, never by time: the same problem gives the same layout.
 */
public final class ThoroughCutter implements SheetCutter {
  /** Steps whatever the size; about 20 million steps take a second on a machine of 2025. */
  private static final long STEPS = 400_000;

  private static final long STEPS_PER_PART = 2_000;

  /** Knapsack steps to fill sheets strip by strip; about 100 million take a second. From trials. */
  private static final long STRIP_STEPS = 5_000_000;

  private static final long STRIP_STEPS_PER_PART = 100_000;
  private static final long MOST_STRIP_STEPS = 100_000_000;
  private static final int CELLS = 192;

  /** Knapsack steps to lay sheets out anew. */
  private static final long REBUILD_STEPS = 2_000_000;

  private static final long REBUILD_STEPS_PER_PART = 10_000;

  private final Merit.Aims aims;

  /**
   * @param aims what counts besides price and area
   */
  public ThoroughCutter(Merit.Aims aims) {
    this.aims = aims;
  }

  @Override
  public Layout cut(SheetProblem problem) {
    List<Layout> found = found(problem);
    Layout best =
        found.stream()
            .min(Comparator.comparing(layout -> Merit.of(problem, layout, aims)))
            .orElseThrow();
    List<SheetPattern> rebuilt =
        new Rebuild(problem, aims, rebuildSteps(problem)).better(best.patterns());
    return new Layout(rebuilt, best.unplaced(), found.getLast().bound());
  }

  /** The quick answer, and a searched one with its better bound where there is more to find. */
  private static List<Layout> found(SheetProblem problem) {
    Layout quick = new StripCutter().cut(problem);
    if (isProven(quick)) {
      return List.of(quick);
    }
    Optional<Layout> searched =
        quick.unplaced().isEmpty()
            ? Optional.of(searched(problem))
            : new Shortage(problem, ThoroughCutter::searched).madeUp(quick);
    return searched.isEmpty()
        ? List.of(quick)
        : quick.unplaced().isEmpty() ? List.of(quick, searched.get()) : List.of(searched.get());
  }

  private static long rebuildSteps(SheetProblem problem) {
    return REBUILD_STEPS + REBUILD_STEPS_PER_PART * parts(problem);
  }

  private static boolean isProven(Layout layout) {
    return layout.unplaced().isEmpty() && layout.bound().reachedBy(layout.price(), layout.sheets());
  }

  private static Layout searched(SheetProblem problem) {
    long steps = STEPS + STEPS_PER_PART * parts(problem);
    long strips = Math.min(STRIP_STEPS + STRIP_STEPS_PER_PART * parts(problem), MOST_STRIP_STEPS);
    return onlyCrosscuts(problem)
        ? new BoardCutter().cut(problem)
        : new PatternCutter(new StripCutter.Effort(strips, CELLS), steps).cut(problem);
  }

  private static long parts(SheetProblem problem) {
    return problem.parts().stream().mapToLong(Part::count).sum();
  }

  /** Whether all parts, and all stock between its trimmed edges, are of one width. */
  private static boolean onlyCrosscuts(SheetProblem problem) {
    Inflated inflated = new Inflated(problem);
    return inflated.kinds.stream()
        .allMatch(
            kind ->
                kind.grain() == Grain.FIXED
                    && inflated.panels.stream().allMatch(panel -> isAsWide(kind, panel)));
  }

  private static boolean isAsWide(Inflated.Kind kind, Inflated.Panel panel) {
    return panel.sheet().grain() == SheetGrain.ALONG_LENGTH && panel.width() == kind.width();
  }
}
