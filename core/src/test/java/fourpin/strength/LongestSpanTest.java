package fourpin.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fourpin.strength.Use.Limit;
import fourpin.strength.Verdict.Most;
import java.util.Optional;
import java.util.function.DoubleFunction;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Spans of which what is used is known: it falls to one span and grows with the cube beyond. */
class LongestSpanTest {

  /** Within the limits from the shortest to the longest. */
  private static DoubleFunction<Use> between(double shortest, double longest) {
    return span ->
        new Use(LoadCase.EVEN, Limit.SAG, Math.max(shortest / span, Math.pow(span / longest, 3)));
  }

  private static Optional<Most> longest(double shortest, double longest, double guess) {
    DoubleFunction<Use> of = between(shortest, longest);
    return new LongestSpan(of, of).find(guess, 3 * guess);
  }

  @ParameterizedTest
  @CsvSource({
    "50, 900, 600",
    "50, 260, 600",
    "190, 260, 285",
    "190, 260, 600",
    "190, 260, 900",
    "240, 260, 285",
    "240, 260, 1200",
    "190, 260, 150",
    "250, 255, 400"
  })
  void isFoundHoweverNarrowItsRoom(double shortest, double longest, double guess) {
    Most most = longest(shortest, longest, guess).orElseThrow();
    assertThat(most.governs().holds()).isTrue();
    assertThat(most.number()).isCloseTo(longest, within(0.01 * longest));
  }

  @ParameterizedTest
  @CsvSource({"300, 260, 285", "300, 290, 600", "900, 260, 600"})
  void isNoneWhereNoneHolds(double shortest, double longest, double guess) {
    assertThat(longest(shortest, longest, guess)).isEmpty();
  }
}
