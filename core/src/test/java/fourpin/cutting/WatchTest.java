package fourpin.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.cutting.ThoroughCutter.Limit;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What one who looks on hears, and that the search ends when told to. */
class WatchTest {

  /** Ends a search after being asked so many times. */
  private static class Listener implements Watch {
    private final List<Layout> heard = new ArrayList<>();
    private final int patience;
    private int asked;

    Listener(int patience) {
      this.patience = patience;
    }

    @Override
    public void better(Layout layout) {
      heard.add(layout);
    }

    int asked() {
      return asked;
    }

    @Override
    public boolean enough() {
      return asked++ >= patience;
    }
  }

  static LongStream seeds() {
    return LongStream.range(0, 25);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void theFirstAnswerComesAtOnceAndEachNextOneIsSoundAndBetter(long seed) {
    SheetProblem problem = Examples.bookcases(seed);
    Listener listener = new Listener(50);
    Layout last = new ThoroughCutter(Examples.AIMS, Limit.WATCH, listener).cut(problem);
    assertThat(listener.heard.getFirst()).isEqualTo(new StripCutter().cut(problem));
    for (int i = 0; i < listener.heard.size(); i++) {
      Layout layout = listener.heard.get(i);
      assertThat(VirtualSaw.check(problem, layout)).isEmpty();
      assertThat(i == 0 || Ascent.isBetter(layout, listener.heard.get(i - 1))).isTrue();
    }
    assertThat(Ascent.isBetter(listener.heard.getLast(), last)).isFalse();
    assertThat(VirtualSaw.check(problem, last)).isEmpty();
  }

  @Test
  void moreTimeIsUsedUntilEnoughIsSaid() {
    SheetProblem problem = Published.sheets("gcut10d_one", Grain.FIXED, Length.mm(10), Length.ZERO);
    Listener hurried = new Listener(0);
    Listener patient = new Listener(10_000);
    Layout soon = new ThoroughCutter(Examples.AIMS, Limit.WATCH, hurried).cut(problem);
    Layout late = new ThoroughCutter(Examples.AIMS, Limit.WATCH, patient).cut(problem);
    assertThat(hurried.heard).hasSizeLessThan(patient.heard.size());
    assertThat(late.sheets()).isLessThan(soon.sheets());
    assertThat(late.bound().sheets()).isEqualTo(late.sheets());
  }

  /** Of a thousand sizes even a first answer takes long. */
  @Test
  void itIsAskedBeforeTheFirstAnswerToManySizes() {
    Random random = new Random(1);
    List<Part> parts = new ArrayList<>();
    for (int i = 0; i < 1_000; i++) {
      Length length = Length.mm(200 + random.nextInt(1_000));
      parts.add(Examples.part("P" + i, length, Length.mm(100 + random.nextInt(500)), 2));
    }
    SheetProblem problem =
        new SheetProblem(parts, List.of(Examples.plywood()), new Saw(Length.mm(3), Trim.NONE));
    List<Integer> asked = new ArrayList<>();
    Listener hurried =
        new Listener(0) {
          @Override
          public void better(Layout layout) {
            super.better(layout);
            asked.add(asked());
          }
        };
    Layout layout = new ThoroughCutter(Examples.AIMS, Limit.WATCH, hurried).cut(problem);
    assertThat(VirtualSaw.check(problem, layout)).isEmpty();
    assertThat(asked).hasSize(1).first().isNotEqualTo(0);
    assertThat(layout.price()).isEqualTo(hurried.heard.getFirst().price());
  }

  @Test
  void boardsAreSearchedUntilEnoughIsSaid() {
    BoardProblem boards = Published.boards("hBPP13", Length.mm(10), Length.ZERO);
    Listener listener = new Listener(20_000);
    Layout layout = new ThoroughCutter(Examples.AIMS, Limit.WATCH, listener).cut(boards.asSheets());
    assertThat(VirtualSaw.check(boards.asSheets(), layout)).isEmpty();
    assertThat(listener.asked).isGreaterThan(1);
  }
}
