package fourpin.cutting;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.function.IntToDoubleFunction;

/**
 * Portions of a demand: so many parts of each kind. Each is a number, in the manner of digits, so
 * that two portions that make up a third add up to its number.
 */
final class Portions {
  private final IntToDoubleFunction area;
  private final int[] demand;
  private final int[] ones;
  private final int all;

  /** The portions of those that were asked for: they are asked for again for every panel. */
  private final Map<Integer, int[]> known = new HashMap<>();

  /**
   * @param area of one of each kind
   * @param demand whose pairs of portions are few enough to be {@link #pairs counted}
   */
  Portions(IntToDoubleFunction area, int[] demand) {
    this.area = area;
    this.demand = demand;
    ones = new int[demand.length];
    int next = 1;
    for (int kind = 0; kind < demand.length; kind++) {
      ones[kind] = next;
      next *= demand[kind] + 1;
    }
    all = next - 1;
  }

  /** In how many ways a portion of a demand can be parted in two, all portions together. */
  static double pairs(int[] demand) {
    return Arrays.stream(demand)
        .mapToDouble(n -> (n + 1.0) * (n + 2.0) / 2)
        .reduce(1, (a, b) -> a * b);
  }

  /** The number of the whole demand, the largest; 0 is that of nothing. */
  int all() {
    return all;
  }

  /** The number of one part of a kind. */
  int one(int kind) {
    return ones[kind];
  }

  /** How many parts there are in all. */
  int parts() {
    return Arrays.stream(demand).sum();
  }

  int count(int portion, int kind) {
    return portion / ones[kind] % (demand[kind] + 1);
  }

  double area(int portion) {
    double sum = 0;
    for (int kind = 0; kind < demand.length; kind++) {
      sum += count(portion, kind) * area.applyAsDouble(kind);
    }
    return sum;
  }

  /**
   * Every portion of a portion, nothing and itself counted, from the smallest number to the
   * largest: the first and the last make up the whole, and so do the second and the last but one.
   * For reading only.
   */
  int[] of(int portion) {
    return known.computeIfAbsent(portion, this::found);
  }

  private int[] found(int portion) {
    int[] found = {0};
    for (int kind = 0; kind < demand.length; kind++) {
      found = times(found, count(portion, kind), ones[kind]);
    }
    return found;
  }

  private static int[] times(int[] found, int most, int one) {
    int[] more = Arrays.copyOf(found, found.length * (most + 1));
    for (int i = found.length; i < more.length; i++) {
      more[i] = more[i - found.length] + one;
    }
    return more;
  }
}
