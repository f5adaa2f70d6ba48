package fourpin.shop.edit;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.shop.edit.Differences.Difference;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class DifferencesTest {

  private static Value value(String text) {
    return JobText.of(text).value();
  }

  @Test
  void filesThatMeanTheSameDoNotDiffer() {
    assertThat(
            Differences.of(
                List.of(
                    value("a: {b: 1, c: [2, 3]}"), value("# why\na:\n  c:\n  - 2\n  - 3\n  b: 1"))))
        .isEmpty();
  }

  @Test
  void eachValueIsToldByTheWayToIt() {
    List<Difference> found =
        Differences.of(
            List.of(
                value("a: 1\nb: {c: [2, 3]}"), value("a: 1\nb: {c: [2, 4]}\nd: 5"), value("a: 1")));
    assertThat(found)
        .containsExactly(
            new Difference("b.c.1", List.of(Optional.of("2"), Optional.of("2"), Optional.empty())),
            new Difference("b.c.2", List.of(Optional.of("3"), Optional.of("4"), Optional.empty())),
            new Difference("d", List.of(Optional.empty(), Optional.of("5"), Optional.empty())));
  }
}
