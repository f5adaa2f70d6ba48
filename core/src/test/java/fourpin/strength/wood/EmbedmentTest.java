package fourpin.strength.wood;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Which rule of Eurocode 5 a pin or screw goes by; the numbers stand in docs/validation.md. */
class EmbedmentTest {

  /** Of what bolts would be given, worked anew: 0.11 (1 - 0.01 d) ρ and 50 d^-0.6 t^0.2. */
  @ParameterizedTest
  @ValueSource(doubles = {3, 4.25, 5, 6})
  void thinOnesGoByTheRulesOfNails(double diameter) {
    Embedment plywood = Embedment.ofPlywood(600, diameter);
    assertThat(plywood.mpa()).isLessThan(0.8 * 0.11 * (1 - 0.01 * diameter) * 600);
    assertThat(plywood.words()).startsWith("0.11 d^-0.3 ρ by EN 1995-1-1, 8.3.1.3");
    Embedment board = Embedment.ofBoard(diameter, 18);
    assertThat(board.mpa()).isLessThan(50 * Math.pow(diameter, -0.6) * Math.pow(18, 0.2));
    assertThat(board.words()).startsWith("65 d^-0.7 T^0.1 by EN 1995-1-1, 8.3.1.3");
  }

  @ParameterizedTest
  @ValueSource(doubles = {6.001, 6.35, 8})
  void dowelsGoByThoseOfBolts(double diameter) {
    assertThat(Embedment.ofPlywood(600, diameter).mpa())
        .isCloseTo(0.11 * (1 - 0.01 * diameter) * 600, withPercentage(1e-9));
    assertThat(Embedment.ofBoard(diameter, 18).words())
        .isEqualTo("50 d^-0.6 T^0.2 by EN 1995-1-1, 8.5.1.1(3)");
  }

  /** In wood that is bored both rules are one. */
  @Test
  void woodKnowsOneRule() {
    assertThat(Embedment.ofWood(350, 5).formula()).isEqualTo(Embedment.ofWood(350, 8).formula());
  }
}
