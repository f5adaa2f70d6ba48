package fourpin.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Reading;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuantityReaderTest {

  /**
   * Factors of NIST Special Publication 811 (2008), Appendix B.8: pound per foot 1.488164 kg/m,
   * pound per square foot 4.882428 kg/m², pound per cubic foot 16.01846 kg/m³, psi 6.894757 kPa,
   * kgf 9.80665 N; from memory of the table, verify.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          25 lb/ft      | LINE_LOAD | 0.3648476
          25 LB/Ft      | LINE_LOAD | 0.3648476
          37 kg/m       | LINE_LOAD | 0.362846
          100 N/m       | LINE_LOAD | 0.1
          40 lb/sq ft   | AREA_LOAD | 1.915210
          50 kg/m2      | AREA_LOAD | 0.4903325
          50 kg/m²      | AREA_LOAD | 0.4903325
          40 psf        | AREA_LOAD | 1.915210
          40 lbf/sq ft  | AREA_LOAD | 1.915210
          1500 N/m2     | AREA_LOAD | 1.5
          0.8 kPa       | AREA_LOAD | 0.8
          2.4 kN/m²     | AREA_LOAD | 2.4
          12.3 GPa      | STRESS    | 12300
          1000000 psi   | STRESS    | 6894.757
          6900 N/mm2    | STRESS    | 6900
          640 kg/m³     | DENSITY   | 640
          40 lb/cu ft   | DENSITY   | 640.7385
          """)
  void readsNumbersWithTheirUnit(String text, QuantityUnit unit, double value) {
    Quantity read = reader(unit).read(text).orThrow();

    assertThat(read.unit()).isEqualTo(unit);
    assertThat(read.value()).isCloseTo(value, within(value * 1e-6));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      textBlock =
          """
          LINE_LOAD | 25        | this is not a load
          LINE_LOAD | -3 kg/m   | this is not a load
          LINE_LOAD | 2,5 kg/m  | this is not a load
          LINE_LOAD | 25 stone  | 'stone' is not a unit of load
          DENSITY   | 640 kg/m2 | 'kg/m2' is not a unit of density
          STRESS    | 12 bar    | 'bar' is not a unit of modulus of elasticity
          """)
  void refusesTheRest(QuantityUnit unit, String text, String rule) {
    assertThat(reader(unit).read(text))
        .isInstanceOfSatisfying(Reading.Bad.class, bad -> assertThat(bad.rule()).isEqualTo(rule));
  }

  private static QuantityReader reader(QuantityUnit unit) {
    return switch (unit) {
      case STRESS -> QuantityReader.STIFFNESS;
      case DENSITY -> QuantityReader.DENSITY;
      default -> QuantityReader.LOAD;
    };
  }
}
