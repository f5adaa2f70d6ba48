package fourpin.cutting;

import fourpin.cutting.Attempt.Drafted;
import fourpin.cutting.Attempt.Outcome;
import fourpin.cutting.Attempt.Score;
import fourpin.cutting.PatternSearch.Found;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * Cuts parts of one section to length from boards: a first answer as for sheets, then repair (see
 * {@link BoardRepair}), then patterns by column generation, which also raise the bound (see {@link
 * Generation} and {@link Dive}), until the bound is reached or the work is spent. The answer is a
 * layout of the problem {@link BoardProblem#asSheets() as sheets}, so the saw order and the virtual
 * saw serve for boards as well. The same problem gives the same layout.
 */
public final class BoardCutter {
  /** Steps for each part; some milliseconds for the boards of a few cases. */
  public static final long QUICK = 5_000;

  /** Shares of the work: repair of the first answer, of the answer of the patterns. */
  private static final int FIRST_REPAIR = 4;

  private static final int LAST_REPAIR = 4;

  private final long stepsPerPart;
  private final BooleanSupplier stop;

  public BoardCutter() {
    this(QUICK);
  }

  /**
   * @param stepsPerPart steps at most for each part, at least zero; about 20 million steps take a
   *     second on a machine of 2025
   */
  public BoardCutter(long stepsPerPart) {
    this(stepsPerPart, Work.NEVER);
  }

  /**
   * @param stop asked now and then; once true, the best cutting so far is the answer
   */
  public BoardCutter(long stepsPerPart, BooleanSupplier stop) {
    Require.notNegative(stepsPerPart, "steps per part");
    this.stepsPerPart = stepsPerPart;
    this.stop = stop;
  }

  public Layout cut(BoardProblem boards) {
    return cut(boards.asSheets());
  }

  /**
   * @param problem of which only crosscuts are left to choose
   */
  Layout cut(SheetProblem problem) {
    Inflated inflated = new Inflated(problem);
    LowerBound bound = new Bounds(inflated, inflated.fittingDemand()).bound();
    Outcome start = new StripCutter().search(inflated, bound);
    Found found =
        start.score().missing() > 0
            ? repaired(inflated, start, StripCutter.boundOfPlaced(inflated, start), 1)
            : searched(inflated, start, bound);
    Trees trees = new Trees(problem, inflated);
    return new Layout(
        trees.patterns(found.outcome().drafts()),
        trees.leftOver(new Misfits(inflated)),
        found.bound());
  }

  /** Repair, patterns, and repair of what the patterns came to. */
  private Found searched(Inflated problem, Outcome start, LowerBound bound) {
    Found first = repaired(problem, start, bound, FIRST_REPAIR);
    Work work = new Work(steps(problem) / 2, stop);
    Found second =
        new PatternSearch(problem, work)
            .better(first.outcome(), bound, new BoardPricing(problem, work));
    return repaired(problem, second.outcome(), second.bound(), LAST_REPAIR);
  }

  private Found repaired(Inflated problem, Outcome start, LowerBound bound, int share) {
    Work work = new Work(steps(problem) / share, stop);
    List<Drafted> drafts = new BoardRepair(problem, start).repair(bound, work);
    Score score = Score.of(problem, drafts, start.missing());
    return new Found(new Outcome(drafts, start.missing(), score), bound);
  }

  private long steps(Inflated problem) {
    return stepsPerPart * IntStream.of(problem.fittingDemand()).asLongStream().sum();
  }
}
