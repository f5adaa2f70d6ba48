package fourpin.sheets.paint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SpreadTest {

  static LongStream seeds() {
    return LongStream.range(0, 100);
  }

  @Test
  void whatHasRoomStays() {
    assertThat(Spread.apart(List.of(1.0, 4.0, 9.0), 3)).containsExactly(1.0, 4.0, 9.0);
  }

  /** By hand: three at 0 a distance 2 apart move least to -2, 0, 2. */
  @Test
  void whatMeetsMovesApartEvenly() {
    assertThat(Spread.apart(List.of(0.0, 0.0, 0.0), 2)).containsExactly(-2.0, 0.0, 2.0);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void noOtherPlacesMoveLess(long seed) {
    Random random = new Random(seed);
    List<Double> wanted = random.doubles(2 + random.nextInt(8), 0, 20).sorted().boxed().toList();
    List<Double> places = Spread.apart(wanted, 2);
    assertThat(
            IntStream.range(1, places.size())
                .allMatch(i -> places.get(i) - places.get(i - 1) > 2 - 1e-9))
        .isTrue();
    for (int trial = 0; trial < 50; trial++) {
      List<Double> other =
          Spread.apart(places.stream().map(p -> p + random.nextGaussian()).sorted().toList(), 2);
      assertThat(moves(wanted, places)).isLessThanOrEqualTo(moves(wanted, other) + 1e-9);
    }
    assertThat(places.stream().mapToDouble(p -> p).sum())
        .isCloseTo(wanted.stream().mapToDouble(w -> w).sum(), within(1e-6));
  }

  private static double moves(List<Double> wanted, List<Double> places) {
    return IntStream.range(0, wanted.size())
        .mapToDouble(i -> Math.pow(places.get(i) - wanted.get(i), 2))
        .sum();
  }
}
