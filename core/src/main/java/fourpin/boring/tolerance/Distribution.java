package fourpin.boring.tolerance;

/** How far from zero, without sign, an error of the height of a shelf is. */
public sealed interface Distribution permits Spread, SimulatedGap {

  /** Root of the mean square, mm. */
  double deviation();

  /**
   * Odds that it is farther than a limit, 0 to 1.
   *
   * @param limit mm; not negative
   */
  double oddsBeyond(double limit);

  /** Mean, mm. */
  double mean();

  /**
   * What a share of all cases stays within, mm.
   *
   * @param share more than 0, less than 1
   */
  double within(double share);
}
