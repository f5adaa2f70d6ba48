package fourpin.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class BoardFinishTest {
  private static final int BOARD = 100;

  private static Layout cut(List<BoardPart> parts, int board) {
    StockBoard stock =
        new StockBoard("board", Length.mm(board), Supply.unlimited(), 1, Origin.TO_BUY);
    BoardProblem problem =
        new BoardProblem(parts, List.of(stock), Length.mm(50), Length.ZERO, Length.ZERO);
    Layout layout = new BoardCutter(100 * BoardCutter.QUICK, Watch.NOBODY).cut(problem);
    assertThat(VirtualSaw.check(problem.asSheets(), layout)).isEmpty();
    return layout;
  }

  private static BoardPart part(int length, int count) {
    return new BoardPart("P" + length, Length.mm(length), count);
  }

  /**
   * 259 mm from boards of 132 mm. Two boards may lose 5 mm, and by hand: one with both 44s loses 8
   * at least, one with a single 44 loses 7 at least. The linear programme says 259 / 132. An
   * instance of M. Fieldhouse, The duality gap in trim problems, SICUP Bulletin 5 (1990), from
   * memory.
   */
  @Test
  void provesWhatTheLinearProgrammeDoesNot() {
    Layout layout = cut(List.of(part(44, 2), part(33, 3), part(12, 6)), 132);
    assertThat(layout.sheets()).isEqualTo(3);
    assertThat(layout.bound().sheets()).isEqualTo(3);
  }

  static LongStream seeds() {
    return LongStream.range(0, 40);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void findsAndProvesTheLeastNumberOfBoards(long seed) {
    Random random = new Random(seed);
    int[] lengths = random.ints(8 + random.nextInt(4), 15, 70).sorted().toArray();
    List<BoardPart> parts =
        IntStream.range(0, lengths.length)
            .mapToObj(i -> new BoardPart("P" + i, Length.mm(lengths[i]), 1))
            .toList();
    Layout layout = cut(parts, BOARD);
    long least = least(lengths, lengths.length - 1, new ArrayList<>());
    assertThat(layout.sheets()).isEqualTo(least);
    assertThat(layout.bound().sheets()).isEqualTo(least);
  }

  /** By trying every part on every board. */
  private static int least(int[] lengths, int part, List<Integer> room) {
    if (part < 0) {
      return room.size();
    }
    room.add(BOARD - lengths[part]);
    int least = least(lengths, part - 1, room);
    room.removeLast();
    for (int board = 0; board < room.size(); board++) {
      int before = room.get(board);
      if (before >= lengths[part]) {
        room.set(board, before - lengths[part]);
        least = Math.min(least, least(lengths, part - 1, room));
        room.set(board, before);
      }
    }
    return least;
  }

  /** Every filling of a board that loses no more, and no other, by trying all. */
  @ParameterizedTest
  @MethodSource("seeds")
  void listsEveryPatternThatLosesLittle(long seed) {
    Random random = new Random(seed);
    int[] lengths = random.ints(7, 15, 70).distinct().toArray();
    SheetProblem problem =
        new BoardProblem(
                IntStream.of(lengths).mapToObj(length -> part(length, 2)).toList(),
                List.of(
                    new StockBoard(
                        "board", Length.mm(BOARD), Supply.unlimited(), 1, Origin.TO_BUY)),
                Length.mm(50),
                Length.ZERO,
                Length.ZERO)
            .asSheets();
    Inflated inflated = new Inflated(problem);
    long[] worth = IntStream.of(lengths).mapToLong(l -> l + random.nextInt(3)).toArray();
    Loss loss = new Loss(new long[] {1}, 110, worth, new long[] {0});
    NearPatterns near =
        new NearPatterns(
            inflated,
            loss,
            inflated.fittingDemand(),
            new int[] {Integer.MAX_VALUE},
            Work.of(Long.MAX_VALUE));
    assertThat(near.list(15).patterns()).hasSize(fillings(lengths, worth, 0, BOARD, 110 - 15));
  }

  private static int fillings(int[] lengths, long[] worth, int kind, int room, long wanted) {
    if (kind == lengths.length) {
      return wanted <= 0 ? 1 : 0;
    }
    return IntStream.rangeClosed(0, Math.min(2, room / lengths[kind]))
        .map(
            n ->
                fillings(
                    lengths, worth, kind + 1, room - n * lengths[kind], wanted - n * worth[kind]))
        .sum();
  }
}
