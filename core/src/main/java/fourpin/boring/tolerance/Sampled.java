package fourpin.boring.tolerance;

import fourpin.measure.Source;
import fourpin.measure.Source.Standing;

/**
 * Odds that were counted among cases drawn at random.
 *
 * @param found in how many of them it came about
 * @param drawn how many there were; at least one
 */
public record Sampled(long found, long drawn) {

  /** Where the standard error comes from. */
  static final Source PLUS_FOUR =
      new Source(
          "Agresti and Coull, Approximate Is Better than “Exact” for Interval Estimation of Binomial"
              + " Proportions, The American Statistician 52 (1998)",
          "two successes and two failures added",
          Standing.FROM_MEMORY);

  private static final int ADDED = 2;

  /** The odds, 0 to 1. */
  public double share() {
    return (double) found / drawn;
  }

  /**
   * Standard error of the odds, 0 to 1. With two cases of either kind added, so that odds of which
   * no case was found, or only such, are not said to be exact.
   */
  public double error() {
    double all = drawn + 2 * ADDED;
    double near = (found + ADDED) / all;
    return Math.sqrt(near * (1 - near) / all);
  }
}
