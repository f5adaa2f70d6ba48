package fourpin.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.cutting.SawLimits.FirstCut;
import fourpin.cutting.SawLimits.FirstOf;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Boards that are ripped first, or crosscut first, where they are cut both ways. */
class BoardFirstCutTest {
  private static final Length KERF = Length.mm(3);
  private static final Length EDGE = Length.mm(5);
  private static final int[] WIDTHS = {120, 150, 180, 220};

  static LongStream seeds() {
    return LongStream.range(0, 10);
  }

  private static Saw saw(FirstCut first) {
    return new Saw(
        KERF,
        Trim.ends(Length.mm(25)),
        SawLimits.NONE.withFirst(first).withFirstOf(FirstOf.CUT_BOTH_WAYS));
  }

  private static SheetProblem with(SheetProblem problem, FirstCut first) {
    return new SheetProblem(problem.parts(), problem.stock(), saw(first), problem.ties());
  }

  private static StockSheet board(
      String name, int length, int width, Supply supply, List<Defect> defects) {
    return new StockSheet(
        name,
        Length.mm(length),
        Length.mm(width),
        SheetGrain.ALONG_LENGTH,
        supply,
        (long) length * width / 1000,
        Origin.TO_BUY,
        defects,
        EDGE);
  }

  private static Defect defect(int x, int y, int length, int width) {
    return new Defect(Length.mm(x), Length.mm(y), Length.mm(length), Length.mm(width));
  }

  /** Random widths; some parts are as wide as a board, some as long as its trimmed length. */
  private static SheetProblem random(long seed, int markedOfThree) {
    Random random = new Random(seed);
    List<StockSheet> stock = new ArrayList<>();
    for (int i = 0; i < 1 + random.nextInt(3); i++) {
      int length = 1800 + 300 * random.nextInt(5);
      int width = WIDTHS[random.nextInt(WIDTHS.length)];
      boolean marked = random.nextInt(3) < markedOfThree;
      List<Defect> knots =
          List.of(
              defect(
                  200 + random.nextInt(900),
                  random.nextInt(60),
                  20 + random.nextInt(200),
                  random.nextInt(4) == 0 ? width - 60 : 30));
      stock.add(
          board(
              "b" + i,
              length,
              width,
              marked ? Supply.of(1) : Supply.unlimited(),
              marked ? knots : List.of()));
    }
    List<Part> parts = new ArrayList<>();
    for (int i = 0; i < 2 + random.nextInt(7); i++) {
      int width = random.nextBoolean() ? 30 + random.nextInt(150) : WIDTHS[random.nextInt(4)];
      int length = random.nextInt(5) == 0 ? 1750 : 150 + random.nextInt(1500);
      parts.add(Examples.part("P" + i, length, width, 1 + random.nextInt(4)));
    }
    return new SheetProblem(parts, stock, saw(FirstCut.EITHER));
  }

  private static Layout sound(SheetProblem problem, SheetCutter cutter) {
    Layout layout = cutter.cut(problem);
    assertThat(VirtualSaw.check(problem, layout)).isEmpty();
    assertThat(layout.price()).isGreaterThanOrEqualTo(layout.bound().price());
    return layout;
  }

  private static Layout sound(SheetProblem problem) {
    return sound(problem, new ThoroughCutter(Examples.AIMS));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void theOrderChosenIsHeldByEverySearch(long seed) {
    for (FirstCut first : List.of(FirstCut.ALONG, FirstCut.ACROSS)) {
      SheetProblem problem = with(random(seed, 1), first);
      sound(problem, new StripCutter());
      sound(problem, new PatternCutter(50_000));
      sound(problem);
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void whatIsLeftToTheSearchIsNoDearerThanEither(long seed) {
    SheetProblem free = random(seed, 0);
    Layout either = sound(free);
    for (FirstCut first : List.of(FirstCut.ALONG, FirstCut.ACROSS)) {
      Layout one = sound(with(free, first));
      if (one.unplaced().isEmpty()) {
        assertThat(either.unplaced()).isEmpty();
        assertThat(either.price()).as("%s", first).isLessThanOrEqualTo(one.price());
      }
    }
  }

  /** What can be had in one order can be had where the order is free. */
  @ParameterizedTest
  @MethodSource("seeds")
  void theLeastOfBoardsWithDefectsIsNoLowerInOneOrder(long seed) {
    SheetProblem free = random(seed, 2);
    LowerBound either = sound(free).bound();
    for (FirstCut first : List.of(FirstCut.ALONG, FirstCut.ACROSS)) {
      Layout one = sound(with(free, first));
      if (one.unplaced().isEmpty()) {
        assertThat(one.bound().price()).as("%s", first).isGreaterThanOrEqualTo(either.price());
      }
    }
  }

  /** A shelf as wide as its board and rails that are ripped share it only crosscut first. */
  @Test
  void rippedFirstAShelfAsWideAsItsBoardHasOneOfItsOwn() {
    SheetProblem problem =
        new SheetProblem(
            List.of(Examples.part("shelf", 1000, 150, 1), Examples.part("rail", 900, 60, 2)),
            List.of(board("board", 2400, 150, Supply.unlimited(), List.of())),
            saw(FirstCut.ACROSS));
    assertThat(sound(problem).sheets()).isEqualTo(1);
    assertThat(sound(with(problem, FirstCut.ALONG)).sheets()).isEqualTo(2);
  }

  /** Two long strips of full length, and three short ones: nothing ripped through holds both. */
  @Test
  void crosscutFirstAStripAsLongAsItsBoardHasOneOfItsOwn() {
    SheetProblem problem =
        new SheetProblem(
            List.of(Examples.part("long", 2350, 60, 1), Examples.part("short", 700, 60, 3)),
            List.of(board("board", 2400, 150, Supply.unlimited(), List.of())),
            saw(FirstCut.ALONG));
    assertThat(sound(problem).sheets()).isEqualTo(1);
    assertThat(sound(with(problem, FirstCut.ACROSS)).sheets()).isEqualTo(2);
  }

  /** What is only cut to length, or only to width, just is. */
  @ParameterizedTest
  @EnumSource(FirstCut.class)
  void whatIsCutOneWayOnlyIsFree(FirstCut first) {
    SheetProblem problem =
        new SheetProblem(
            List.of(Examples.part("shelf", 1000, 150, 2), Examples.part("strip", 2350, 70, 2)),
            List.of(board("board", 2400, 150, Supply.unlimited(), List.of())),
            saw(first));
    Layout layout = sound(problem);
    assertThat(layout.unplaced()).isEmpty();
    assertThat(layout.sheets()).isEqualTo(2);
  }

  /** A layout that is crosscut and then ripped is a fault where boards are ripped first. */
  @Test
  void theVirtualSawTellsTheOtherOrder() {
    SheetProblem across =
        new SheetProblem(
            List.of(Examples.part("shelf", 1000, 150, 1), Examples.part("rail", 900, 60, 2)),
            List.of(board("board", 2400, 150, Supply.unlimited(), List.of())),
            saw(FirstCut.ACROSS));
    Layout layout = sound(across);
    assertThat(VirtualSaw.check(with(across, FirstCut.ALONG), layout))
        .containsExactly(new Fault.WrongFirstCut(1, Direction.CROSSCUT));
  }
}
