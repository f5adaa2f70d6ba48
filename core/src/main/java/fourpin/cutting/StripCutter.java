package fourpin.cutting;

import fourpin.cutting.Attempt.Outcome;
import java.util.Arrays;

/**
 * A constructive cutter: every sheet is filled strip by strip (see {@link Filler}), first cuts
 * along, across, or whichever fills better, in several runs that learn from each other which parts
 * waste most (see {@link Attempt}). The best run counts: fewest parts left out, then price, then
 * sheet area, then the largest single offcut.
 *
 * <p>The number of cutting directions is free. Stops when the price is proven to be the least
 * possible or the work is spent. Work, not time, is limited, so the answer does not depend on the
 * machine; the first runs are always made, unless a watch says enough after the first of them.
 */
public final class StripCutter implements SheetCutter {
  static final Direction[][] WAYS = {
    {Direction.RIP}, {Direction.CROSSCUT}, {Direction.RIP, Direction.CROSSCUT}
  };

  /**
   * Large parts are worth a little more than their area, so that they are not left for the end.
   * From trials.
   */
  private static final double POWER = 1.02;

  /**
   * About how often a strip is chosen for one sheet; only the breadth of the search hangs on it.
   */
  private static final int STRIPS_PER_SHEET = 5;

  private static final int LEAST_BREADTH = 8;
  private static final int MOST_BREADTH = 64;

  private final Effort effort;
  private final Watch watch;

  /**
   * How hard to try.
   *
   * @param work knapsack steps in all, about 400 million to the second on a machine of 2025
   * @param cells resolution of the knapsacks, 16 to 4096
   */
  public record Effort(long work, int cells) {

    /** For an answer at once: some milliseconds for the parts of a few cases. */
    public static final Effort QUICK = new Effort(2_000_000, 192);

    public Effort {
      Require.notNegative(work, "work");
      if (cells < 16 || cells > 4096) {
        throw new IllegalArgumentException("cells must be from 16 to 4096, but is " + cells);
      }
    }
  }

  public StripCutter() {
    this(Effort.QUICK);
  }

  public StripCutter(Effort effort) {
    this(effort, Watch.NOBODY);
  }

  StripCutter(Effort effort, Watch watch) {
    this.effort = effort;
    this.watch = watch;
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
    Outcome best = search(inflated, bound);
    return new Answers(problem, inflated)
        .layout(best, best.score().missing() > 0 ? boundOfPlaced(inflated, best) : bound);
  }

  static LowerBound boundOfPlaced(Inflated inflated, Outcome outcome) {
    int[] placed = inflated.fittingDemand();
    for (int kind = 0; kind < placed.length; kind++) {
      placed[kind] -= outcome.missing()[kind];
    }
    return new Bounds(inflated, placed).bound();
  }

  Outcome search(Inflated inflated, LowerBound bound) {
    Strips.Tools tools = tools(inflated, bound);
    double[][] worth = new double[WAYS.length][];
    Arrays.setAll(worth, way -> areas(inflated));
    Outcome best = new Attempt(inflated, worth[0], WAYS[0], tools).run();
    for (int run = 1; goesOn(run, best, bound, tools.work()); run++) {
      int way = run % WAYS.length;
      if (run / WAYS.length == 1) {
        worth[way] = shares(inflated);
      }
      Outcome next = new Attempt(inflated, worth[way], WAYS[way], tools).run(watch::enough);
      best = next.score().compareTo(best.score()) < 0 ? next : best;
    }
    return best;
  }

  /** As broad a look at strips and kinds as the work allows for the first runs. */
  private Strips.Tools tools(Inflated inflated, LowerBound bound) {
    double steps = (double) effort.work / (WAYS.length * STRIPS_PER_SHEET * effort.cells);
    double breadth = Math.sqrt(steps / Math.max(bound.sheets() * inflated.panels.size(), 1));
    return new Strips.Tools(
        new Knapsack(effort.cells),
        new Knapsack(effort.cells),
        (int) Math.clamp(breadth, LEAST_BREADTH, MOST_BREADTH));
  }

  /** Runs that take no work, because all stock is used up, would go on for ever. */
  private boolean goesOn(int run, Outcome best, LowerBound bound, long work) {
    boolean proven =
        best.score().missing() == 0 && bound.reachedBy(best.score().price(), Answers.sheets(best));
    boolean canGain = work > 0 && work < effort.work;
    return (run < WAYS.length || (canGain && !proven)) && !watch.enough();
  }

  private static double[] areas(Inflated inflated) {
    double[] areas = new double[inflated.kinds.size()];
    double largest = 0;
    for (int kind = 0; kind < areas.length; kind++) {
      largest = Math.max(largest, inflated.area(kind));
    }
    for (int kind = 0; kind < areas.length; kind++) {
      areas[kind] = largest * Math.pow(inflated.area(kind) / largest, POWER);
    }
    return areas;
  }

  /** Half by area, half by what the lower bound says that a part blocks. */
  private static double[] shares(Inflated inflated) {
    double[] shares = new Bounds(inflated, inflated.fittingDemand()).shares(Inflated.Panel::area);
    for (int kind = 0; kind < shares.length; kind++) {
      shares[kind] = (shares[kind] + inflated.area(kind)) / 2;
    }
    return shares;
  }
}
