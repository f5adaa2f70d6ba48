package fourpin.boring.tolerance;

import java.util.Arrays;

/** What simulated cases came to. */
public final class Tally {

  private final int cases;
  private final int casesBeyond;
  private final int apartBeyond;
  private final int[] beyond;
  private final double[] sums;
  private final double[] squares;

  /**
   * Takes the arrays as they are.
   *
   * @param casesBeyond in which at least one position missed by more than the limit
   * @param apartBeyond the same of the positions that are counted apart
   * @param beyond by position, in how many cases it missed by more than the limit
   * @param sums of the misses without sign, by position, mm; {@code squares} of their squares
   */
  Tally(
      int cases, int casesBeyond, int apartBeyond, int[] beyond, double[] sums, double[] squares) {
    this.cases = cases;
    this.casesBeyond = casesBeyond;
    this.apartBeyond = apartBeyond;
    this.beyond = beyond;
    this.sums = sums;
    this.squares = squares;
  }

  static Tally none(int positions) {
    return new Tally(0, 0, 0, new int[positions], new double[positions], new double[positions]);
  }

  Tally plus(Tally other) {
    int[] bothBeyond = beyond.clone();
    double[] bothSums = sums.clone();
    double[] bothSquares = squares.clone();
    for (int p = 0; p < beyond.length; p++) {
      bothBeyond[p] += other.beyond[p];
      bothSums[p] += other.sums[p];
      bothSquares[p] += other.squares[p];
    }
    return new Tally(
        cases + other.cases,
        casesBeyond + other.casesBeyond,
        apartBeyond + other.apartBeyond,
        bothBeyond,
        bothSums,
        bothSquares);
  }

  public int cases() {
    return cases;
  }

  /** Cases in which at least one position misses by more than the limit. */
  public int casesBeyond() {
    return casesBeyond;
  }

  /** Cases in which at least one of the positions counted apart does. */
  public int apartBeyond() {
    return apartBeyond;
  }

  /** Share of cases in which at least one position misses by more than the limit. */
  public Sampled any() {
    return new Sampled(casesBeyond, cases);
  }

  /** The same of the positions counted apart. */
  public Sampled anyApart() {
    return new Sampled(apartBeyond, cases);
  }

  public double oddsOfAny() {
    return any().share();
  }

  public double oddsOfAnyApart() {
    return anyApart().share();
  }

  /** Mean number of positions of a case that miss by more than the limit. */
  public double expected() {
    return (double) Arrays.stream(beyond).asLongStream().sum() / cases;
  }

  /** Share of cases in which a position, by its index in the model, misses by more. */
  public double odds(int position) {
    return (double) beyond[position] / cases;
  }

  /** Mean of a position's miss without its sign, mm. */
  public double mean(int position) {
    return sums[position] / cases;
  }

  /** Root of the mean square of a position's miss, mm. */
  public double deviation(int position) {
    return Math.sqrt(squares[position] / cases);
  }
}
