package fourpin.cutting;

import fourpin.cutting.Inflated.Panel;
import java.math.BigInteger;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToLongFunction;

/**
 * What panels can cost together: sums of their costs, each as often as there are any. A bound
 * between two such sums may be raised to the greater one, since no layout costs anything between
 * them. All in whole numbers.
 */
final class Sums {
  /** With more steps of the common measure only that is looked at. */
  private static final long MOST_STEPS = 1 << 22;

  private final TreeMap<Long, Long> supply = new TreeMap<>();
  private final long step;
  private BigInteger reached = BigInteger.ONE;
  private long known;

  /**
   * @param costs of the panels, at least zero
   * @param most there are of each
   */
  Sums(long[] costs, int[] most) {
    for (int i = 0; i < costs.length; i++) {
      if (costs[i] > 0 && most[i] > 0) {
        supply.merge(costs[i], (long) most[i], Long::sum);
      }
    }
    step = Math.max(1, Arrays.stream(costs).reduce(0, Sums::common));
  }

  static Sums of(List<Panel> panels, ToLongFunction<Panel> cost) {
    return new Sums(
        panels.stream().mapToLong(cost).toArray(),
        panels.stream().mapToInt(panel -> panel.sheet().supply().most()).toArray());
  }

  private static long common(long one, long other) {
    return other == 0 ? one : common(other, one % other);
  }

  /** Every sum is a multiple of this. */
  long step() {
    return step;
  }

  /** The least sum that is no less than a number; where none is, the next multiple of the step. */
  long atLeast(long least) {
    long from = Math.ceilDiv(least, step);
    long beyond = from + leap();
    if (beyond > MOST_STEPS || supply.isEmpty()) {
      return from * step;
    }
    if (beyond > known) {
      reach(Math.min(MOST_STEPS, 2 * beyond));
    }
    for (long sum = from; sum <= known; sum++) {
      if (reached.testBit((int) sum)) {
        return sum * step;
      }
    }
    return from * step;
  }

  /** From any number on there is a sum within so many steps, or none at all. */
  private long leap() {
    return supply.entrySet().stream()
            .filter(each -> each.getValue() >= Integer.MAX_VALUE)
            .mapToLong(Map.Entry::getKey)
            .min()
            .orElseGet(
                () -> supply.entrySet().stream().mapToLong(e -> e.getKey() * e.getValue()).sum())
        / step;
  }

  /** The bits of all sums up to so many steps. */
  private void reach(long most) {
    BigInteger within = BigInteger.ONE.shiftLeft((int) most + 1).subtract(BigInteger.ONE);
    reached = BigInteger.ONE;
    for (Map.Entry<Long, Long> each : supply.entrySet()) {
      long size = each.getKey() / step;
      long left = Math.min(each.getValue(), most / size);
      for (long times = 1; left > 0; times *= 2) {
        long taken = Math.min(times, left);
        reached = reached.or(reached.shiftLeft((int) (taken * size))).and(within);
        left -= taken;
      }
    }
    known = most;
  }
}
