package fourpin.cutting;

import fourpin.cutting.Attempt.Drafted;
import fourpin.cutting.Attempt.Outcome;
import fourpin.cutting.Attempt.Score;
import fourpin.cutting.PatternSearch.Found;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Cuts parts of one section to length from boards: a first answer as for sheets, then repair (see
 * {@link BoardRepair}), then patterns by column generation, which also raise the bound (see {@link
 * Generation}, {@link BoardFinish} and {@link Dive}), until the bound is reached or the work is
 * spent. The answer is a layout of the problem {@link BoardProblem#asSheets() as sheets}, so the
 * saw order and the virtual saw serve for boards as well. The same problem gives the same layout.
 */
public final class BoardCutter {
  /** Steps for each part; some milliseconds for the boards of a few cases. */
  public static final long QUICK = 5_000;

  /** Steps whatever the number of parts, so that the boards of few parts are proven. */
  private static final long AT_LEAST = 200_000;

  /** Shares of the work: repair of the first answer, of the answer of the patterns. */
  private static final int FIRST_REPAIR = 8;

  private static final int LAST_REPAIR = 8;

  private final long stepsPerPart;
  private final Watch watch;

  public BoardCutter() {
    this(QUICK, Watch.NOBODY);
  }

  /**
   * @param stepsPerPart steps at most for each part, at least zero; about 20 million steps take a
   *     second on a machine of 2025
   */
  public BoardCutter(long stepsPerPart, Watch watch) {
    Require.notNegative(stepsPerPart, "steps per part");
    this.stepsPerPart = stepsPerPart;
    this.watch = watch;
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
    Search search = new Search(inflated, new Answers(problem, inflated));
    Found found =
        start.score().missing() > 0
            ? search.repaired(start, StripCutter.boundOfPlaced(inflated, start), steps(inflated))
            : search.searched(start, bound);
    return search.answers.layout(found.outcome(), found.bound());
  }

  /** Repair, patterns, and repair of what the patterns came to. */
  private final class Search {
    private final Inflated problem;
    private final Answers answers;

    Search(Inflated problem, Answers answers) {
      this.problem = problem;
      this.answers = answers;
    }

    Found searched(Outcome start, LowerBound bound) {
      watch.better(answers.layout(start, bound));
      long steps = steps(problem);
      Found first = repaired(start, bound, steps / FIRST_REPAIR);
      Work work = work(steps - steps / FIRST_REPAIR - steps / LAST_REPAIR, bound);
      BoardPricing pricing = new BoardPricing(problem, work);
      Found second =
          new PatternSearch(problem, work)
              .better(first.outcome(), bound, pricing, new BoardFinish(problem, pricing, work));
      return repaired(second.outcome(), second.bound(), steps / LAST_REPAIR);
    }

    Found repaired(Outcome start, LowerBound bound, long steps) {
      List<Drafted> drafts = new BoardRepair(problem, start).repair(bound, work(steps, bound));
      Outcome repaired =
          new Outcome(drafts, start.missing(), Score.of(problem, drafts, start.missing()));
      if (repaired.score().price() < start.score().price()) {
        watch.better(answers.layout(repaired, bound));
      }
      return new Found(repaired, bound);
    }

    private Work work(long steps, LowerBound bound) {
      return new Work(
          steps, watch::enough, outcome -> watch.better(answers.layout(outcome, bound)));
    }
  }

  private long steps(Inflated problem) {
    return AT_LEAST + stepsPerPart * IntStream.of(problem.fittingDemand()).asLongStream().sum();
  }
}
