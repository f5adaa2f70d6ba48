package fourpin.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.cutting.Matched.Run;
import fourpin.cutting.SawLimits.FirstCut;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Small jobs whose parts hardly fit their stock, sheets or boards, with every limit of the saw: no
 * layout has a fault, no search breaks off, and nothing goes below its bound.
 */
class EveryLimitTest {
  private static final int[] STAGES = {1, 2, 3, 4, SawLimits.FREE};

  /** Few sizes, so that parts are as wide as stock, as each other, or as what is left over. */
  private static final int[] SIZES = {40, 60, 64, 96, 100, 144, 150, 196, 200, 300, 400};

  /** The first, and some that found a fault each among three thousand. */
  static LongStream seeds() {
    return LongStream.concat(
        LongStream.range(0, 90), LongStream.of(177, 181, 271, 290, 301, 356, 2134));
  }

  private static Length any(Random random) {
    return Length.mm(SIZES[random.nextInt(SIZES.length)]);
  }

  private static Optional<Length> limit(Random random) {
    return random.nextBoolean()
        ? Optional.empty()
        : Optional.of(Length.mm(SIZES[random.nextInt(SIZES.length)] - random.nextInt(2)));
  }

  private static Saw saw(Random random) {
    SawLimits limits =
        new SawLimits(
            limit(random),
            limit(random),
            FirstCut.values()[random.nextInt(3)],
            STAGES[random.nextInt(STAGES.length)]);
    Trim trim = random.nextBoolean() ? Trim.NONE : Trim.ends(Length.mm(5));
    return new Saw(Length.mm(random.nextBoolean() ? 4 : 0), trim, limits);
  }

  private static SheetProblem small(Random random) {
    List<Part> parts = new ArrayList<>();
    for (int i = 0; i < 1 + random.nextInt(7); i++) {
      Grain grain = Grain.values()[random.nextInt(2)];
      parts.add(new Part("P" + i, any(random), any(random), 1 + random.nextInt(3), grain));
    }
    boolean boards = random.nextBoolean();
    List<StockSheet> stock = new ArrayList<>();
    for (int i = 0; i < 1 + random.nextInt(3); i++) {
      stock.add(stock(random, "s" + i, boards));
    }
    return new SheetProblem(parts, stock, saw(random));
  }

  private static StockSheet stock(Random random, String name, boolean board) {
    Length edge = Length.mm(board ? 3 : 0);
    return new StockSheet(
        name,
        any(random).times(1 + random.nextInt(3)),
        any(random),
        board ? SheetGrain.ALONG_LENGTH : SheetGrain.values()[random.nextInt(3)],
        random.nextInt(3) > 0 ? Supply.unlimited() : Supply.of(1 + random.nextInt(2)),
        random.nextInt(3) * 100L,
        Origin.TO_BUY,
        List.of(),
        edge);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void isKeptByEverySearch(long seed) {
    requireKept(small(new Random(seed)));
  }

  static LongStream tiedSeeds() {
    return LongStream.range(0, 40);
  }

  @ParameterizedTest
  @MethodSource("tiedSeeds")
  void isKeptByEverySearchOfTiedParts(long seed) {
    requireKept(tied(new Random(seed)));
  }

  /** Parts that come from one strip, some twice in it, and parts that share a sheet. */
  private static SheetProblem tied(Random random) {
    SheetProblem plain = small(random);
    List<Part> parts = new ArrayList<>(plain.parts());
    List<Matched> sets = new ArrayList<>();
    for (int i = 0; i < random.nextInt(3); i++) {
      sets.add(set("M" + i, random, parts));
    }
    Trim all = Trim.allRound(Length.mm(6));
    Saw saw = plain.saw();
    Saw trimmed = random.nextBoolean() ? saw : new Saw(saw.kerf(), all, saw.limits());
    Ties ties = new Ties(sets, groups(random, plain.parts(), sets));
    return new SheetProblem(parts, plain.stock(), trimmed, ties);
  }

  private static Matched set(String name, Random random, List<Part> parts) {
    Run run = Run.values()[random.nextInt(2)];
    Grain grain = Grain.values()[random.nextInt(2)];
    int times = 1 + random.nextInt(2);
    Length same = any(random);
    List<String> marks = new ArrayList<>();
    for (int i = 0; i < 1 + random.nextInt(3); i++) {
      String mark = name + "-" + i;
      Length own = any(random);
      boolean endToEnd = run == Run.END_TO_END;
      int inOne = i == 0 ? 2 : 1;
      parts.add(new Part(mark, endToEnd ? own : same, endToEnd ? same : own, inOne * times, grain));
      marks.addAll(Collections.nCopies(inOne, mark));
    }
    Collections.shuffle(marks, random);
    return new Matched(name, run, marks);
  }

  /** None, one of some single parts, or one more of a whole set and another part. */
  private static List<Together> groups(Random random, List<Part> single, List<Matched> sets) {
    List<Together> groups = new ArrayList<>();
    int some = random.nextInt(Math.min(3, single.size()));
    List<String> marks = single.stream().map(Part::mark).toList();
    if (some > 0) {
      groups.add(new Together("T0", marks.subList(0, some)));
    }
    if (!sets.isEmpty() && random.nextBoolean()) {
      List<String> ofSet = new ArrayList<>(sets.getFirst().counts().keySet());
      ofSet.add(marks.getLast());
      groups.add(new Together("T1", ofSet));
    }
    return groups;
  }

  private static StockSheet stock(int length, int width, int roughEdge) {
    return new StockSheet(
        "stock",
        Length.mm(length),
        Length.mm(width),
        SheetGrain.ALONG_LENGTH,
        Supply.unlimited(),
        0,
        Origin.TO_BUY,
        List.of(),
        Length.mm(roughEdge));
  }

  private static Saw with(SawLimits limits) {
    return new Saw(Length.mm(4), Trim.NONE, limits);
  }

  /** A strip as wide as the sheet, narrowed to what lay on it, was ripped off first. */
  @Test
  void aSheetThatMayNotBeRippedFirstIsNot() {
    List<Part> parts =
        List.of(
            Examples.part("A", 400, 144, 1).with(Grain.FREE),
            Examples.part("B", 132, 241, 1).with(Grain.FREE),
            Examples.part("C", 132, 241, 1),
            Examples.part("D", 353, 209, 1),
            Examples.part("E", 557, 300, 2),
            Examples.part("F", 275, 212, 1));
    SawLimits across = SawLimits.NONE.withFirst(FirstCut.ACROSS);
    Layout layout =
        requireKept(new SheetProblem(parts, List.of(stock(1200, 400, 0)), with(across)));
    assertThat(layout.unplaced()).isEmpty();
    assertThat(layout.sheets()).isEqualTo(2);
  }

  /** Straight or turned, it is as wide as the board, which it leaves its rough edges. */
  @ParameterizedTest
  @CsvSource({"1000, 150, FREE", "150, 1000, FREE", "1000, 150, FIXED"})
  void aPartAsWideAsItsBoardIsLeftOutForTheSawAlone(int length, int width, Grain grain) {
    SawLimits narrow =
        new SawLimits(
            Optional.empty(), Optional.of(Length.mm(149)), FirstCut.EITHER, SawLimits.FREE);
    Part part = Examples.part("A", length, width, 1).with(grain);
    Layout layout =
        requireKept(new SheetProblem(List.of(part), List.of(stock(2400, 150, 3)), with(narrow)));
    assertThat(layout.unplaced()).containsExactly(new Unplaced("A", 1, Unplaced.Reason.SAW_LIMITS));
  }

  /** The answer of the last, the most thorough. */
  private static Layout requireKept(SheetProblem problem) {
    Layout layout = new Layout(List.of(), List.of(), new LowerBound(0, 0));
    List<SheetCutter> cutters =
        List.of(new StripCutter(), new PatternCutter(100_000), new ThoroughCutter(Examples.AIMS));
    for (SheetCutter cutter : cutters) {
      layout = cutter.cut(problem);
      assertThat(VirtualSaw.check(problem, layout)).isEmpty();
      assertThat(layout.price()).isGreaterThanOrEqualTo(layout.bound().price());
      assertThat(layout.sheets()).isGreaterThanOrEqualTo(layout.bound().sheets());
    }
    return layout;
  }
}
