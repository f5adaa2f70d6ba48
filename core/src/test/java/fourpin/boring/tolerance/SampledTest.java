package fourpin.boring.tolerance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SampledTest {

  /** √(p (1 - p) / n) of the textbooks, but for the two cases of either kind that are added. */
  @ParameterizedTest
  @CsvSource({
    "500, 1000, 0.0158",
    "100, 1000, 0.0095",
    "50, 1000, 0.0069",
    "500, 10000, 0.00218",
    "9500, 10000, 0.00218"
  })
  void errorIsNearTheTextbooks(long found, long drawn, double error) {
    assertThat(new Sampled(found, drawn).error()).isCloseTo(error, within(error / 30));
  }

  /** Odds that no case was found of may still be one in a few hundred. */
  @ParameterizedTest
  @CsvSource({"0, 1000, 0.00141", "1000, 1000, 0.00141", "0, 1, 0.2191"})
  void nothingFoundIsNotSaidToBeExact(long found, long drawn, double error) {
    assertThat(new Sampled(found, drawn).error()).isCloseTo(error, within(1e-4));
  }

  /** Two errors on either side hold the true odds in about 95 of 100 samples. */
  @ParameterizedTest
  @CsvSource({"0.5", "0.05", "0.9"})
  void twoErrorsHoldTheTrueOdds(double odds) {
    SplittableRandom random = new SplittableRandom(95);
    int samples = 2_000;
    long held =
        IntStream.range(0, samples)
            .mapToObj(_ -> drawn(random, odds))
            .filter(s -> Math.abs(s.share() - odds) <= 2 * s.error())
            .count();
    assertThat((double) held / samples).isBetween(0.93, 0.98);
  }

  private static Sampled drawn(SplittableRandom random, double odds) {
    int drawn = 1_000;
    return new Sampled(random.doubles(drawn).filter(d -> d < odds).count(), drawn);
  }

  @Test
  void aGapThatIsDrawnTellsItsSampleAndOneWorkedOutHasNone() {
    double[] gaps = {0.1, 0.9, 0.2, 0.8};
    SimulatedGap drawn = new SimulatedGap(new SixPoints(List.of()), gaps);
    assertThat(drawn.sampledBeyond(0.5)).contains(new Sampled(2, 4));
    assertThat(drawn.oddsBeyond(0.5)).isEqualTo(0.5);
    assertThat(new Spread(1, List.of()).sampledBeyond(0.5)).isEmpty();
  }
}
