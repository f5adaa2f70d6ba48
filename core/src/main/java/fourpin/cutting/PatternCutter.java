package fourpin.cutting;

import fourpin.cutting.Attempt.Outcome;
import fourpin.cutting.PatternSearch.Found;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * A cutter that takes its time: the answer of {@link StripCutter} first, repaired (see {@link
 * SheetRepair}), then patterns by column generation (see {@link Generation}) made whole by dives
 * (see {@link Dive}). The answer is never worse than the first one, and the bound never lower. Most
 * is gained for many parts of few sizes, and for several sizes of sheet; parts that no longer have
 * sheets are left to the first answer.
 *
 * <p>Stops when the price is proven to be the least possible, the work is spent, or the watch says
 * so; without a watch the answer does not depend on the machine.
 */
public final class PatternCutter implements SheetCutter {

  /**
   * Steps to repair the first answer, if that is not more than half of all. Few kinds of many parts
   * are better left to the patterns.
   */
  private static final long REPAIR_STEPS_PER_KIND = 50_000;

  /** A share of the work for the answer in which nothing is turned. */
  private static final int STRAIGHT = 4;

  private static final StripCutter.Effort FIRST = new StripCutter.Effort(20_000_000, 256);

  private final StripCutter.Effort first;
  private final long steps;
  private final Watch watch;
  private final Starts starts;

  /**
   * @param steps at most, at least zero; about 50 million take a second on a machine of 2025
   */
  public PatternCutter(long steps) {
    this(steps, Watch.NOBODY);
  }

  public PatternCutter(long steps, Watch watch) {
    this(FIRST, steps, watch, problem -> straight(problem, steps / STRAIGHT, watch));
  }

  /**
   * @param first for the answer that is then bettered
   * @param starts of all parts, the best of which may be bettered instead
   */
  PatternCutter(StripCutter.Effort first, long steps, Watch watch, Starts starts) {
    Require.notNegative(steps, "steps");
    this.first = first;
    this.steps = steps;
    this.watch = watch;
    this.starts = starts;
  }

  private static List<Layout> straight(SheetProblem problem, long steps, Watch watch) {
    Watch quiet = Watch.until(watch::enough);
    return Stricter.straight(problem, new PatternCutter(FIRST, steps, quiet, Starts.NONE));
  }

  @Override
  public Layout cut(SheetProblem problem) {
    return DefectCutter.isFor(problem)
        ? DefectCutter.cut(problem, this::cut)
        : Sharing.cut(problem, Searches.all(this::cutFree), Sharing.How.CHEAPEST);
  }

  private Layout cutFree(SheetProblem problem) {
    Inflated inflated = new Inflated(problem);
    LowerBound bound = new Bounds(inflated, inflated.fittingDemand()).bound();
    Outcome strips = new StripCutter(first, watch).search(inflated, bound);
    boolean proven =
        strips.score().missing() == 0
            && bound.reachedBy(strips.score().price(), Answers.sheets(strips));
    Outcome start = proven ? strips : start(problem, inflated, strips);
    Answers answers = new Answers(problem, inflated);
    watch.better(answers.layout(start, bound));
    Found found = found(inflated, start, bound, answers);
    return answers.layout(found.outcome(), found.bound());
  }

  private Outcome start(SheetProblem problem, Inflated inflated, Outcome strips) {
    return Stream.concat(
            Stream.of(strips),
            starts.of(problem).stream().map(layout -> Redraft.of(inflated, layout)))
        .min(Comparator.comparing(Outcome::score))
        .orElseThrow();
  }

  private Found found(Inflated problem, Outcome start, LowerBound bound, Answers answers) {
    if (start.score().missing() > 0) {
      return new Found(start, StripCutter.boundOfPlaced(problem, start));
    }
    if (bound.reachedBy(start.score().price(), Answers.sheets(start))) {
      return new Found(start, bound);
    }
    Work work =
        new Work(steps, watch::enough, outcome -> watch.better(answers.layout(outcome, bound)));
    long least = Math.max(steps / 2, steps - REPAIR_STEPS_PER_KIND * problem.kinds.size());
    Outcome repaired = new SheetRepair(problem, start).repair(bound, work, least);
    Found found =
        new PatternSearch(problem, work)
            .better(repaired, bound, new SheetPricing(problem, work), Finish.NONE);
    Outcome last = new SheetRepair(problem, found.outcome()).repair(found.bound(), work, 0);
    return new Found(last, found.bound());
  }
}
