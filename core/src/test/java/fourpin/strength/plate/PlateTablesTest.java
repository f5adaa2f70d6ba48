package fourpin.strength.plate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import fourpin.strength.plate.Plate.Edges;
import fourpin.strength.plate.Plate.Hold;
import fourpin.strength.plate.Plate.Support;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Against the tables of Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells (2nd ed.
 * 1959), Poisson ratio 0.3; table numbers and values from memory. At the mesh that the program
 * uses.
 */
class PlateTablesTest {

  private static final double SHORT = 500;
  private static final double PRESSURE = 0.01;
  private static final double FORCE = 1000;
  private static final Rigidity STIFF = Rigidity.isotropic(70_000, 0.3, 10);

  private static Plate plate(double ratio, Edges edges) {
    return Plate.even(ratio * SHORT, SHORT, STIFF, edges, List.of());
  }

  private static BentPlate evenly(Plate plate) {
    return new PlateSolver(plate).under(List.of(plate.evenly(PRESSURE))).orElseThrow();
  }

  private static BentPlate poked(Plate plate) {
    PlateLoad poke = new PlateLoad.Point(FORCE, plate.length() / 2, plate.depth() / 2);
    return new PlateSolver(plate).under(List.of(poke)).orElseThrow();
  }

  private static double middle(BentPlate bent, Plate plate) {
    return bent.deflection(plate.length() / 2, plate.depth() / 2);
  }

  private static double sag(double factor) {
    return factor * PRESSURE * Math.pow(SHORT, 4) / STIFF.alongX();
  }

  /**
   * Table 8: all edges hinged, even load; deflection and both moments in the middle. The table
   * itself is up to 0.5 % off Navier's series.
   */
  @ParameterizedTest
  @CsvSource({
    "1.0, 0.00406, 0.0479, 0.0479",
    "1.2, 0.00564, 0.0627, 0.0501",
    "1.4, 0.00705, 0.0755, 0.0502",
    "1.6, 0.00830, 0.0862, 0.0492",
    "1.8, 0.00931, 0.0948, 0.0479",
    "2.0, 0.01013, 0.1017, 0.0464",
    "3.0, 0.01223, 0.1189, 0.0406",
    "5.0, 0.01297, 0.1246, 0.0375"
  })
  void hingedEdgesUnderAnEvenLoad(double ratio, double sag, double across, double along) {
    Plate plate = plate(ratio, Edges.all(Hold.HINGED));
    BentPlate bent = evenly(plate);
    BentPlate.Moments moments = bent.moments(plate.length() / 2, SHORT / 2);
    assertThat(middle(bent, plate)).isCloseTo(sag(sag), withPercentage(1));
    double load = PRESSURE * SHORT * SHORT;
    assertThat(moments.y() / load).isCloseTo(across, withPercentage(1));
    assertThat(moments.x() / load).isCloseTo(along, withPercentage(1));
  }

  /** Table 23: all edges hinged, a force in the middle. */
  @ParameterizedTest
  @CsvSource({
    "1.0, 0.01160",
    "1.2, 0.01353",
    "1.4, 0.01484",
    "1.6, 0.01570",
    "1.8, 0.01620",
    "2.0, 0.01651"
  })
  void hingedEdgesUnderAForce(double ratio, double sag) {
    Plate plate = plate(ratio, Edges.all(Hold.HINGED));
    assertThat(middle(poked(plate), plate))
        .isCloseTo(sag * FORCE * SHORT * SHORT / STIFF.alongX(), withPercentage(1));
  }

  /** Table 35: all edges clamped, even load. */
  @ParameterizedTest
  @CsvSource({"1.0, 0.00126", "1.2, 0.00172", "1.4, 0.00207", "1.6, 0.00230", "2.0, 0.00254"})
  void clampedEdgesUnderAnEvenLoad(double ratio, double sag) {
    Plate plate = plate(ratio, Edges.all(Hold.CLAMPED));
    assertThat(middle(evenly(plate), plate)).isCloseTo(sag(sag), withPercentage(1));
  }

  /** Table 37: all edges clamped, a force in the middle. */
  @ParameterizedTest
  @CsvSource({"1.0, 0.00560", "1.2, 0.00647", "1.4, 0.00691", "1.6, 0.00712", "2.0, 0.00722"})
  void clampedEdgesUnderAForce(double ratio, double sag) {
    Plate plate = plate(ratio, Edges.all(Hold.CLAMPED));
    assertThat(middle(poked(plate), plate))
        .isCloseTo(sag * FORCE * SHORT * SHORT / STIFF.alongX(), withPercentage(1.5));
  }

  /**
   * Table 47: two ends hinged, front and back free, even load, as a shelf in dadoes; deflection in
   * the middle and of the free edge, for the depth over the span.
   */
  @ParameterizedTest
  @CsvSource({"1.0, 0.01309, 0.01509", "2.0, 0.01289, 0.01521"})
  void endsHingedUnderAnEvenLoad(double depth, double middle, double edge) {
    Plate plate = Plate.even(SHORT, depth * SHORT, STIFF, Edges.ends(Hold.HINGED), List.of());
    BentPlate bent = evenly(plate);
    assertThat(middle(bent, plate)).isCloseTo(sag(middle), withPercentage(1));
    assertThat(bent.deflection(SHORT / 2, 0)).isCloseTo(sag(edge), withPercentage(1));
    assertThat(bent.deflection(SHORT / 2, depth * SHORT)).isCloseTo(sag(edge), withPercentage(1));
  }

  /** The same by Lévy's series (art. 48), summed here. */
  @ParameterizedTest
  @ValueSource(doubles = {0.1, 0.3, 0.5, 1, 2})
  void endsHingedAgreeWithLevy(double depth) {
    Plate plate = Plate.even(SHORT, depth * SHORT, STIFF, Edges.ends(Hold.HINGED), List.of());
    BentPlate bent = evenly(plate);
    assertThat(middle(bent, plate)).isCloseTo(sag(levy(depth, 0)), withPercentage(0.2));
    assertThat(bent.deflection(SHORT / 2, 0)).isCloseTo(sag(levy(depth, 1)), withPercentage(0.2));
  }

  /** The factor of {@code q a⁴ / D} in the middle of the span. @param out 0 middle, 1 free edge */
  static double levy(double depth, double out) {
    double poisson = STIFF.coupling() / STIFF.alongX();
    double sum = 0;
    for (int m = 1; m < 60; m += 2) {
      double u = m * Math.PI * depth / 2;
      double tanh = Math.tanh(u);
      double ratio = ((1 + poisson) * tanh - (1 - poisson) * u) / ((1 - poisson) * tanh);
      double b = poisson / ((1 - poisson) * ratio + 2 + (1 - poisson) * u * tanh);
      // The shape over the depth, with its hyperbolic functions over cosh u so that none overflows.
      double shape =
          1
              + b * ratio * Math.cosh(out * u) / Math.cosh(u)
              + b * out * u * Math.sinh(out * u) / Math.cosh(u);
      double sign = m / 2 % 2 == 0 ? 1 : -1;
      sum += sign * 4 / Math.pow(Math.PI * m, 5) * shape;
    }
    return sum;
  }

  /** Chapter 7, plates supported at the corners: square, even load, 0.0255 in the middle. */
  @Test
  void cornersUnderAnEvenLoad() {
    List<Support> corners =
        List.of(
            new Support(0, 0),
            new Support(SHORT, 0),
            new Support(0, SHORT),
            new Support(SHORT, SHORT));
    Plate plate = Plate.even(SHORT, SHORT, STIFF, Edges.FREE, corners);
    BentPlate bent = evenly(plate);
    assertThat(middle(bent, plate)).isCloseTo(sag(0.0255), withPercentage(0.5));
    assertThat(bent.reactions())
        .hasSize(4)
        .allSatisfy(push -> assertThat(push).isCloseTo(625, within(1e-6)));
  }

  /** Navier's series for a plate of two stiffnesses, summed here (the same work, art. 85). */
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
    double series = 0;
    for (int m = 1; m < 200; m += 2) {
      for (int n = 1; n < 200; n += 2) {
        double a = m / plate.length();
        double b = n / SHORT;
        double stiff =
            d.alongX() * a * a * a * a
                + 2 * (d.coupling() + 2 * d.twist()) * a * a * b * b
                + d.alongY() * b * b * b * b;
        double sign = (m / 2 + n / 2) % 2 == 0 ? 1 : -1;
        series += sign / (m * n * stiff);
      }
    }
    series *= 16 * PRESSURE / Math.pow(Math.PI, 6);
    assertThat(middle(evenly(plate), plate)).isCloseTo(series, withPercentage(0.2));
  }
}
