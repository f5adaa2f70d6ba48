package fourpin.boring;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.job.Settings;
import fourpin.measure.Length;
import fourpin.measure.Unit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OppositeHolesTest {

  /**
   * By hand, both points together: (17.6 - 1.5 - 4) / 2 = 6.05; (18 - 1.5 - 6) / 2 = 5.25; without
   * points 2.4 between the floors decides, (17.6 - 2.4) / 2 = 7.6, as it does with points of less
   * than 0.9 together.
   */
  @ParameterizedTest
  @CsvSource({"17.6, 4, 6.05", "18, 6, 5.25", "17.6, 0, 7.6", "17.6, 0.9, 7.6", "17.6, 1, 7.55"})
  void should_leave_wood_behind_both_points(double thickness, double points, double deepest) {
    Settings settings = Settings.standard(Unit.MILLIMETRE);
    assertThat(
            OppositeHoles.deepest(Length.nearestMm(thickness), Length.nearestMm(points), settings))
        .isEqualTo(Length.nearestMm(deepest));
  }
}
