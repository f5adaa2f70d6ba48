package fourpin.boring.tolerance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.ojalgo.function.special.ErrorFunction;

/**
 * Against published tables of the normal distribution, the exact polynomials for sums of uniform
 * errors, and the integral for one of each.
 */
class SpreadTest {

  private static final double SIGMA = 0.25;

  private static Spread uniform(int count, double reach) {
    return new Spread(0, Collections.nCopies(count, reach));
  }

  /**
   * NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.1, areas under the standard normal
   * curve from 0 to z; what lies beyond on both sides is 1 less twice the area.
   */
  @ParameterizedTest
  @CsvSource({
    "0.50, 0.19146",
    "0.67, 0.24857",
    "1.00, 0.34134",
    "1.50, 0.43319",
    "1.96, 0.47500",
    "2.00, 0.47725",
    "2.58, 0.49506",
    "3.00, 0.49865"
  })
  void normalErrorsFollowThePublishedTable(double z, double area) {
    Spread spread = new Spread(SIGMA, List.of());
    assertThat(spread.oddsBeyond(z * SIGMA)).isCloseTo(1 - 2 * area, within(1e-5));
    assertThat(spread.within(2 * area) / SIGMA).isCloseTo(z, within(2e-3));
  }

  /** Sum of n uniform errors of reach 1: (n - x)^n / (2^(n - 1) n!) for x from n - 2 to n. */
  @ParameterizedTest
  @CsvSource({
    "1, 0.3, 0.7",
    "1, 0.95, 0.05",
    "2, 0.5, 0.5625",
    "2, 1.8, 0.01",
    "3, 1, 0.33333333",
    "3, 2.5, 0.00520833",
    "4, 2, 0.08333333",
    "4, 3, 0.00520833",
    "4, 4, 0",
    "4, 9, 0"
  })
  void sumsOfUniformErrorsFollowTheirPolynomials(int count, double limit, double odds) {
    double loose = count == 1 ? 1e-4 : 1e-7;
    assertThat(uniform(count, 1).oddsBeyond(limit)).isCloseTo(odds, within(loose));
  }

  /** E|X|: a / 2 for one, 2 a / 3 for two (triangle), 13 a / 16 for three. */
  @ParameterizedTest
  @CsvSource({"1, 0.5", "2, 0.66666667", "3, 0.8125"})
  void meansOfUniformErrors(int count, double mean) {
    assertThat(uniform(count, 1).mean()).isCloseTo(mean, within(1e-6));
    assertThat(uniform(count, 0.4).mean()).isCloseTo(0.4 * mean, within(1e-6));
  }

  /** The mean over u from -a to a of the normal odds at L - u and L + u, by Simpson's rule. */
  @ParameterizedTest
  @CsvSource({"0.2, 0.3, 0.1", "0.2, 0.3, 0.5", "0.05, 1, 0.9", "1, 0.1, 2.5", "0.001, 0.5, 0.4"})
  void oneOfEachFollowsTheIntegral(double normal, double reach, double limit) {
    int steps = 20_000;
    double sum = 0;
    for (int i = 0; i <= steps; i++) {
      double u = -reach + 2 * reach * i / steps;
      double beyond = (tail((limit - u) / normal) + tail((limit + u) / normal)) / 2;
      sum += beyond * (i == 0 || i == steps ? 1 : i % 2 == 0 ? 2 : 4);
    }
    assertThat(new Spread(normal, List.of(reach)).oddsBeyond(limit))
        .isCloseTo(sum / (3 * steps), within(1e-7));
  }

  private static double tail(double z) {
    return ErrorFunction.erfc(z / Math.sqrt(2));
  }

  @Test
  void aNormalErrorWithHardlyAnyUniformOneIsANormalError() {
    Spread mixed = new Spread(SIGMA, List.of(1e-9, 1e-9));
    Spread plain = new Spread(SIGMA, List.of());
    assertThat(mixed.oddsBeyond(0.4)).isCloseTo(plain.oddsBeyond(0.4), within(1e-9));
    assertThat(mixed.mean()).isCloseTo(plain.mean(), within(1e-9));
    assertThat(mixed.within(0.95)).isCloseTo(plain.within(0.95), within(1e-6));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.1, 0.5, 0.9, 0.95, 0.999})
  void quantilesUndoOdds(double share) {
    Spread spread = new Spread(0.1, List.of(0.05, 0.2, 0.2, 0.3));
    assertThat(spread.oddsBeyond(spread.within(share))).isCloseTo(1 - share, within(1e-7));
  }

  @Test
  void variancesAddUp() {
    assertThat(new Spread(0.3, List.of(0.6, 0.6)).deviation())
        .isCloseTo(Math.sqrt(0.09 + 2 * 0.12), within(1e-12));
    assertThat(Spread.reachOf(1)).isCloseTo(1.7320508, within(1e-7));
  }

  @Test
  void noErrorNeverMisses() {
    Spread none = new Spread(0, List.of());
    assertThat(none.oddsBeyond(0)).isZero();
    assertThat(none.mean()).isZero();
    assertThat(none.within(0.95)).isZero();
  }

  @Test
  void moreOfAnyErrorMeansMoreOdds() {
    double odds = new Spread(0.1, List.of(0.2)).oddsBeyond(0.4);
    assertThat(new Spread(0.12, List.of(0.2)).oddsBeyond(0.4)).isGreaterThan(odds);
    assertThat(new Spread(0.1, List.of(0.25)).oddsBeyond(0.4)).isGreaterThan(odds);
    assertThat(new Spread(0.1, List.of(0.2, 0.05)).oddsBeyond(0.4)).isGreaterThan(odds);
  }

  @Test
  void refusesWhatIsNoError() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Spread(-1, List.of()));
    assertThatIllegalArgumentException().isThrownBy(() -> new Spread(Double.NaN, List.of()));
    assertThatIllegalArgumentException().isThrownBy(() -> new Spread(1, List.of(0.0)));
  }
}
