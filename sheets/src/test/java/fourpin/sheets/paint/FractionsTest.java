package fourpin.sheets.paint;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FractionsTest {

  @ParameterizedTest
  @CsvSource({
    "31 1/2 in, 31\u00a0½ in",
    "31-1/2, 31\u00a0½",
    "3/4 x 11 7/8, ¾ x 11\u00a0⅞",
    "≈ 15/64, ≈ ¹⁵⁄₆₄",
    "5⁄8 in, ⅝ in",
    "5/256, ⁵⁄₂₅₆",
    "span/360, span/360",
    "A1/2, A1/2",
    "1/2/3, 1/2/3",
    "and/or, and/or",
    "(1/4), (¼)",
    "no fraction, no fraction",
  })
  void fractionsAreSetAndNothingElse(String plain, String set) {
    assertThat(Fractions.set(plain)).isEqualTo(set);
    assertThat(Fractions.set(set)).isEqualTo(set);
  }
}
