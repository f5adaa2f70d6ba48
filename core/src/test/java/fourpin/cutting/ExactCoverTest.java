package fourpin.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fourpin.cutting.CoverRelaxation.Solution;
import fourpin.cutting.NearPatterns.Near;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class ExactCoverTest {
  private static final int BOARD = 100;
  private static final long[] ONE_EACH = {1};
  private static final int[] NO_END = {Integer.MAX_VALUE};

  /** Every filling of a board; what it loses is what is left over. */
  private static List<Near> fillings(int[] lengths, int[] wanted, int board) {
    List<Near> found = new ArrayList<>();
    fill(lengths, wanted, 0, board, new int[lengths.length], found);
    return found;
  }

  private static void fill(
      int[] lengths, int[] wanted, int kind, int room, int[] counts, List<Near> found) {
    if (kind == lengths.length) {
      found.add(new Near(new Column(0, counts.clone(), Draft.FREE), room));
      return;
    }
    for (int n = 0; n <= Math.min(wanted[kind], room / lengths[kind]); n++) {
      counts[kind] = n;
      fill(lengths, wanted, kind + 1, room - n * lengths[kind], counts, found);
    }
    counts[kind] = 0;
  }

  private static ExactCover.Answer answer(
      ExactCover cover, int[] lengths, int[] wanted, int board, int boards) {
    long all =
        IntStream.range(0, lengths.length).mapToLong(k -> (long) lengths[k] * wanted[k]).sum();
    long left = (long) boards * board - all;
    return cover.search(fillings(lengths, wanted, board), wanted, NO_END, boards, left);
  }

  private static ExactCover cover(int board, long steps) {
    return new ExactCover(ONE_EACH, board, Work.of(steps));
  }

  /**
   * An instance of M. Fieldhouse, The duality gap in trim problems, SICUP Bulletin 5 (1990), from
   * memory: the linear programme says 259 / 132, and two boards do not do.
   */
  @ParameterizedTest
  @CsvSource({"2, NONE", "3, FOUND"})
  void decidesWhatTheLinearProgrammeDoesNot(int boards, ExactCover.Answer expected) {
    int[] lengths = {44, 33, 12};
    int[] wanted = {2, 3, 6};
    assertThat(answer(cover(132, Long.MAX_VALUE), lengths, wanted, 132, boards))
        .isEqualTo(expected);
  }

  static LongStream seeds() {
    return LongStream.range(0, 40);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void findsACuttingOfSoManyBoardsWhereThereIsOneAndElseNone(long seed) {
    Random random = new Random(seed);
    int[] lengths = random.ints(6 + random.nextInt(3), 20, 70).distinct().toArray();
    int[] wanted = random.ints(lengths.length, 1, 3).toArray();
    int least = least(parts(lengths, wanted), 0, new ArrayList<>());
    ExactCover found = cover(BOARD, Long.MAX_VALUE);
    assertThat(answer(found, lengths, wanted, BOARD, least)).isEqualTo(ExactCover.Answer.FOUND);
    assertThat(sum(found.taken(), lengths.length)).isEqualTo(wanted);
    assertThat(found.taken()).hasSizeLessThanOrEqualTo(least);
    assertThat(answer(cover(BOARD, Long.MAX_VALUE), lengths, wanted, BOARD, least - 1))
        .isEqualTo(ExactCover.Answer.NONE);
  }

  private static int[] sum(List<Column> taken, int kinds) {
    return IntStream.range(0, kinds)
        .map(kind -> taken.stream().mapToInt(column -> column.counts()[kind]).sum())
        .toArray();
  }

  private static int[] parts(int[] lengths, int[] wanted) {
    return IntStream.range(0, lengths.length)
        .flatMap(kind -> IntStream.generate(() -> lengths[kind]).limit(wanted[kind]))
        .toArray();
  }

  /** By trying every part on every board, and on a new one. */
  private static int least(int[] parts, int part, List<Integer> room) {
    if (part == parts.length) {
      return room.size();
    }
    int least = Integer.MAX_VALUE;
    for (int board = 0; board < room.size(); board++) {
      int before = room.get(board);
      if (before >= parts[part]) {
        room.set(board, before - parts[part]);
        least = Math.min(least, least(parts, part + 1, room));
        room.set(board, before);
      }
    }
    if (room.size() < fewest(parts)) {
      room.add(BOARD - parts[part]);
      least = Math.min(least, least(parts, part + 1, room));
      room.removeLast();
    }
    return least;
  }

  /** Boards that surely do: each part where it first fits. */
  private static int fewest(int[] parts) {
    List<Integer> room = new ArrayList<>();
    for (int part : Arrays.stream(parts).sorted().toArray()) {
      int board =
          IntStream.range(0, room.size()).filter(b -> room.get(b) >= part).findFirst().orElse(-1);
      if (board < 0) {
        room.add(BOARD - part);
      } else {
        room.set(board, room.get(board) - part);
      }
    }
    return room.size();
  }

  @Test
  void saysThatItDoesNotKnowWhenTheWorkIsSpent() {
    int[] lengths = {44, 33, 12};
    assertThat(answer(cover(132, 1), lengths, new int[] {2, 3, 6}, 132, 2))
        .isEqualTo(ExactCover.Answer.UNKNOWN);
  }

  /** Two kinds, of which so many patterns are held at first, all without the second kind. */
  private static Solution relaxed(Column last) {
    List<Near> near = new ArrayList<>();
    for (int i = 0; i < 1_500; i++) {
      near.add(new Near(new Column(0, new int[] {1, 0}, Draft.FREE), 0));
    }
    near.add(new Near(last, 5));
    int[] all = IntStream.range(0, near.size()).toArray();
    return new CoverRelaxation(near, 2, ONE_EACH, BOARD, Work.of(Long.MAX_VALUE))
        .solve(new CoverRest(all, new long[near.size()], new int[] {1, 1}, NO_END, 1, BOARD));
  }

  @Test
  void takesAPatternThatPaysThoughItLosesMore() {
    Solution both = relaxed(new Column(0, new int[] {1, 1}, Draft.FREE));
    assertThat(both).isInstanceOf(Solution.Taken.class);
    assertThat(((Solution.Taken) both).quantities()[1_500]).isCloseTo(1, within(1e-6));
  }

  @Test
  void saysThatWhatNeedsTwoBoardsIsTooDearForOne() {
    assertThat(relaxed(new Column(0, new int[] {0, 1}, Draft.FREE)))
        .isInstanceOf(Solution.TooDear.class);
  }
}
