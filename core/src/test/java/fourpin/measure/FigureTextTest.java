package fourpin.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@ExtendWith(CommaDecimals.class)
class FigureTextTest {

  private static final FigureText INCHES = new FigureText(LengthStyle.FRACTIONS, "GBP");
  private static final FigureText METRIC = new FigureText(LengthStyle.MILLIMETRES, "GBP");

  /** 1 in is 25.4 mm exactly, so that 23/32 in is 18.25625 mm and 1/256 in 0.09921875 mm. */
  @ParameterizedTest
  @CsvSource({
    "246.85625, 9 23/32 in, 9 23/32 in (246.85625 mm)",
    "-18.25625, -23/32 in, -23/32 in (-18.25625 mm)",
    "0, 0 in, 0 in (0 mm)",
    "800, '≈ 31 1/2 in (31.496 in)', '≈ 31 1/2 in (31.496 in, 800 mm)'",
    "0.793, 0.0312 in, 0.0312 in (0.793 mm)",
    "18.034, 0.71 in, 0.71 in (18.034 mm)",
    "0.09921875, 0.00391 in, 0.00391 in (0.0992 mm)",
    "-0.00001, -0.000000394 in, -0.000000394 in (-0.00001 mm)",
  })
  void lengthsStandAsTheyArePrintedInInches(double mm, String value, String input) {
    Quantity quantity = Quantity.of(mm, QuantityUnit.LENGTH);
    assertThat(INCHES.value(quantity)).isEqualTo(value);
    assertThat(INCHES.input(quantity)).isEqualTo(input);
  }

  @ParameterizedTest
  @CsvSource({
    "246.9, 246.9 mm, 246.9 mm",
    "246.85625, ≈ 246.9 mm (246.86 mm), ≈ 246.9 mm (246.86 mm)",
    "0.09921875, 0.0992 mm, 0.0992 mm",
    "800, 800 mm, 800 mm",
    "1234.5, 1234.5 mm, 1234.5 mm",
    "0.793, 0.793 mm, 0.793 mm",
  })
  void lengthsStandAsTheyArePrintedInMillimetres(double mm, String value, String input) {
    Quantity quantity = Quantity.of(mm, QuantityUnit.LENGTH);
    assertThat(METRIC.value(quantity)).isEqualTo(value);
    assertThat(METRIC.input(quantity)).isEqualTo(input);
  }

  @Test
  void otherQuantitiesStandAsEverywhere() {
    assertThat(INCHES.value(Quantity.of(12.5, QuantityUnit.MONEY))).isEqualTo("GBP 12.50");
    assertThat(INCHES.input(Quantity.of(12.5, QuantityUnit.MONEY))).isEqualTo("GBP 12.50");
    assertThat(INCHES.input(Quantity.count(4000))).isEqualTo("4000");
    assertThat(INCHES.input(Quantity.of(4.4482216152605, QuantityUnit.FORCE)))
        .isEqualTo("1 lbf (4.45 N)");
    assertThat(METRIC.input(Quantity.of(20, QuantityUnit.FORCE))).isEqualTo("20 N");
  }

  /** Every sixteenth of a 64th up to 40 in comes back, which floating millimetres do not state. */
  @Test
  void aLengthComesBackFromItsQuantity() {
    for (int i = 0; i <= 40 * 256; i++) {
      Length length = Length.inches(i, 256);
      assertThat(Quantity.of(length).length()).isEqualTo(length);
    }
    Quantity force = Quantity.of(1, QuantityUnit.FORCE);
    assertThatIllegalStateException().isThrownBy(force::length);
  }
}
