package fourpin.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import fourpin.strength.Beam.Bent;
import fourpin.strength.Beam.Hold;
import fourpin.strength.Beam.Load;
import fourpin.strength.Beam.Support;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What holds of beams; printed answers of textbooks stand in {@code fourpin.validation}. */
class BeamTest {

  private static final double SPAN = 900;
  private static final double EI = 2e9;

  /** Bansal, Problem 12.4 again: the greatest sag stands at sqrt((L² - b²)/3) from the far end. */
  @Test
  void greatestSagUnderAnOffsetLoad() {
    double b = 300;
    Bent bent = Beam.simple(SPAN, EI, Beam.NO_SHEAR).under(List.of(new Load.Point(500, SPAN - b)));
    double x = Math.sqrt((SPAN * SPAN - b * b) / 3);
    double printed = 500 * b * Math.pow(SPAN * SPAN - b * b, 1.5) / (9 * Math.sqrt(3) * EI * SPAN);
    assertThat(bent.deflection(x)).isCloseTo(printed, within(printed * 1e-9));
    assertThat(bent.slope(x)).isCloseTo(0, within(1e-9));
  }

  /** Plain mechanics: w L² (5 L² - 24 c²)/(384 E I) between supports that stand c inboard. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 6, 40, 200})
  void supportsInboard(double overhang) {
    double length = SPAN + 2 * overhang;
    Bent bent =
        Beam.overhanging(SPAN, overhang, EI, Beam.NO_SHEAR)
            .under(List.of(new Load.Even(0.4, 0, length)));
    double expected = 0.4 * SPAN * SPAN * (5 * SPAN * SPAN - 24 * overhang * overhang) / (384 * EI);
    assertThat(bent.deflection(length / 2)).isCloseTo(expected, within(1e-9));
  }

  /**
   * A middle support carries 10/8 of one span's load and the ends 3/8 (three-moment equation, any
   * strength-of-materials table of continuous beams).
   */
  @Test
  void threeSupports() {
    List<Support> three =
        List.of(
            new Support(0, Hold.RESTS), new Support(450, Hold.RESTS), new Support(900, Hold.RESTS));
    Bent bent = new Beam(900, EI, Beam.NO_SHEAR, three).under(List.of(new Load.Even(1, 0, 900)));
    assertThat(bent.reactions())
        .containsExactly(new double[] {168.75, 562.5, 168.75}, within(1e-6));
    assertThat(bent.moment(450)).isCloseTo(-450 * 450 / 8.0, within(1e-6));
  }

  @Test
  void supportsMustHoldTheBeam() {
    Support one = new Support(450, Hold.RESTS);
    for (List<Support> loose : List.of(List.<Support>of(), List.of(one), List.of(one, one))) {
      assertThatIllegalArgumentException()
          .isThrownBy(() -> new Beam(900, EI, Beam.NO_SHEAR, loose))
          .withMessageStartingWith("these supports do not hold a beam");
    }
  }

  /** Statics and Maxwell's theorem, on beams drawn at random. */
  @ParameterizedTest
  @ValueSource(longs = {4, 55, 666})
  void keepsBalanceAndReciprocity(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < 200; i++) {
      double length = random.nextDouble(100, 3000);
      double left = random.nextDouble(0, 0.3) * length;
      double right = random.nextDouble(0.7, 1) * length;
      List<Support> supports =
          List.of(new Support(left, Hold.RESTS), new Support(right, Hold.RESTS));
      Beam beam = new Beam(length, random.nextDouble(1e7, 1e10), 1e5, supports);
      double a = random.nextDouble(0, length);
      double b = random.nextDouble(0, length);
      Bent atA = beam.under(List.of(new Load.Point(100, a)));
      Bent atB = beam.under(List.of(new Load.Point(100, b)));
      double[] forces = atA.reactions();
      assertThat(forces[0] + forces[1]).isCloseTo(100, within(1e-6));
      assertThat(forces[1] * (right - left)).isCloseTo(100 * (a - left), within(1e-6 * length));
      double there = atA.deflection(b);
      assertThat(atB.deflection(a)).isCloseTo(there, within(1e-9 + 1e-6 * Math.abs(there)));
    }
  }
}
