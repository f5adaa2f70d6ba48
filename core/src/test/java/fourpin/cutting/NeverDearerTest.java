package fourpin.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.cutting.SawLimits.FirstCut;
import fourpin.cutting.SawLimits.FirstOf;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What allows more never costs more: of few parts because everything is tried, of more because the
 * layout with fewer stages of cuts is among those that a search starts from.
 */
class NeverDearerTest {
  private static final int[] STAGES = {2, 3, 4, SawLimits.FREE};
  private static final Length KERF = Length.mm(3);
  private static final Trim TRIM = Trim.allRound(Length.mm(6));

  static LongStream seeds() {
    return LongStream.range(0, 12);
  }

  private static List<Part> parts(Random random, int kinds, int most) {
    List<Part> parts = new ArrayList<>();
    for (int i = 0; i < kinds; i++) {
      Length length = Length.mm(100 + random.nextInt(1100));
      Length width = Length.mm(60 + random.nextInt(500));
      int count = 1 + random.nextInt(most);
      Grain grain = random.nextInt(3) > 0 ? Grain.FIXED : Grain.FREE;
      parts.add(new Part("P" + i, length, width, count, grain));
    }
    return parts;
  }

  private static List<StockSheet> stock() {
    return List.of(
        Examples.sheet("large", 96, 48, Supply.unlimited(), 6000),
        Examples.sheet("small", 60, 48, Supply.unlimited(), 4100));
  }

  /** Few enough that every way to cut them is tried. */
  private static SheetProblem few(long seed) {
    return new SheetProblem(parts(new Random(seed), 4, 3), stock(), new Saw(KERF, TRIM));
  }

  private static SheetProblem with(SheetProblem problem, SawLimits limits) {
    return new SheetProblem(problem.parts(), problem.stock(), new Saw(KERF, TRIM, limits));
  }

  private static SheetProblem with(SheetProblem problem, StockSheet more) {
    List<StockSheet> stock = new ArrayList<>(problem.stock());
    stock.add(more);
    return new SheetProblem(problem.parts(), stock, problem.saw());
  }

  private static Layout cut(SheetProblem problem) {
    Layout layout = new ThoroughCutter(Examples.AIMS).cut(problem);
    assertThat(VirtualSaw.check(problem, layout)).isEmpty();
    assertThat(layout.price()).isGreaterThanOrEqualTo(layout.bound().price());
    return layout;
  }

  /** What some of the parts have no place for can't be compared by its price. */
  private static void requireNoDearer(SheetProblem freer, SheetProblem stricter) {
    Layout less = cut(stricter);
    if (less.unplaced().isEmpty()) {
      Layout more = cut(freer);
      assertThat(more.unplaced()).isEmpty();
      assertThat(more.price()).isLessThanOrEqualTo(less.price());
      assertThat(more.bound().price()).isLessThanOrEqualTo(less.bound().price());
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void noLimitThanOne(long seed) {
    SheetProblem free = few(seed);
    Random random = new Random(seed);
    SawLimits rip =
        new SawLimits(
            Optional.of(Length.mm(600 + random.nextInt(1500))),
            Optional.empty(),
            FirstCut.EITHER,
            SawLimits.FREE);
    SawLimits crosscut =
        new SawLimits(
            Optional.empty(),
            Optional.of(Length.mm(300 + random.nextInt(800))),
            FirstCut.EITHER,
            SawLimits.FREE);
    requireNoDearer(free, with(free, rip));
    requireNoDearer(free, with(free, crosscut));
    requireNoDearer(free, with(free, SawLimits.NONE.withFirst(FirstCut.ALONG)));
    requireNoDearer(free, with(free, SawLimits.NONE.withFirst(FirstCut.ACROSS)));
    requireNoDearer(free, with(free, SawLimits.NONE.withStages(2 + random.nextInt(3))));
  }

  /**
   * Worked out by trying: 36 however the boards are cut, and what can be had of them ripped first.
   */
  @ParameterizedTest
  @EnumSource(FirstCut.class)
  void theLeastWithALimitIsThatWithout(FirstCut first) {
    List<Part> parts =
        List.of(
            Examples.part("a", 699, 75, 1),
            Examples.part("b", 1321, 18, 1),
            Examples.part("c", 577, 118, 1));
    SawLimits limits = SawLimits.NONE.withFirst(first).withFirstOf(FirstOf.CUT_BOTH_WAYS);
    Saw saw = new Saw(KERF, Trim.ends(Length.mm(25)), limits);
    SheetProblem problem =
        new SheetProblem(
            parts, List.of(Examples.rough(1900, 90, 6), Examples.rough(1290, 150, 24)), saw);
    Layout layout = cut(problem);
    assertThat(layout.price()).isEqualTo(36);
    assertThat(layout.isProven()).isTrue();
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void moreStockThanLess(long seed) {
    SheetProblem less = few(seed);
    requireNoDearer(with(less, Examples.sheet("more", 84, 44, Supply.unlimited(), 4900)), less);
    requireNoDearer(with(less, Examples.sheet("offcut", 38, 21, Supply.of(1), 0)), less);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void aThinnerSawThanAThickerOne(long seed) {
    SheetProblem thick = few(seed);
    Saw thin = new Saw(Length.mm(1), TRIM);
    requireNoDearer(new SheetProblem(thick.parts(), thick.stock(), thin), thick);
  }

  /** The first came out dearer free than in three stages, before these were a start. */
  @ParameterizedTest
  @ValueSource(longs = {3, 1, 5})
  void moreStagesThanFewerOfManyParts(long seed) {
    Random random = new Random(seed);
    List<Part> parts = parts(random, 6 + random.nextInt(12), 4);
    SheetProblem free = new SheetProblem(parts, stock(), new Saw(KERF, TRIM));
    FirstCut first = FirstCut.values()[(int) seed % FirstCut.values().length];
    long before = Long.MAX_VALUE;
    for (int stages : STAGES) {
      long next = cut(with(free, SawLimits.NONE.withFirst(first).withStages(stages))).price();
      assertThat(next).as("%d stages", stages).isLessThanOrEqualTo(before);
      before = next;
    }
  }
}
