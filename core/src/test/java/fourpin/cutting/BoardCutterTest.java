package fourpin.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class BoardCutterTest {
  private static final Length WIDTH = Length.inches(3);

  private static Layout sound(BoardProblem problem) {
    Layout layout = new BoardCutter().cut(problem);
    assertThat(VirtualSaw.check(problem.asSheets(), layout)).isEmpty();
    return layout;
  }

  private static StockBoard board(String name, int inches, Supply supply, long price) {
    return new StockBoard(name, Length.inches(inches), supply, price, Origin.TO_BUY);
  }

  private static BoardProblem problem(List<BoardPart> parts, StockBoard... stock) {
    return new BoardProblem(parts, List.of(stock), WIDTH, Examples.KERF, Length.ZERO);
  }

  /**
   * Published values, and how many boards may be above them. Sources: wiki-rolls, the encyclopedia
   * article (optimum 73); gg-100, linear bound 452.25; u250_00 and t60_00, headers of the
   * OR-Library; TEST0005 and hBPP13, optima in a public test set.
   */
  @ParameterizedTest
  @CsvSource({
    "wiki-rolls, 73, 0",
    "gg-100, 453, 0",
    "u250_00, 99, 0",
    "t60_00, 20, 1",
    "TEST0005, 28, 1",
    "hBPP13, 67, 1"
  })
  void isNearThePublishedValueWithAndWithoutKerf(String instance, long best, long more) {
    for (Length kerf : List.of(Length.ZERO, Length.inches(1, 8))) {
      BoardProblem problem = Published.boards(instance, Length.mm(10), kerf);
      Layout layout = sound(problem);
      assertThat(layout.unplaced()).isEmpty();
      assertThat(layout.sheets()).isBetween(best, best + more);
      assertThat(layout.bound().sheets()).isBetween(1L, best);
    }
  }

  /**
   * The linear bounds are 72.917 (published) and 452.25; the area alone says 416 for the second.
   */
  @ParameterizedTest
  @CsvSource({"wiki-rolls, 73", "gg-100, 453"})
  void provesTheOptimumOfTheTextbooks(String instance, long optimum) {
    BoardProblem problem = Published.boards(instance, Length.mm(10), Length.ZERO);
    Layout layout = new BoardCutter(10 * BoardCutter.QUICK, Watch.NOBODY).cut(problem);
    assertThat(layout.sheets()).isEqualTo(optimum);
    assertThat(layout.bound().sheets()).isEqualTo(optimum);
  }

  @Test
  void aStopIsObeyedAndLeavesASoundCutting() {
    BoardProblem problem = Published.boards("hBPP13", Length.mm(10), Length.ZERO);
    Layout layout = new BoardCutter(Long.MAX_VALUE / 1_000, Watch.until(() -> true)).cut(problem);
    assertThat(VirtualSaw.check(problem.asSheets(), layout)).isEmpty();
    assertThat(layout.sheets()).isBetween(67L, 69L);
  }

  @Test
  void moreWorkFindsTheOptimumOfTheRolls() {
    BoardProblem problem = Published.boards("wiki-rolls", Length.mm(10), Length.inches(1, 8));
    Layout layout = new BoardCutter(10 * BoardCutter.QUICK, Watch.NOBODY).cut(problem);
    assertThat(VirtualSaw.check(problem.asSheets(), layout)).isEmpty();
    assertThat(layout.sheets()).isEqualTo(73);
    assertThat(layout.sheetGap()).isZero();
  }

  /**
   * Eight shelves of 31 7/8 and kerf 1/8: three from 96 in (3 x 31 7/8 + 2/8 = 95 7/8), by hand.
   */
  @Test
  void threeEdgingsFromAnEightFootBoard() {
    Layout layout =
        sound(
            problem(
                List.of(new BoardPart("edging", Length.inches(255, 8), 8)),
                board("8 ft", 96, Supply.unlimited(), 1000)));
    assertThat(layout.sheets()).isEqualTo(3);
    assertThat(layout.priceGap()).isZero();
  }

  @Test
  void endTrimCounts() {
    BoardProblem problem =
        new BoardProblem(
            List.of(new BoardPart("rail", Length.inches(95), 2)),
            List.of(board("8 ft", 96, Supply.unlimited(), 1000)),
            WIDTH,
            Examples.KERF,
            Length.inches(1, 2));
    assertThat(sound(problem).sheets()).isEqualTo(2);
    BoardProblem tooMuch =
        new BoardProblem(
            problem.parts(), problem.stock(), WIDTH, Examples.KERF, Length.inches(9, 16));
    assertThat(sound(tooMuch).unplaced())
        .containsExactly(new Unplaced("rail", 2, Unplaced.Reason.TOO_LONG));
  }

  /**
   * Five rails of 40 in: two from 96, three from 144; 144 + 96 at 2500 is the cheapest, by hand.
   */
  @Test
  void takesTheCheapestMixOfLengths() {
    Layout layout =
        sound(
            problem(
                List.of(new BoardPart("rail", Length.inches(40), 5)),
                board("8 ft", 96, Supply.unlimited(), 1000),
                board("12 ft", 144, Supply.unlimited(), 1500)));
    assertThat(layout.price()).isEqualTo(2500);
  }

  @Test
  void boardsThatRunOutAreReported() {
    Layout layout =
        sound(
            problem(
                List.of(new BoardPart("rail", Length.inches(40), 5)),
                board("8 ft", 96, Supply.of(2), 1000)));
    assertThat(layout.unplaced())
        .containsExactly(new Unplaced("rail", 1, Unplaced.Reason.NO_SHEETS_LEFT));
  }

  @Test
  void onlyCrosscutsAreMade() {
    Layout layout = sound(random(3));
    assertThat(layout.patterns())
        .flatExtracting(SheetPattern::rectangles)
        .extracting(Placed::node)
        .noneMatch(node -> node instanceof Node.Cut cut && cut.direction() == Direction.RIP);
  }

  static LongStream seeds() {
    return LongStream.range(0, 60);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void everyCuttingIsSoundAboveItsBoundAndTheSameAgain(long seed) {
    BoardProblem problem = random(seed);
    Layout layout = sound(problem);
    assertThat(layout.price()).isGreaterThanOrEqualTo(layout.bound().price());
    assertThat(layout.sheets()).isGreaterThanOrEqualTo(layout.bound().sheets());
    assertThat(new BoardCutter().cut(problem)).isEqualTo(layout);
  }

  private static BoardProblem random(long seed) {
    Random random = new Random(seed);
    List<BoardPart> parts = new ArrayList<>();
    for (int i = 0; i <= random.nextInt(12); i++) {
      Length length = Length.inches(16 * 2 + random.nextInt(16 * 90), 16);
      parts.add(new BoardPart("P" + i, length, 1 + random.nextInt(8)));
    }
    return new BoardProblem(
        parts,
        List.of(
            board("8 ft", 96, Supply.unlimited(), 1000),
            board("12 ft", 144, Supply.of(random.nextInt(4)), 1400),
            board("short", 50, Supply.of(random.nextInt(3)), 0)),
        WIDTH,
        Length.inches(random.nextInt(4), 32),
        Length.inches(random.nextInt(5), 8));
  }
}
