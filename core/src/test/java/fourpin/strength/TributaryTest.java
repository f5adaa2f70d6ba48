package fourpin.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fourpin.strength.Beam.Load;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What supports of a board carry together is what lies on it. */
class TributaryTest {

  @Test
  void allOfALoadIsCarried() {
    Random random = new Random(5);
    for (int i = 0; i < 200; i++) {
      List<Double> supports =
          random.doubles(random.nextInt(1, 6), 0, 1000).sorted().boxed().toList();
      double place = random.nextDouble(-100, 1100);
      double to = random.nextDouble(place, 1200);
      Load.Even even = new Load.Even(2, place, to);
      assertThat(supports.stream().mapToDouble(at -> Tributary.of(at, supports).of(9, place)).sum())
          .isCloseTo(9, within(1e-9));
      assertThat(supports.stream().mapToDouble(at -> Tributary.of(at, supports).of(even)).sum())
          .isCloseTo(2 * (to - place), within(1e-9));
    }
  }

  /** A board over two equal spaces: a quarter at each end, half in the middle. */
  @Test
  void theMiddleCarriesHalf() {
    List<Double> supports = List.of(0.0, 100.0, 200.0);
    assertThat(Tributary.of(100, supports).of(new Load.Even(1, 0, 200))).isEqualTo(100);
    assertThat(Tributary.of(0, supports).of(new Load.Even(1, 0, 200))).isEqualTo(50);
    assertThat(Tributary.of(100, supports).of(8, 75)).isEqualTo(6);
  }
}
