package fourpin.strength.plate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import fourpin.strength.plate.Plate.Edges;
import fourpin.strength.plate.Plate.Hold;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Against series of Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells (2nd ed. 1959),
 * at the mesh that the program uses; their tables stand in {@code fourpin.validation}.
 */
class PlateSeriesTest {

  private static final double SHORT = 500;
  private static final double PRESSURE = 0.01;
  private static final Rigidity STIFF = Rigidity.isotropic(70_000, 0.3, 10);

  private static BentPlate evenly(Plate plate) {
    return new PlateSolver(plate).under(List.of(plate.evenly(PRESSURE))).orElseThrow();
  }

  private static double middle(BentPlate bent, Plate plate) {
    return bent.deflection(plate.length() / 2, plate.depth() / 2);
  }

  private static double sag(double factor) {
    return factor * PRESSURE * Math.pow(SHORT, 4) / STIFF.alongX();
  }

  /** Two ends hinged, as a shelf in dadoes: by Lévy's series (art. 48), summed here. */
  @ParameterizedTest
  @ValueSource(doubles = {0.1, 0.3, 0.5, 1, 2})
  void endsHingedAgreeWithLevy(double depth) {
    Plate plate = Plate.even(SHORT, depth * SHORT, STIFF, Edges.ends(Hold.HINGED), List.of());
    BentPlate bent = evenly(plate);
    assertThat(middle(bent, plate)).isCloseTo(sag(Series.levy(depth, 0)), withPercentage(0.2));
    assertThat(bent.deflection(SHORT / 2, 0))
        .isCloseTo(sag(Series.levy(depth, 1)), withPercentage(0.2));
  }

  @ParameterizedTest
  @CsvSource({
    "1.0, 12000, 900, 0.4, 800",
    "2.5, 12000, 900, 0.4, 800",
    "2.5, 900, 12000, 0.03, 800",
    "1.6, 8270, 3500, 0.1, 517",
    "3.0, 70000, 70000, 0.22, 28688"
  })
  void navierOfAPlateOfTwoStiffnesses(
      double ratio, double alongX, double alongY, double poisson, double shear) {
    Rigidity d = Rigidity.of(alongX, alongY, poisson, shear, 18);
    Plate plate = Plate.even(ratio * SHORT, SHORT, d, Edges.all(Hold.HINGED), List.of());
    double series = PRESSURE * Series.sag(d, plate.length(), SHORT);
    assertThat(middle(evenly(plate), plate)).isCloseTo(series, withPercentage(0.2));
  }
}
