package fourpin.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.measure.Length;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Sources of the published values: the README of the test resources. */
class PatternCutterTest {
  private static final Length UNIT = Length.mm(10);

  /** A fraction of a second. */
  private static final long STEPS = 1_000_000;

  private static Layout sound(SheetProblem problem, long steps) {
    Layout layout = new PatternCutter(steps).cut(problem);
    assertThat(VirtualSaw.check(problem, layout)).isEmpty();
    return layout;
  }

  /**
   * The optimum of gcut1d_one, gcut7d_one and lit_A1 is proven: the published values equal the
   * bound of the linear programme over all guillotine patterns.
   */
  @ParameterizedTest
  @CsvSource({"gcut1d_one, 294", "gcut7d_one, 591", "lit_A1, 23"})
  void findsAndProvesTheOptimumWithAndWithoutKerf(String instance, long optimum) {
    for (Length kerf : List.of(Length.ZERO, Length.inches(1, 8))) {
      Layout layout = sound(Published.sheets(instance, Grain.FIXED, UNIT, kerf), 20 * STEPS);
      assertThat(layout.unplaced()).isEmpty();
      assertThat(layout.sheets()).isEqualTo(optimum);
      assertThat(layout.bound().sheets()).isEqualTo(optimum);
    }
  }

  static List<Published.Value> values() {
    return Published.values();
  }

  @ParameterizedTest
  @MethodSource("values")
  void theBoundIsHigherAndNeverAboveWhatIsKnown(Published.Value value) {
    SheetProblem problem = Published.sheets(value.instance(), value.grain(), UNIT, Length.ZERO);
    Layout layout = sound(problem, STEPS);
    LowerBound simple = new StripCutter().cut(problem).bound();
    long ours = value.byPrice() ? layout.bound().price() : layout.bound().sheets();
    assertThat(ours).isGreaterThanOrEqualTo(value.byPrice() ? simple.price() : simple.sheets());
    assertThat(ours).isLessThanOrEqualTo(value.of(layout));
    if (value.best() > 0) {
      assertThat(ours).isLessThanOrEqualTo(value.best());
    }
    assertThat(value.of(layout)).isGreaterThanOrEqualTo(value.bound());
  }

  static LongStream seeds() {
    return LongStream.range(0, 25);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void everyLayoutIsSoundNoWorseThanTheFirstAndTheSameAgain(long seed) {
    SheetProblem problem = Examples.bookcases(seed);
    Layout layout = sound(problem, STEPS / 10);
    Layout first = new PatternCutter(0).cut(problem);
    assertThat(layout.price()).isBetween(layout.bound().price(), first.price());
    assertThat(layout.bound().price()).isGreaterThanOrEqualTo(first.bound().price());
    assertThat(layout.sheets()).isGreaterThanOrEqualTo(layout.bound().sheets());
    assertThat(new PatternCutter(STEPS / 10).cut(problem)).isEqualTo(layout);
  }

  @Test
  void aStopIsObeyed() {
    SheetProblem problem = Published.sheets("gcut10d_one", Grain.FIXED, UNIT, Length.ZERO);
    Layout stopped = new PatternCutter(Long.MAX_VALUE, Watch.until(() -> true)).cut(problem);
    assertThat(VirtualSaw.check(problem, stopped)).isEmpty();
    assertThat(stopped.unplaced()).isEmpty();
  }
}
