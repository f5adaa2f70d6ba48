package fourpin.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One amount reads the same, be it stated or worked out. */
class MoneyTest {

  @ParameterizedTest
  @CsvSource({"5950, 5950.00", "5950.5, 5950.50", "0, 0.00", "1E+3, 1000.00", "72.00, 72.00"})
  void statedAndWorkedOutReadAlike(BigDecimal amount, String text) {
    assertThat(Money.text(amount)).isEqualTo(text);
    assertThat(Quantity.of(amount.doubleValue(), QuantityUnit.MONEY).text(Unit.INCH))
        .isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource({"0.125, 0.125", "0.1250, 0.125"})
  void whatIsStatedToLessIsNotRounded(BigDecimal amount, String text) {
    assertThat(Money.text(amount)).isEqualTo(text);
  }
}
