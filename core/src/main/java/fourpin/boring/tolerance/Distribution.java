package fourpin.boring.tolerance;

import java.util.Optional;

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

  /**
   * The same odds with the cases that they were counted among; none where they were worked out.
   *
   * @param limit mm; not negative
   */
  default Optional<Sampled> sampledBeyond(double limit) {
    return Optional.empty();
  }

  /** Mean, mm. */
  double mean();

  /**
   * What a share of all cases stays within, mm.
   *
   * @param share more than 0, less than 1
   */
  double within(double share);
}
