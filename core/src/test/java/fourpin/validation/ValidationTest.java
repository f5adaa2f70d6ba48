package fourpin.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fourpin.GeneratedDocument;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Holds what is worked out to what is published; the same rows make the page. */
class ValidationTest {

  private static final int LEAST = 60;

  static List<Check> checks() {
    return Validation.all();
  }

  @ParameterizedTest
  @MethodSource("checks")
  void oursIsWhatIsPublished(Check check) {
    assertThat(check.ours().getAsDouble())
        .as(check.what() + ", " + check.source().text())
        .isCloseTo(check.expected(), within(check.tolerance()));
  }

  @Test
  void everyCheckNamesItsSource() {
    assertThat(checks())
        .hasSizeGreaterThan(LEAST)
        .allSatisfy(
            check -> {
              assertThat(check.source().title()).isNotBlank();
              assertThat(check.source().place()).as(check.what()).isNotBlank();
            });
  }

  @Test
  void thePageIsCurrent() {
    GeneratedDocument.hold("validation.md", Validation.page());
  }
}
