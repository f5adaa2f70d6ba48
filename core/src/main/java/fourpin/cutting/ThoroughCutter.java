package fourpin.cutting;

import java.util.ArrayList;
import java.util.List;

/**
 * The cutter for a plan: the quick answer first, and where that is not proven to be the best, a
 * better one as far as the work goes. Sheets are cut by {@link PatternCutter}; where every part is
 * as wide as the stock, so that only crosscuts are left to choose, by {@link BoardCutter}. Where
 * the stock runs out, {@link Shortage} is asked first. Then every sheet is laid out anew for larger
 * offcuts and fewer set-ups, and of all layouts the one of most {@link Merit} is the answer. Stock
 * with defects is cut round them, see {@link DefectSearch}; parts that must share a sheet lie on
 * one, see {@link GroupSearch}.
 */
public final class ThoroughCutter implements SheetCutter {
  /** Steps whatever the size; about 50 million steps take a second on a machine of 2025. */
  private static final long STEPS = 400_000;

  private static final long STEPS_PER_PART = 20_000;

  /** So many more for each part beyond those of an ordinary job, since these are worth it. */
  private static final long STEPS_PER_PART_MORE = 40_000;

  private static final long ORDINARY_PARTS = 500;
  private static final long MOST_STEPS_MORE = 100_000_000;

  /** Knapsack steps to fill sheets strip by strip; about 400 million take a second. From trials. */
  private static final long STRIP_STEPS = 5_000_000;

  private static final long STRIP_STEPS_PER_PART = 100_000;
  private static final long MOST_STRIP_STEPS = 100_000_000;
  private static final int CELLS = 192;

  /** Each round of a search of boards has so many times the work of the last. */
  private static final int GROWTH = 4;

  /** Lines of parts from boards that few have; a round more each may prove them. */
  private static final int FEW_LINES = 10;

  /**
   * Two rounds more; about a tenth of a second for thirty parts, where nothing is proven before.
   */
  private static final long MOST_STEPS_OF_FEW = BoardCutter.QUICK * GROWTH * GROWTH;

  /** Knapsack steps to lay sheets out anew. */
  private static final long REBUILD_STEPS = 2_000_000;

  private static final long REBUILD_STEPS_PER_PART = 10_000;

  private final Merit.Aims aims;
  private final Limit limit;
  private final Watch watch;

  /** What ends a search whose answer is not proven to be the best. */
  public enum Limit {
    /**
     * The work, so much for each part, and the watch: while nobody says enough, the same problem
     * gives the same layout.
     */
    WORK,
    /** The watch alone; what it says last, then the sheets are laid out anew, within a second. */
    WATCH
  }

  /**
   * Limited by work: the same problem gives the same layout.
   *
   * @param aims what counts besides price and area
   */
  public ThoroughCutter(Merit.Aims aims) {
    this(aims, Limit.WORK, Watch.NOBODY);
  }

  /**
   * @param watch hears of better layouts, and may end the search
   */
  public ThoroughCutter(Merit.Aims aims, Limit limit, Watch watch) {
    this.aims = aims;
    this.limit = limit;
    this.watch = watch;
  }

  @Override
  public Layout cut(SheetProblem problem) {
    if (!problem.ties().together().isEmpty()) {
      Layout layout = new GroupSearch(problem, aims, watch, searches()).best();
      return new Layout(rebuilt(problem, layout), layout.unplaced(), layout.bound());
    }
    return DefectCutter.isFor(problem)
        ? new DefectSearch(problem, aims, watch, searches()).best()
        : cutFree(problem, this::stricter);
  }

  /** Of problems that are part of one, so that nobody hears of their layouts. */
  private Searches searches() {
    ThoroughCutter byWork = quiet(Limit.WORK);
    SheetCutter byWatch = limit == Limit.WORK ? byWork : quiet(Limit.WATCH);
    return new Searches(this::quick, byWork::plain, byWork, byWatch);
  }

  private Layout plain(SheetProblem problem) {
    return DefectCutter.isFor(problem) ? cut(problem) : cutFree(problem, Starts.NONE);
  }

  private ThoroughCutter quiet(Limit its) {
    return new ThoroughCutter(aims, its, Watch.until(watch::enough));
  }

  private Layout best(SheetProblem problem, List<Layout> layouts) {
    return Merit.best(problem, layouts, aims);
  }

  private Layout cutFree(SheetProblem problem, Starts starts) {
    List<Layout> found = found(problem, starts);
    Layout best = best(problem, found);
    LowerBound bound = found.stream().reduce(best, Layout::raised).bound();
    return new Layout(rebuilt(problem, best), best.unplaced(), bound);
  }

  private List<SheetPattern> rebuilt(SheetProblem problem, Layout layout) {
    return new Rebuild(problem, aims, rebuildSteps(problem)).better(layout.patterns());
  }

  private List<Layout> stricter(SheetProblem problem) {
    ThoroughCutter quiet = quiet(Limit.WORK);
    return new Ladder((less, starts) -> best(less, quiet.found(less, starts))).of(problem);
  }

  /**
   * The quick answer, those to start from, and a searched one with its better bound where there is
   * more to find.
   */
  private List<Layout> found(SheetProblem problem, Starts starts) {
    Layout strips = strips(problem);
    watch.better(strips);
    Layout quick = watch.enough() ? strips : tried(problem, strips);
    if (Ascent.isBetter(quick, strips)) {
      watch.better(quick);
    }
    if (quick.isProven() || watch.enough()) {
      return List.of(quick);
    }
    List<Layout> known = known(problem, quick, onlyCrosscuts(problem) ? Starts.NONE : starts);
    Layout best = known.stream().reduce((a, b) -> Ascent.isBetter(b, a) ? b : a).orElseThrow();
    if (best.unplaced().isEmpty()) {
      List<Layout> whole = known.stream().filter(layout -> layout.unplaced().isEmpty()).toList();
      return best.isProven() ? whole : searched(problem, whole, best);
    }
    Watch quiet = Watch.until(watch::enough);
    return new Shortage(problem, wider -> searched(wider, quiet, List.of()))
        .madeUp(quick)
        .map(List::of)
        .orElse(List.of(best));
  }

  private Layout quick(SheetProblem problem) {
    return tried(problem, strips(problem));
  }

  private Layout strips(SheetProblem problem) {
    Watch quiet = Watch.until(watch::enough);
    return new StripCutter(StripCutter.Effort.QUICK, quiet).cut(problem);
  }

  /**
   * Of few parts what trying through makes better: where sheets differ in size, even what is proven
   * to be the cheapest may be had with less area.
   */
  private static Layout tried(SheetProblem problem, Layout strips) {
    boolean alike =
        problem.stock().stream().map(s -> s.length().mm() * s.width().mm()).distinct().count() == 1;
    boolean best = strips.isProven() && alike;
    return best || DefectCutter.isFor(problem) ? strips : FewParts.best(problem, strips);
  }

  /** With bounds of the problem itself, since that of a stricter one may be too high. */
  private List<Layout> known(SheetProblem problem, Layout quick, Starts starts) {
    List<Layout> known = new ArrayList<>(List.of(quick));
    for (Layout layout : starts.of(problem)) {
      LowerBound bound = Bounds.ofPlaced(problem, layout.unplaced());
      Layout answer = new Layout(layout.patterns(), layout.unplaced(), bound);
      known.add(answer);
      if (Ascent.isBetter(answer, quick)) {
        watch.better(answer);
      }
    }
    return known;
  }

  private List<Layout> searched(SheetProblem problem, List<Layout> known, Layout best) {
    List<Layout> found = new ArrayList<>(known);
    found.add(searched(problem, new Ascent(best, watch), known));
    return found;
  }

  private static long rebuildSteps(SheetProblem problem) {
    return REBUILD_STEPS + REBUILD_STEPS_PER_PART * parts(problem);
  }

  private Layout searched(SheetProblem problem, Watch told, List<Layout> known) {
    return onlyCrosscuts(problem) ? ofBoards(problem, told) : ofSheets(problem, told, known);
  }

  private Layout ofSheets(SheetProblem problem, Watch told, List<Layout> known) {
    boolean byWork = limit == Limit.WORK;
    long strips = STRIP_STEPS + STRIP_STEPS_PER_PART * parts(problem);
    StripCutter.Effort first =
        new StripCutter.Effort(byWork ? Math.min(strips, MOST_STRIP_STEPS) : strips, CELLS);
    long most = byWork ? steps(parts(problem)) : Long.MAX_VALUE;
    return new PatternCutter(first, most, told, _ -> known).cut(problem);
  }

  private static long steps(long parts) {
    long beyond = Math.max(0, parts - ORDINARY_PARTS);
    return STEPS + STEPS_PER_PART * parts + Math.min(MOST_STEPS_MORE, STEPS_PER_PART_MORE * beyond);
  }

  private Layout ofBoards(SheetProblem problem, Watch told) {
    long steps = BoardCutter.QUICK;
    Layout best = new BoardCutter(steps, told).cut(problem);
    while (steps < most(problem) && !best.isProven() && !watch.enough()) {
      steps *= GROWTH;
      Layout next = new BoardCutter(steps, told).cut(problem);
      best = (Ascent.isBetter(next, best) ? next : best).raised(best).raised(next);
    }
    return best;
  }

  /** Steps for each part. */
  private long most(SheetProblem problem) {
    if (limit == Limit.WATCH) {
      return Long.MAX_VALUE / GROWTH;
    }
    return problem.parts().size() <= FEW_LINES ? MOST_STEPS_OF_FEW : BoardCutter.QUICK;
  }

  private static long parts(SheetProblem problem) {
    return problem.parts().stream().mapToLong(Part::count).sum();
  }

  /** Whether all parts are as wide as all stock. */
  private static boolean onlyCrosscuts(SheetProblem problem) {
    Inflated inflated = new Inflated(problem);
    return inflated.kinds.stream()
        .allMatch(
            kind ->
                kind.grain() == Grain.FIXED
                    && inflated.panels.stream().allMatch(panel -> isAsWide(kind, panel)));
  }

  private static boolean isAsWide(Inflated.Kind kind, Inflated.Panel panel) {
    return panel.sheet().grain() == SheetGrain.ALONG_LENGTH
        && (panel.width() == kind.width() || panel.keepsEdges(kind, Lay.STRAIGHT));
  }
}
