package fourpin.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class DefectCutterTest {

  private static Defect defect(int x, int y, int length, int width) {
    return new Defect(
        Length.inches(x), Length.inches(y), Length.inches(length), Length.inches(width));
  }

  private static StockSheet board(int number, int length, int width, List<Defect> defects) {
    return new StockSheet(
        "board " + number,
        Length.inches(length),
        Length.inches(width),
        SheetGrain.ALONG_LENGTH,
        Supply.of(1),
        100L * length,
        Origin.ON_HAND,
        defects,
        Length.ZERO);
  }

  /** Rough boards of random widths, each with up to three defects, and parts for about half. */
  private static SheetProblem random(long seed) {
    return random(seed, 8);
  }

  private static SheetProblem random(long seed, int shortest) {
    Random random = new Random(seed);
    List<StockSheet> boards = new ArrayList<>();
    for (int i = 0; i < 2 + random.nextInt(6); i++) {
      List<Defect> defects = new ArrayList<>();
      for (int d = random.nextInt(4); d > 0; d--) {
        defects.add(
            defect(
                random.nextInt(100),
                random.nextInt(9),
                1 + random.nextInt(6),
                1 + random.nextInt(4)));
      }
      boards.add(board(i, 60 + random.nextInt(60), 5 + random.nextInt(7), defects));
    }
    List<Part> parts = new ArrayList<>();
    for (int i = 0; i < 2 + random.nextInt(5); i++) {
      parts.add(
          Examples.part(
              "P" + i,
              Length.inches(shortest + random.nextInt(40)),
              Length.inches(1 + random.nextInt(5)),
              1 + random.nextInt(5)));
    }
    Length off = Length.inches(random.nextInt(3), 8);
    Saw saw = new Saw(Length.inches(random.nextInt(3), 16), Trim.allRound(off));
    return new SheetProblem(parts, boards, saw);
  }

  private static Layout cut(SheetProblem problem, Direction first, Length least) {
    return DefectCutter.cut(problem, way(first, least), new StripCutter());
  }

  /** And nothing done for what is left out. */
  private static Layout once(SheetProblem problem, Direction first) {
    return DefectCutter.once(problem, way(first, Length.ZERO), new StripCutter());
  }

  private static DefectCutter.Way way(Direction first, Length least) {
    return new DefectCutter.Way(first, least, DefectCutter.Price.SHARE);
  }

  static LongStream seeds() {
    return LongStream.range(0, 25);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void noPartHoldsAnythingOfADefect(long seed) {
    SheetProblem problem = random(seed);
    for (Direction first : Direction.values()) {
      Layout layout = cut(problem, first, Length.ZERO);
      assertThat(VirtualSaw.check(problem, layout)).isEmpty();
    }
    Layout thorough = new ThoroughCutter(Examples.AIMS).cut(problem);
    assertThat(VirtualSaw.check(problem, thorough)).isEmpty();
    assertThat(thorough.price()).isGreaterThanOrEqualTo(thorough.bound().price());
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void piecesBesideDefectsAreLongEnoughToBeHeld(long seed) {
    Length least = Length.inches(12);
    SheetProblem problem = random(seed, 12);
    for (Direction first : Direction.values()) {
      Layout layout = cut(problem, first, least);
      assertThat(VirtualSaw.check(problem, layout)).isEmpty();
      for (SheetPattern pattern : layout.patterns()) {
        List<SetUp> setUps = CuttingOrder.of(pattern, 1, problem.saw(), HoldLimits.NONE);
        assertThat(SmallPieces.cut(setUps, least)).isEmpty();
      }
    }
  }

  @Test
  void aShortBlockIsRippedOnlyWherePartsHaveNoOtherPlace() {
    SheetProblem one = knotty(4, 4, 1);
    SheetProblem all = knotty(4, 4, 2 * 12 * 2 + 2);
    Layout roomy = new ThoroughCutter(Examples.AIMS).cut(one);
    Layout full = new ThoroughCutter(Examples.AIMS).cut(all);
    assertThat(roomy.unplaced()).isEmpty();
    assertThat(full.unplaced()).isEmpty();
    assertThat(VirtualSaw.check(all, full)).isEmpty();
    Layout held = cut(all, Direction.CROSSCUT, Examples.AIMS.least());
    assertThat(held.unplaced()).isNotEmpty();
  }

  /** A knot in the middle of a board 100 by 10, worked out by hand without kerf. */
  private static SheetProblem knotty(int length, int width, int count) {
    return new SheetProblem(
        List.of(Examples.part("A", Length.inches(length), Length.inches(width), count)),
        List.of(board(1, 100, 10, List.of(defect(48, 4, 4, 2)))),
        new Saw(Length.ZERO, Trim.NONE));
  }

  @Test
  void crosscutFirstGivesShortWideClearPieces() {
    SheetProblem wide = knotty(48, 10, 2);
    Layout crosscut = once(wide, Direction.CROSSCUT);
    assertThat(VirtualSaw.check(wide, crosscut)).isEmpty();
    assertThat(crosscut.unplaced()).isEmpty();
    assertThat(once(wide, Direction.RIP).unplaced()).hasSize(1);
  }

  @Test
  void rippedFirstGivesLongNarrowClearPieces() {
    SheetProblem narrow = knotty(100, 4, 2);
    Layout ripped = once(narrow, Direction.RIP);
    assertThat(VirtualSaw.check(narrow, ripped)).isEmpty();
    assertThat(ripped.unplaced()).isEmpty();
    assertThat(once(narrow, Direction.CROSSCUT).unplaced()).hasSize(1);
  }

  @ParameterizedTest
  @EnumSource(Direction.class)
  void besideADefectTheWoodIsUsed(Direction first) {
    SheetProblem small = knotty(4, 4, 2 * 12 * 2 + 2);
    Layout layout = cut(small, first, Length.ZERO);
    assertThat(VirtualSaw.check(small, layout)).isEmpty();
    assertThat(layout.unplaced()).isEmpty();
  }

  private static StockSheet ash(String name, int length, long price, List<Defect> defects) {
    return new StockSheet(
        name,
        Length.inches(length),
        Length.inches(6),
        SheetGrain.ALONG_LENGTH,
        Supply.of(1),
        price,
        Origin.TO_BUY,
        defects,
        Length.ZERO);
  }

  /** Half of the knotted board would cost 50, but half a board can't be bought. */
  @Test
  void aClearPieceIsNotTakenForCheaperThanItsBoard() {
    StockSheet clear = ash("clear", 50, 60, List.of());
    StockSheet knotted = ash("knotted", 100, 100, List.of(defect(48, 0, 4, 6)));
    List<Part> rail = List.of(Examples.part("rail", Length.inches(44), Length.inches(5), 1));
    SheetProblem problem = new SheetProblem(rail, List.of(clear, knotted), Examples.SAW);
    assertThat(new ThoroughCutter(Examples.AIMS).cut(problem).price()).isEqualTo(60);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void boardsWithDefectsNeverMakeALayoutDearer(long seed) {
    SheetProblem random = random(seed);
    StockSheet clear =
        new StockSheet(
            "clear",
            Length.inches(96),
            Length.inches(8),
            SheetGrain.ALONG_LENGTH,
            Supply.unlimited(),
            4000,
            Origin.TO_BUY);
    List<StockSheet> all = new ArrayList<>(random.stock());
    all.add(clear);
    List<StockSheet> without = all.stream().filter(s -> s.defects().isEmpty()).toList();
    SheetProblem more = new SheetProblem(random.parts(), all, random.saw());
    SheetProblem less = new SheetProblem(random.parts(), without, random.saw());
    Layout best = new ThoroughCutter(Examples.AIMS).cut(more);
    assertThat(VirtualSaw.check(more, best)).isEmpty();
    assertThat(best.price())
        .isLessThanOrEqualTo(new ThoroughCutter(Examples.AIMS).cut(less).price());
  }

  /** A board with a knot gives no more than a clear one, so that what holds with this holds. */
  @ParameterizedTest
  @MethodSource("seeds")
  void aKnotLeavesTheBoundAsItIs(long seed) {
    SheetProblem clear = bought(seed, List.of());
    SheetProblem knotty = bought(seed, List.of(defect(20, 3, 2, 1)));
    Layout best = new ThoroughCutter(Examples.AIMS).cut(knotty);
    LowerBound least = new ThoroughCutter(Examples.AIMS).cut(clear).bound();
    assertThat(VirtualSaw.check(knotty, best)).isEmpty();
    assertThat(best.unplaced()).isEmpty();
    assertThat(best.bound().price()).isGreaterThanOrEqualTo(least.price());
    assertThat(best.bound().sheets()).isGreaterThanOrEqualTo(least.sheets());
    assertThat(best.price()).isGreaterThanOrEqualTo(best.bound().price());
  }

  /** Parts that are bought wood for, and one board on hand. */
  private static SheetProblem bought(long seed, List<Defect> defects) {
    Random random = new Random(seed);
    List<Part> parts = new ArrayList<>();
    for (int i = 0; i < 5; i++) {
      Length length = Length.inches(12 + random.nextInt(40));
      Length width = Length.inches(2 + random.nextInt(5));
      parts.add(Examples.part("P" + i, length, width, 1 + random.nextInt(4)));
    }
    return new SheetProblem(
        parts,
        List.of(
            sheet("long", 96, 8, Supply.unlimited(), 900, List.of()),
            sheet("short", 60, 6, Supply.unlimited(), 450, List.of()),
            sheet("rest", 48, 8, Supply.of(1), 0, defects)),
        Examples.SAW);
  }

  private static StockSheet sheet(
      String name, int length, int width, Supply supply, long price, List<Defect> defects) {
    return new StockSheet(
        name,
        Length.inches(length),
        Length.inches(width),
        SheetGrain.ALONG_LENGTH,
        supply,
        price,
        price == 0 ? Origin.ON_HAND : Origin.TO_BUY,
        defects,
        Length.ZERO);
  }

  @Test
  void theVirtualSawSeesAPartOnADefect() {
    SheetProblem clear =
        new SheetProblem(
            knotty(100, 4, 2).parts(),
            List.of(board(1, 100, 10, List.of())),
            new Saw(Length.ZERO, Trim.NONE));
    Layout layout = new StripCutter().cut(clear);
    SheetPattern pattern = layout.patterns().getFirst();
    StockSheet knotted = knotty(100, 4, 2).stock().getFirst();
    Layout onKnot =
        new Layout(
            List.of(new SheetPattern(knotted, 1, pattern.root())), List.of(), layout.bound());
    assertThat(VirtualSaw.check(knotty(100, 4, 2), onKnot))
        .hasOnlyElementsOfType(Fault.OnDefect.class)
        .isNotEmpty();
  }
}
