package fourpin.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

@ExtendWith(CommaDecimals.class)
class QuantityTest {

  /** Half of the last of the seven digits that NIST prints, at worst (1.000000). */
  private static final double PRINTED_DIGITS = 5e-7;

  @ParameterizedTest
  @EnumSource
  void factorsAreThePublishedOnes(QuantityUnit unit) {
    double printed = printed(unit);
    assertThat(unit.factor(Unit.MILLIMETRE)).isEqualTo(metric(unit));
    assertThat(1 / unit.factor(Unit.INCH)).isCloseTo(printed, within(printed * PRINTED_DIGITS));
  }

  /**
   * How many of the computed unit make one of the shown unit, as printed in NIST Special
   * Publication 811 (2008), Appendix B.8 "Factors for Units Listed Alphabetically", to its printed
   * digits and scaled by powers of ten to the unit computed in.
   */
  private static double printed(QuantityUnit unit) {
    return switch (unit) {
      case LENGTH, DIAMETER -> 25.4; // inch, 2.54 E-02 m, exact
      case AREA -> 9.290304e-2; // square foot, exact
      case FORCE -> 4.448222; // pound-force
      case VOLUME -> 2.831685e-2; // cubic foot
      case LUMBER -> 2.359737e-3; // board foot
      case MASS -> 4.535924e-1; // pound (avoirdupois)
      case LINE_LOAD, LARGEST_LOAD -> 1.459390e1 / 1e3; // pound-force per foot, N/m
      case AREA_LOAD -> 4.788026e1 / 1e3; // pound-force per square foot, Pa
      case STRESS -> 6.894757e3 / 1e6; // pound-force per square inch, Pa
      case SPRING -> 1.751268e2 / 1e3; // pound-force per inch, N/m
      case SECOND_MOMENT -> 4.162314e-7 * 1e12; // inch to the fourth power, m4
      case MOMENT -> 1.129848e-1 * 1e3; // pound-force inch, N m
      case BENDING_STIFFNESS -> 4.448222 * 2.54 * 2.54 * 1e2; // lbf times square inch, N m2
      case DENSITY -> 1.601846e1; // pound per cubic foot
      case RATIO, PER_CENT, COUNT, TIME, MONEY -> 1;
    };
  }

  /** Standard gravity, 9.80665 m/s² exactly, NIST Special Publication 811 (2008), Appendix B.8. */
  private static double metric(QuantityUnit unit) {
    return switch (unit) {
      case LINE_LOAD, LARGEST_LOAD -> 1e3 / 9.80665;
      default -> 1;
    };
  }

  /** What is over a limit does not read as the limit; no more digits than that takes. */
  @ParameterizedTest
  @CsvSource({
    "1.4904, 1.4896, 1.4904 mm, 1.4896 mm",
    "1.494, 1.488, 1.494 mm, 1.488 mm",
    "2.32, 1.44, 2.32 mm, 1.44 mm",
    "1.5, 1.5, 1.5 mm, 1.5 mm",
    "1.00000000001, 1, 1 mm, 1 mm",
    "1204.2, 1204.4, 1204.2 mm, 1204.4 mm"
  })
  void aLimitIsToldFromWhatIsOverIt(double one, double other, String first, String second) {
    Quantity value = Quantity.of(one, QuantityUnit.LENGTH);
    Quantity limit = Quantity.of(other, QuantityUnit.LENGTH);
    assertThat(value.textBeside(limit, Unit.MILLIMETRE)).isEqualTo(first);
    assertThat(limit.textBeside(value, Unit.MILLIMETRE)).isEqualTo(second);
  }

  @ParameterizedTest
  @EnumSource(names = {"RATIO", "PER_CENT", "COUNT", "TIME", "MONEY"})
  void someUnitsAreTheSameForBothReaders(QuantityUnit unit) {
    assertThat(unit.symbol(Unit.INCH)).isEqualTo(unit.symbol(Unit.MILLIMETRE));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          0.7274    | LENGTH     | 0.727 mm     | 0.0286 in
          1         | FORCE      | 1 N          | 0.225 lbf
          12500     | STRESS     | 12500 MPa    | 1813000 psi
          9.999     | LENGTH     | 10 mm        | 0.394 in
          0.9996    | MASS       | 1 kg         | 2.2 lb
          999.6     | MASS       | 1000 kg      | 2204 lb
          -0.0123456 | LENGTH    | -0.0123 mm   | -0.000486 in
          0         | FORCE      | 0 N          | 0 lbf
          0.7182    | AREA_LOAD  | 0.718 kPa    | 15 lbf/sq ft
          0.29188   | LINE_LOAD  | 29.8 kg/m    | 20 lb/ft
          0.29188   | LARGEST_LOAD | 29.7 kg/m  | 20 lb/ft
          672       | DENSITY    | 672 kg/m³    | 42 lb/cu ft
          1.5       | RATIO      | 1.5          | 1.5
          86        | PER_CENT   | 86 %         | 86 %
          12345     | COUNT      | 12345        | 12345
          1234.5    | MONEY      | 1234.50      | 1234.50
          1234.565  | MONEY      | 1234.57      | 1234.57
          0.004     | MONEY      | 0.00         | 0.00
          90        | TIME       | 90 min       | 90 min
          """)
  void printsForEitherReader(double value, QuantityUnit unit, String metric, String customary) {
    assertThat(Quantity.of(value, unit).text(Unit.MILLIMETRE)).isEqualTo(metric);
    assertThat(Quantity.of(value, unit).text(Unit.INCH)).isEqualTo(customary);
  }

  @Test
  void takesLengthsAndCounts() {
    assertThat(Quantity.of(Length.inches(1)).value()).isEqualTo(25.4);
    assertThat(Quantity.count(7).text(Unit.INCH)).isEqualTo("7");
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void isFinite(double value) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Quantity.of(value, QuantityUnit.MASS))
        .withMessage("a quantity is finite, not " + value + " MASS");
  }
}
