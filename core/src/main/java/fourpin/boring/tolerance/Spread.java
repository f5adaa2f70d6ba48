package fourpin.boring.tolerance;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.ojalgo.function.special.ErrorFunction;

/**
 * The distribution of a sum of independent errors round zero: one normal error (normal errors add
 * up to one, their variances summed) and any number of uniform ones.
 *
 * <p>Without uniform errors everything has a closed form. With them, the answers are Fourier series
 * over a period that the whole distribution lies in (see {@link CosineSeries}); nothing is drawn at
 * random.
 *
 * @param normal standard deviation of the normal error, mm; zero for none
 * @param reaches how far each uniform error reaches to either side, mm, from the least
 */
public record Spread(double normal, List<Double> reaches) implements Distribution {

  /**
   * Halvings of the interval in which a quantile lies: to a billionth of it. The library's inverse
   * error function is off by two in a thousand far out.
   */
  private static final int HALVINGS = 30;

  public Spread {
    if (!(normal >= 0) || reaches.stream().anyMatch(reach -> !(reach > 0))) {
      throw new IllegalArgumentException("errors spread by " + normal + " and " + reaches);
    }
    reaches = reaches.stream().sorted().toList();
  }

  /** How far a uniform error of a standard deviation reaches to either side. */
  static double reachOf(double deviation) {
    return deviation * Math.sqrt(3);
  }

  /** Standard deviation of the whole sum, mm. */
  @Override
  public double deviation() {
    double variance = normal * normal;
    for (double reach : reaches) {
      variance += reach * reach / 3;
    }
    return Math.sqrt(variance);
  }

  /**
   * Odds that the sum is farther from zero than a limit.
   *
   * <p>For normal errors erfc(limit / (σ √2)); odds below one in a hundred million may come out as
   * none.
   *
   * @param limit mm; not negative
   */
  @Override
  public double oddsBeyond(double limit) {
    if (deviation() == 0) {
      return 0;
    }
    return reaches.isEmpty()
        ? ErrorFunction.erfc(limit / (normal * Math.sqrt(2)))
        : CosineSeries.of(this, limit).oddsBeyond(limit);
  }

  /** Mean distance from zero, mm; for normal errors σ √(2 / π). */
  @Override
  public double mean() {
    return reaches.isEmpty()
        ? normal * Math.sqrt(2 / Math.PI)
        : CosineSeries.of(this, 0).meanDistance();
  }

  /**
   * The distance from zero that a share of all cases stays within, mm.
   *
   * @param share more than 0, less than 1
   */
  @Override
  public double within(double share) {
    DoubleUnaryOperator odds =
        reaches.isEmpty() ? this::oddsBeyond : CosineSeries.of(this, 0)::oddsBeyond;
    double low = 0;
    double high = farthest();
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      boolean within = odds.applyAsDouble(middle) <= 1 - share;
      low = within ? low : middle;
      high = within ? middle : high;
    }
    return high;
  }

  /** Beyond this, odds are less than any that a double sum shows. */
  double farthest() {
    return CosineSeries.NORMAL_REACH * normal
        + reaches.stream().mapToDouble(Double::doubleValue).sum();
  }
}
