package fourpin.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Who allows more never pays more, with the same work. */
class FreedomTest {
  private static final int[] STAGES = {2, 3, 4, SawLimits.FREE};

  static LongStream seeds() {
    return LongStream.range(0, 12);
  }

  /** Panels that may mostly be turned, on sheets of two sizes, as many as are needed. */
  private static List<Part> parts(long seed) {
    Random random = new Random(seed);
    List<Part> parts = new ArrayList<>();
    for (int i = 0; i < 4 + random.nextInt(8); i++) {
      parts.add(
          new Part(
              "P" + i,
              Length.inches(6 + random.nextInt(40)),
              Length.inches(4 + random.nextInt(24)),
              1 + random.nextInt(5),
              random.nextInt(3) > 0 ? Grain.FREE : Grain.FIXED));
    }
    return parts;
  }

  private static List<Part> fixed(List<Part> parts) {
    return parts.stream().map(part -> part.with(Grain.FIXED)).toList();
  }

  private static List<StockSheet> stock(SheetGrain grain) {
    return List.of(
        Examples.sheet("large", 96, 48, Supply.unlimited(), 6000).with(grain),
        Examples.sheet("small", 60, 48, Supply.unlimited(), 4100).with(grain));
  }

  private static long price(List<Part> parts, SheetGrain grain, int stages) {
    Saw saw = new Saw(Examples.KERF, Trim.NONE, SawLimits.NONE.withStages(stages));
    SheetProblem problem = new SheetProblem(parts, stock(grain), saw);
    Layout layout = new ThoroughCutter(Examples.AIMS).cut(problem);
    assertThat(VirtualSaw.check(problem, layout)).isEmpty();
    assertThat(layout.unplaced()).isEmpty();
    assertThat(layout.price()).isGreaterThanOrEqualTo(layout.bound().price());
    return layout.price();
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void turningNeverCostsMore(long seed) {
    List<Part> parts = parts(seed);
    long fixed = price(fixed(parts), SheetGrain.ALONG_LENGTH, SawLimits.FREE);
    long some = price(parts, SheetGrain.ALONG_LENGTH, SawLimits.FREE);
    long all = price(parts, SheetGrain.NONE, SawLimits.FREE);
    assertThat(some).isLessThanOrEqualTo(fixed);
    assertThat(all).isLessThanOrEqualTo(fixed);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void moreStagesNeverCostMore(long seed) {
    List<Part> parts = parts(seed);
    long before = Long.MAX_VALUE;
    for (int stages : STAGES) {
      long next = price(parts, SheetGrain.ALONG_LENGTH, stages);
      assertThat(next).isLessThanOrEqualTo(before);
      before = next;
    }
  }

  /**
   * The answers in fewer stages and straight, of up to twenty parts also those with one way to
   * begin, are drafted again as starts of the search.
   */
  @ParameterizedTest
  @MethodSource("seeds")
  void layoutsThatAllowLessAreAmongTheStarts(long seed) {
    List<Part> parts = parts(seed);
    Saw saw = new Saw(Examples.KERF, Trim.NONE);
    SheetProblem turned = new SheetProblem(parts, stock(SheetGrain.NONE), saw);
    List<Layout> starts = Stricter.answers(turned, new StripCutter(), new StripCutter());
    long count = parts.stream().mapToLong(Part::count).sum();
    assertThat(starts).hasSize(count <= 20 ? 4 : 2);
    starts.forEach(start -> requireDraftedAgain(turned, start));
  }

  private static void requireDraftedAgain(SheetProblem problem, Layout start) {
    assertThat(VirtualSaw.check(problem, start)).isEmpty();
    Inflated inflated = new Inflated(problem);
    Layout again =
        new Answers(problem, inflated).layout(Redraft.of(inflated, start), new LowerBound(0, 0));
    assertThat(VirtualSaw.check(problem, again)).isEmpty();
    assertThat(again.price()).isEqualTo(start.price());
  }
}
