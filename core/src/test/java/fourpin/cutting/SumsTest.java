package fourpin.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class SumsTest {
  private static final int MANY = Integer.MAX_VALUE;

  /** Boards at 29.00 and 21.00: 0, 21, 29, 42, 50, 58, 63, 71, ... */
  @ParameterizedTest
  @CsvSource({"0, 0", "1, 2100", "2101, 2900", "4300, 5000", "4700, 5000", "5001, 5800"})
  void roundsUpToWhatBoardsCanComeTo(long least, long sum) {
    assertThat(new Sums(new long[] {2900, 2100}, new int[] {MANY, 4}).atLeast(least))
        .isEqualTo(sum);
  }

  /** Two at 21 and any number at 50: 63 is not there, since a third at 21 is not. */
  @Test
  void countsNoMoreThanThereAre() {
    Sums sums = new Sums(new long[] {21, 50, 0}, new int[] {2, MANY, 7});
    assertThat(sums.atLeast(43)).isEqualTo(50);
    assertThat(sums.atLeast(51)).isEqualTo(71);
    assertThat(sums.atLeast(93)).isEqualTo(100);
  }

  @Test
  void sheetsThatCostNothingComeToNothing() {
    assertThat(new Sums(new long[] {0}, new int[] {MANY}).atLeast(0)).isZero();
  }

  /** Too many steps for a table: the common measure alone, here 3. */
  @Test
  void roundsToTheCommonMeasureWhereTheSumsAreTooMany() {
    long dear = 3_000_000_000_003L;
    assertThat(new Sums(new long[] {dear, 3 * dear + 6}, new int[] {MANY, MANY}).atLeast(dear + 1))
        .isEqualTo(dear + 3);
  }

  static LongStream seeds() {
    return LongStream.range(0, 200);
  }

  /** Against all sums, counted out. */
  @ParameterizedTest
  @MethodSource("seeds")
  void findsTheNextOfAllSums(long seed) {
    Random random = new Random(seed);
    int measure = 1 + random.nextInt(4);
    long[] costs = new long[1 + random.nextInt(4)];
    int[] most = new int[costs.length];
    TreeSet<Long> all = new TreeSet<>(List.of(0L));
    for (int i = 0; i < costs.length; i++) {
      costs[i] = (long) measure * random.nextInt(30);
      most[i] = random.nextBoolean() ? MANY : random.nextInt(4);
      List<Long> before = new ArrayList<>(all);
      for (long times = 1; times <= Math.min(most[i], 300); times++) {
        for (long sum : before) {
          all.add(sum + times * costs[i]);
        }
      }
    }
    Sums sums = new Sums(costs, most);
    for (long least = 0; least < 150; least++) {
      Long next = all.ceiling(least);
      if (next != null) {
        assertThat(sums.atLeast(least)).isEqualTo(next);
      }
    }
  }

  /**
   * Few parts from boards of one width: the least cost over all ways to share them out among
   * boards, tried out one by one. No bound is above it, and no layout below.
   */
  @ParameterizedTest
  @MethodSource("few")
  void theBoundIsNeverAboveTheLeastCost(long seed) {
    Random random = new Random(seed);
    List<StockSheet> stock = new ArrayList<>();
    for (int i = 0; i < 1 + random.nextInt(3); i++) {
      Supply supply = i == 0 || random.nextBoolean() ? Supply.unlimited() : Supply.of(2);
      stock.add(Examples.sheet("b" + i, 40 + 15 * i, 6, supply, 10 + random.nextInt(40)));
    }
    List<Part> parts = new ArrayList<>();
    int[] lengths = new int[5 + random.nextInt(3)];
    for (int i = 0; i < lengths.length; i++) {
      lengths[i] = 5 + random.nextInt(35);
      parts.add(Examples.part("P" + i, Length.inches(lengths[i]), Length.inches(6), 1));
    }
    SheetProblem problem = new SheetProblem(parts, stock, new Saw(Length.ZERO, Trim.NONE));
    long least = least(lengths, 0, new ArrayList<>(), stock, new int[stock.size()]);
    Layout layout = new ThoroughCutter(Examples.AIMS).cut(problem);
    assertThat(layout.unplaced()).isEmpty();
    assertThat(layout.bound().price()).isLessThanOrEqualTo(least);
    assertThat(layout.price()).isEqualTo(least);
  }

  static LongStream few() {
    return LongStream.range(0, 60);
  }

  /** What is still free of a board that was taken. */
  private static long least(
      int[] lengths, int next, List<int[]> open, List<StockSheet> stock, int[] used) {
    if (next == lengths.length) {
      long cost = 0;
      for (int i = 0; i < used.length; i++) {
        cost += used[i] * stock.get(i).price();
      }
      return cost;
    }
    long best = Long.MAX_VALUE;
    for (int[] board : open) {
      if (board[0] >= lengths[next]) {
        board[0] -= lengths[next];
        best = Math.min(best, least(lengths, next + 1, open, stock, used));
        board[0] += lengths[next];
      }
    }
    for (int i = 0; i < used.length; i++) {
      int length = 40 + 15 * i;
      if (used[i] < stock.get(i).supply().most() && length >= lengths[next]) {
        used[i]++;
        List<int[]> more = new ArrayList<>(open);
        more.add(new int[] {length - lengths[next]});
        best = Math.min(best, least(lengths, next + 1, more, stock, used));
        used[i]--;
      }
    }
    return best;
  }
}
