package fourpin.boring.tolerance;

/**
 * Odds and mean of a symmetric distribution from its characteristic function.
 *
 * <p>Both the function that is 1 where |x| is at most a limit L and |x| itself are Fourier cosine
 * series over a period P, with h = 2π / P: 2 L / P + Σ 2 sin(k h L) cos(k h x) / (π k), and P / 4 -
 * (2 P / π²) Σ cos(k h x) / k² over odd k. The mean of cos(k h X) is the characteristic function of
 * X at k h: exp(-(σ k h)² / 2) for a normal error, sin(a k h) / (a k h) for a uniform one that
 * reaches a to either side, and the product for a sum. So the series with these in place of the
 * cosines are the odds and the mean, exactly, as long as X stays within half a period of zero (for
 * the odds, within P - L).
 */
final class CosineSeries {

  /** Standard deviations beyond which a normal error is not looked for: odds under 1e-18. */
  static final double NORMAL_REACH = 9;

  private static final double NEGLIGIBLE = 1e-15;

  /** Reached only where all but a hair of the sum is one uniform error; then good to 1e-5. */
  private static final int MOST_TERMS = 10_000;

  private final double period;
  private final double[] characteristic;

  private CosineSeries(double period, double[] characteristic) {
    this.period = period;
    this.characteristic = characteristic;
  }

  /**
   * @param limit the largest that odds will be asked for, if that is beyond the spread
   */
  static CosineSeries of(Spread spread, double limit) {
    double period = 2 * Math.max(spread.farthest(), limit);
    double step = 2 * Math.PI / period;
    double[] values = new double[terms(spread, step)];
    for (int k = 1; k <= values.length; k++) {
      values[k - 1] = characteristic(spread, k * step);
    }
    return new CosineSeries(period, values);
  }

  private static int terms(Spread spread, double step) {
    int k = 1;
    while (k < MOST_TERMS && bound(spread, k * step) > NEGLIGIBLE) {
      k++;
    }
    return k;
  }

  private static double characteristic(Spread spread, double at) {
    double value = normal(spread, at);
    for (double reach : spread.reaches()) {
      value *= Math.sin(reach * at) / (reach * at);
    }
    return value;
  }

  /** What the characteristic function is not beyond, there and further out. */
  private static double bound(Spread spread, double at) {
    double bound = normal(spread, at);
    for (double reach : spread.reaches()) {
      bound *= Math.min(1, 1 / (reach * at));
    }
    return bound;
  }

  private static double normal(Spread spread, double at) {
    double scaled = spread.normal() * at;
    return Math.exp(-scaled * scaled / 2);
  }

  double oddsBeyond(double limit) {
    double step = 2 * Math.PI / period;
    double within = 2 * limit / period;
    for (int k = 1; k <= characteristic.length; k++) {
      within += 2 * Math.sin(k * step * limit) * characteristic[k - 1] / (Math.PI * k);
    }
    return Math.clamp(1 - within, 0, 1);
  }

  double meanDistance() {
    double sum = 0;
    for (int k = 1; k <= characteristic.length; k += 2) {
      sum += characteristic[k - 1] / ((double) k * k);
    }
    return period / 4 - 2 * period / (Math.PI * Math.PI) * sum;
  }
}
