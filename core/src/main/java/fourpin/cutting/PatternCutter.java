package fourpin.cutting;

import fourpin.cutting.Attempt.Outcome;
import fourpin.cutting.PatternSearch.Found;
import java.util.function.BooleanSupplier;

/**
 * A cutter that takes its time: the answer of {@link StripCutter} first, then patterns by column
 * generation (see {@link Generation}) made whole by dives (see {@link Dive}). The answer is never
 * worse than the first one, and the bound never lower. Most is gained for many parts of few sizes,
 * and for several sizes of sheet; parts that no longer have sheets are left to the first answer.
 *
 * <p>Stops when the price is proven to be the least possible, the work is spent, or the caller says
 * so; without a stop of the caller the answer does not depend on the machine.
 */
public final class PatternCutter implements SheetCutter {

  /** About ten seconds on a machine of 2025. */
  public static final long THOROUGH = 200_000_000;

  private static final StripCutter.Effort FIRST = new StripCutter.Effort(20_000_000, 256);

  private final StripCutter.Effort first;
  private final long steps;
  private final BooleanSupplier stop;

  /**
   * @param steps at most, at least zero; about 20 million take a second on a machine of 2025
   */
  public PatternCutter(long steps) {
    this(steps, Work.NEVER);
  }

  /**
   * @param stop asked now and then; once true, the best layout so far is the answer
   */
  public PatternCutter(long steps, BooleanSupplier stop) {
    this(FIRST, steps, stop);
  }

  /**
   * @param first for the answer that is then bettered
   */
  PatternCutter(StripCutter.Effort first, long steps) {
    this(first, steps, Work.NEVER);
  }

  private PatternCutter(StripCutter.Effort first, long steps, BooleanSupplier stop) {
    Require.notNegative(steps, "steps");
    this.first = first;
    this.steps = steps;
    this.stop = stop;
  }

  @Override
  public Layout cut(SheetProblem problem) {
    Inflated inflated = new Inflated(problem);
    LowerBound bound = new Bounds(inflated, inflated.fittingDemand()).bound();
    Outcome start = new StripCutter(first).search(inflated, bound);
    Found found = found(inflated, start, bound);
    Trees trees = new Trees(problem, inflated);
    return new Layout(
        trees.patterns(found.outcome().drafts()),
        trees.leftOver(new Misfits(inflated)),
        found.bound());
  }

  private Found found(Inflated problem, Outcome start, LowerBound bound) {
    if (start.score().missing() > 0) {
      return new Found(start, StripCutter.boundOfPlaced(problem, start));
    }
    long sheets = start.drafts().stream().mapToLong(Attempt.Drafted::quantity).sum();
    if (bound.reachedBy(start.score().price(), sheets)) {
      return new Found(start, bound);
    }
    Work work = new Work(steps, stop);
    return new PatternSearch(problem, work).better(start, bound, new SheetPricing(problem, work));
  }
}
