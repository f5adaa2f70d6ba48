package fourpin.cutting;

import fourpin.cutting.Attempt.Drafted;
import fourpin.cutting.Attempt.Outcome;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Cuts parts of one section to length from boards: a first answer as for sheets, then repair (see
 * {@link BoardRepair}) until the bound is reached or the work is spent. The answer is a layout of
 * the problem {@link BoardProblem#asSheets() as sheets}, so the saw order and the virtual saw serve
 * for boards as well. The same problem gives the same layout.
 */
public final class BoardCutter {
  /** Steps of repair for each part; some milliseconds for the boards of a few cases. */
  public static final long QUICK = 5_000;

  private final long stepsPerPart;

  public BoardCutter() {
    this(QUICK);
  }

  /**
   * @param stepsPerPart steps of repair at most for each part, at least zero; about 20 million
   *     steps take a second on a machine of 2025
   */
  public BoardCutter(long stepsPerPart) {
    Require.notNegative(stepsPerPart, "steps per part");
    this.stepsPerPart = stepsPerPart;
  }

  public Layout cut(BoardProblem boards) {
    SheetProblem problem = boards.asSheets();
    StripCutter cutter = new StripCutter();
    Inflated inflated = new Inflated(problem);
    LowerBound bound = new Bounds(inflated, inflated.fittingDemand()).bound();
    Outcome start = cutter.search(inflated, bound);
    LowerBound valid = StripCutter.boundOfPlaced(inflated, start);
    long parts = IntStream.of(inflated.fittingDemand()).asLongStream().sum();
    List<Drafted> repaired = new BoardRepair(inflated, start).repair(valid, stepsPerPart * parts);
    Trees trees = new Trees(problem, inflated);
    return new Layout(trees.patterns(repaired), trees.leftOver(new Misfits(inflated)), valid);
  }
}
