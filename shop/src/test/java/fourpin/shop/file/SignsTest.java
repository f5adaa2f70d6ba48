package fourpin.shop.file;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SignsTest {

  @ParameterizedTest
  @ValueSource(strings = {"Harrow Mill", "Bücherwand 3 × 2, “oak”", "ספרייה", "1/2 in — ½", ""})
  void wordsOfAnyWritingArePrinted(String text) {
    assertThat(Signs.arePrinted(text)).isTrue();
  }

  /** The explicit directional formatting characters of Unicode Standard Annex 9, section 2. */
  @ParameterizedTest
  @ValueSource(
      ints = {
        '\t', '\n', '\r', 0, 0x7f, 0x85, 0x202A, 0x202B, 0x202C, 0x202D, 0x202E, 0x2066, 0x2067,
        0x2068, 0x2069
      })
  void whatMovesOrTurnsTheLineIsNot(int sign) {
    assertThat(Signs.arePrinted("shelf " + Character.toString(sign) + " left")).isFalse();
  }
}
