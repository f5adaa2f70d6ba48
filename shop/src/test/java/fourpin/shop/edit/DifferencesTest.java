package fourpin.shop.edit;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.shop.edit.Differences.Difference;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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

  /** Of a whole group each entry; what is nothing else but other than it was is there. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          a: 1                            | a: 2                   | ''
          a: 1                            | b: 1                   | a
          t: {x: {k: 1, l: 2}, y: {k: 1}} | a: 1                   | t.x t.y
          t: {x: {k: 1, l: 2}, y: {k: 1}} | t: {x: {k: 3}}         | t.x.l t.y
          t: {x: {k: 1, l: 2}, y: {k: 1}} | t: {z: {k: 1, l: 2}}   | t.x t.y
          t: [1, 2]                       | t: [1]                 | ''
          t: {x: [1, 2]}                  | t: nothing             | t.x
          """)
  void whatAFileLacksIsTold(String of, String in, String missing) {
    assertThat(String.join(" ", Differences.missing(value(of), value(in)))).isEqualTo(missing);
  }
}
