package fourpin.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class ThoroughCutterTest {
  private static final Reusable KEPT = new Reusable(Length.inches(12), Length.inches(4));

  private static final Merit.Aims AIMS = new Merit.Aims(KEPT, Length.inches(12));

  private static Layout sound(SheetProblem problem) {
    Layout layout = new ThoroughCutter(AIMS).cut(problem);
    assertThat(VirtualSaw.check(problem, layout)).isEmpty();
    return layout;
  }

  private static Merit merit(SheetProblem problem, Layout layout) {
    return Merit.of(problem, layout, AIMS);
  }

  static LongStream seeds() {
    return LongStream.range(0, 25);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void everyLayoutIsSoundNoWorseThanTheQuickOneAndTheSameAgain(long seed) {
    SheetProblem problem = Examples.bookcases(seed);
    Layout layout = sound(problem);
    Layout quick = new StripCutter().cut(problem);
    assertThat(merit(problem, layout)).isLessThanOrEqualTo(merit(problem, quick));
    assertThat(layout.price()).isGreaterThanOrEqualTo(layout.bound().price());
    assertThat(layout.sheets()).isGreaterThanOrEqualTo(layout.bound().sheets());
    assertThat(new ThoroughCutter(AIMS).cut(problem)).isEqualTo(layout);
  }

  /** What fits with a wide kerf fits without one. */
  @ParameterizedTest
  @MethodSource("seeds")
  void aWiderKerfNeverGains(long seed) {
    SheetProblem thin = Examples.bookcases(seed);
    Layout wide = sound(withKerf(thin, Length.inches(3, 16)));
    Layout none = sound(withKerf(thin, Length.ZERO));
    if (wide.unplaced().isEmpty()) {
      assertThat(none.bound().price()).isLessThanOrEqualTo(wide.price());
      assertThat(none.unplaced()).isEmpty();
    }
  }

  private static SheetProblem withKerf(SheetProblem problem, Length kerf) {
    return new SheetProblem(problem.parts(), problem.stock(), new Saw(kerf, problem.saw().trim()));
  }

  /** The optimum can only fall, so the bound with more stock is below what was found with less. */
  @ParameterizedTest
  @MethodSource("seeds")
  void moreStockNeverLiftsTheBoundAboveWhatLessStockCameTo(long seed) {
    SheetProblem problem = Examples.bookcases(seed);
    Layout less = sound(problem);
    List<StockSheet> stock = new ArrayList<>(problem.stock());
    stock.add(Examples.sheet("more", 144, 60, Supply.unlimited(), 9500));
    Layout more = sound(new SheetProblem(problem.parts(), stock, problem.saw()));
    if (less.unplaced().isEmpty()) {
      assertThat(more.unplaced()).isEmpty();
      assertThat(more.bound().price()).isLessThanOrEqualTo(less.price());
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void theSameStockAtAHigherPriceIsNotTaken(long seed) {
    SheetProblem problem = Examples.bookcases(seed);
    List<StockSheet> stock = new ArrayList<>(problem.stock());
    stock.add(Examples.sheet("dear", 96, 48, Supply.unlimited(), 6001));
    assertThat(sound(new SheetProblem(problem.parts(), stock, problem.saw())).patterns())
        .noneMatch(pattern -> pattern.sheet().name().equals("dear"));
  }

  /**
   * Boards cut into three without waste, their parts mixed: there is a layout on no more boards
   * than that by construction, and largest first does not find it.
   */
  @ParameterizedTest
  @ValueSource(longs = {0, 1, 2, 3, 4, 5})
  void makesDoWithTheStockThereIsWhereTheQuickAnswerRunsOut(long seed) {
    SheetProblem problem = triples(new Random(seed), 20);
    assertThat(new StripCutter().cut(problem).unplaced()).isNotEmpty();
    assertThat(sound(problem).unplaced()).isEmpty();
  }

  private static SheetProblem triples(Random random, int boards) {
    List<Part> parts = new ArrayList<>();
    for (int board = 0; board < boards; board++) {
      int first = 20 + random.nextInt(30);
      int second = 20 + random.nextInt(30);
      for (int length : new int[] {first, second, 100 - first - second}) {
        parts.add(Examples.part("P" + parts.size(), Length.inches(length), Length.inches(3), 1));
      }
    }
    StockSheet board = Examples.sheet("board", 100, 3, Supply.of(boards), 1000);
    return new SheetProblem(parts, List.of(board), new Saw(Length.ZERO, Trim.NONE));
  }

  /** Two shelves of 30 by 24 in, one above the other, leave one piece of 66 by 48. */
  @Test
  void leavesOneLargeOffcutRatherThanTwo() {
    SheetProblem problem =
        new SheetProblem(
            List.of(Examples.part("shelf", Length.inches(30), Length.inches(24), 2)),
            List.of(Examples.plywood()),
            new Saw(Length.ZERO, Trim.NONE));
    Layout layout = sound(problem);
    assertThat(KEPT.largest(layout.patterns().getFirst()))
        .isEqualTo(Length.inches(66).mm() * Length.inches(48).mm());
  }

  @Test
  void offcutsTooSmallToKeepAreWorthNothing() {
    SheetProblem problem =
        new SheetProblem(
            List.of(Examples.part("panel", Length.inches(93), Length.inches(45), 1)),
            List.of(Examples.plywood()),
            new Saw(Length.ZERO, Trim.NONE));
    assertThat(merit(problem, sound(problem)).worth()).isZero();
  }

  /** The textbook rolls, of which the optimum is 73: only crosscuts are left to choose. */
  @Test
  void cutsBoardsToLengthByTheCutterForBoards() {
    SheetProblem problem =
        Published.boards("wiki-rolls", Length.mm(10), Length.inches(1, 8)).asSheets();
    Layout layout = sound(problem);
    assertThat(layout.sheets()).isEqualTo(new BoardCutter().cut(problem).sheets());
    assertThat(layout.bound().sheets()).isEqualTo(73);
  }

  /** Pegs of 5 by 1 in: ripped off the whole board and then cut to length, not the other way. */
  @Test
  void ripsLongPiecesRatherThanShortOnes() {
    SheetProblem problem =
        new SheetProblem(
            List.of(Examples.part("peg", Length.inches(5), Length.inches(1), 12)),
            List.of(Examples.sheet("rest", 16, 6, Supply.of(1), 0)),
            Examples.SAW);
    SheetPattern pattern = sound(problem).patterns().getFirst();
    assertThat(CuttingOrder.of(pattern, 1, problem.saw(), HoldLimits.NONE))
        .filteredOn(s -> s instanceof SetUp.CutTo cut && cut.direction() == Direction.RIP)
        .flatExtracting(SetUp::steps)
        .allMatch(step -> ((SawStep) step).from().length().isAtLeast(Length.inches(12)));
  }

  /** A rip of a piece shorter than what can be held, and a crosscut of one short both ways. */
  @Test
  void namesPiecesTooSmallToHold() {
    SheetProblem problem =
        new SheetProblem(
            List.of(Examples.part("block", Length.inches(6), Length.inches(5), 1)),
            List.of(Examples.sheet("rest", 10, 8, Supply.of(1), 0)),
            Examples.SAW);
    SheetPattern pattern = sound(problem).patterns().getFirst();
    List<SetUp> setUps = CuttingOrder.of(pattern, 1, problem.saw(), HoldLimits.NONE);
    assertThat(SmallPieces.cut(setUps, Length.inches(12))).hasSize(2).startsWith("S1");
    assertThat(SmallPieces.of(setUps, Length.inches(12))).hasSize(3).startsWith("S1");
    assertThat(SmallPieces.of(setUps, Length.inches(6))).isEmpty();
  }

  /** Off a long strip a small part comes nearer to the blade than a hand may. */
  @Test
  void namesSmallPartsThatComeOffLongPieces() {
    SheetProblem problem =
        new SheetProblem(
            List.of(Examples.part("block", Length.inches(4), Length.inches(2), 1)),
            List.of(Examples.sheet("strip", 60, 2, Supply.of(1), 0)),
            Examples.SAW);
    SheetPattern pattern = sound(problem).patterns().getFirst();
    List<SetUp> setUps = CuttingOrder.of(pattern, 1, problem.saw(), HoldLimits.NONE);
    assertThat(SmallPieces.cut(setUps, Length.inches(12))).isEmpty();
    assertThat(SmallPieces.of(setUps, Length.inches(12))).containsExactly("S1-A");
  }

  /** Sizes in whole millimetres, kerf and trim too, leave no fence between them. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void fencesAreSetToSumsOfWholeSizes(long seed) {
    Random random = new Random(seed);
    List<Part> parts = new ArrayList<>();
    for (int i = 0; i < 3 + random.nextInt(5); i++) {
      parts.add(
          new Part(
              "P" + i,
              Length.mm(200 + random.nextInt(900)),
              Length.mm(90 + random.nextInt(400)),
              1 + random.nextInt(6),
              random.nextBoolean() ? Grain.FIXED : Grain.FREE));
    }
    StockSheet sheet =
        new StockSheet(
            "ply",
            Length.mm(2500),
            Length.mm(1250),
            SheetGrain.ALONG_LENGTH,
            Supply.unlimited(),
            100,
            Origin.TO_BUY);
    Saw saw = new Saw(Length.mm(3), Trim.allRound(Length.mm(5)));
    SheetProblem problem = new SheetProblem(parts, List.of(sheet), saw);
    Merit.Aims aims = new Merit.Aims(new Reusable(Length.mm(300), Length.mm(100)), Length.mm(300));
    Layout layout = new ThoroughCutter(aims).cut(problem);
    assertThat(VirtualSaw.check(problem, layout)).isEmpty();
    assertThat(
            layout.patterns().stream()
                .flatMap(p -> CuttingOrder.of(p, 1, saw, HoldLimits.NONE).stream()))
        .filteredOn(SetUp.CutTo.class::isInstance)
        .isNotEmpty()
        .allSatisfy(
            setUp ->
                assertThat(((SetUp.CutTo) setUp).fence().picometres() % Length.mm(1).picometres())
                    .isZero());
  }

  /** Five lengths from three: 12 boards and 311.26 in one round, the least by a longer search. */
  @Test
  void boardsOfFewLengthsAreProvenByWorkAlone() {
    List<Part> parts =
        List.of(
            Examples.part("a", 1193, 120, 1),
            Examples.part("b", 751, 120, 4),
            Examples.part("c", 1347, 120, 5),
            Examples.part("d", 1673, 120, 10),
            Examples.part("e", 396, 120, 7));
    List<StockSheet> boards = List.of(board(3000, 2907), board(1900, 1825), board(3350, 3143));
    Saw saw = new Saw(Length.nearestMm(3.2), Trim.ends(Length.mm(25)));
    Layout layout = sound(new SheetProblem(parts, boards, saw));
    assertThat(layout.price()).isEqualTo(30_958);
    assertThat(layout.isProven()).isTrue();
  }

  private static StockSheet board(int length, long price) {
    return new StockSheet(
        "board " + length,
        Length.mm(length),
        Length.mm(120),
        SheetGrain.ALONG_LENGTH,
        Supply.unlimited(),
        price,
        Origin.TO_BUY);
  }
}
