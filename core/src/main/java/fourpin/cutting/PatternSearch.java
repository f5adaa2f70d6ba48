package fourpin.cutting;

import fourpin.cutting.Attempt.Outcome;
import java.util.Arrays;

/** Betters an outcome, and the bound, by column generation and diving. */
final class PatternSearch {
  /** Resolution and breadth of the filling of rests. */
  private static final int CELLS = 256;

  private static final int BREADTH = 24;

  private final Inflated problem;
  private final Work work;

  /** What came out: an outcome no worse than before, a bound no lower. */
  record Found(Outcome outcome, LowerBound bound) {}

  PatternSearch(Inflated problem, Work work) {
    this.problem = problem;
    this.work = work;
  }

  static Strips.Tools tools() {
    return tools(BREADTH);
  }

  static Strips.Tools tools(int breadth) {
    return new Strips.Tools(new Knapsack(CELLS), new Knapsack(CELLS), breadth);
  }

  /**
   * Only for an outcome without parts left out.
   *
   * @param bound valid for the outcome
   */
  Found better(Outcome start, LowerBound bound, Pricing pricing, Finish finish) {
    long[] costs = costs();
    Generation generation = new Generation(problem, costs, pricing, work);
    Outcome outcome =
        new Dive(problem, costs, generation, pricing, tools(), work, start).search(finish);
    return new Found(outcome, raised(bound, generation.bound(), costs));
  }

  /** The prices; where nothing has a price, every panel counts as one. */
  private long[] costs() {
    long[] prices = problem.panels.stream().mapToLong(panel -> panel.sheet().price()).toArray();
    return Arrays.stream(prices).anyMatch(price -> price > 0)
        ? prices
        : Arrays.stream(prices).map(price -> 1).toArray();
  }

  /** As many sheets as the cost asks for if each were of the dearest; these cost something too. */
  private LowerBound raised(LowerBound bound, long cost, long[] costs) {
    boolean priced = problem.panels.stream().anyMatch(panel -> panel.sheet().price() > 0);
    long dearest = Arrays.stream(costs).max().orElse(1);
    long sheets = Math.max(bound.sheets(), Math.ceilDiv(cost, dearest));
    long least = Math.max(cost, new Bounds(problem, problem.fittingDemand()).priceOf(sheets));
    return new LowerBound(priced ? Math.max(bound.price(), least) : bound.price(), sheets);
  }
}
