package fourpin.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fourpin.measure.Length;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Layouts as text and back. */
class WrittenLayoutTest {

  static LongStream seeds() {
    return LongStream.range(0, 20);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void aLayoutComesBackAsItWas(long seed) {
    SheetProblem problem = Examples.bookcases(seed);
    Layout layout = new StripCutter().cut(problem);
    if (layout.unplaced().isEmpty()) {
      String text = WrittenLayout.of(problem, layout);
      assertThat(WrittenLayout.read(problem, text)).contains(layout);
    } else {
      assertThatThrownBy(() -> WrittenLayout.of(problem, layout))
          .isInstanceOf(IllegalArgumentException.class);
    }
  }

  /** Thousands of strips, one beyond the other. */
  @Test
  void aTreeMayBeVeryDeep() {
    SheetProblem problem =
        new SheetProblem(
            List.of(Examples.part("a", Length.mm(96), Length.mm(1), 5_000)),
            List.of(
                new StockSheet(
                    "s",
                    Length.mm(100),
                    Length.mm(20_000),
                    SheetGrain.ALONG_LENGTH,
                    Supply.unlimited(),
                    1,
                    Origin.TO_BUY)),
            Examples.SAW);
    String text = WrittenLayout.of(problem, new StripCutter().cut(problem));
    Layout read = WrittenLayout.read(problem, text).orElseThrow();
    assertThat(VirtualSaw.check(problem, read)).isEmpty();
    assertThat(WrittenLayout.of(problem, read)).isEqualTo(text);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "1",
        "x y\n",
        "1 1\n0 1 plank\n",
        "1 1\n9 1 offcut\n",
        "1 1\n0 0 offcut\n",
        "1 1\n0 1 offcut offcut\n",
        "1 1\n0 1 cut,RIP,5,5 offcut\n",
        "1 1\n0 1 part,900,STRAIGHT\n",
        "1 1\n0 1 trim,NORTH,5 offcut\n"
      })
  void whatIsNoLayoutOfTheProblemIsNone(String text) {
    assertThat(WrittenLayout.read(Examples.bookcases(1), text)).isEmpty();
  }

  /** Names of stock hold printed sizes, which change with the unit that a job is printed in. */
  @Test
  void problemsAreTheSameWhateverTheirStockIsCalledAndInWhateverUnit() {
    SheetProblem inch = problem("1: 96 x 48", Length.inches(1, 8), 6000);
    assertThat(
            WrittenLayout.digest(
                problem("2438.4 mm", new Length(3_175_000_000L, Length.ZERO.unit()), 6000)))
        .isEqualTo(WrittenLayout.digest(inch));
    assertThat(WrittenLayout.digest(problem("1: 96 x 48", Length.mm(3), 6000)))
        .isNotEqualTo(WrittenLayout.digest(inch));
    assertThat(WrittenLayout.digest(problem("1: 96 x 48", Length.inches(1, 8), 6001)))
        .isNotEqualTo(WrittenLayout.digest(inch));
  }

  private static SheetProblem problem(String name, Length kerf, long price) {
    return new SheetProblem(
        List.of(Examples.part("a", Length.inches(20), Length.inches(10), 3)),
        List.of(Examples.sheet(name, 96, 48, Supply.unlimited(), price)),
        new Saw(kerf, Trim.NONE));
  }
}
