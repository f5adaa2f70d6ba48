package fourpin.cutting;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Column generation: solves the linear programme over the patterns known, asks for patterns that
 * the parts would pay for at their worths, and goes on until there are none.
 *
 * <p>P.C. Gilmore and R.E. Gomory, A linear programming approach to the cutting-stock problem,
 * Operations Research 9 (1961) 849-859. The bound is that of A.A. Farley, A note on bounding a
 * class of linear programming problems, including cutting stock problems, Operations Research 38
 * (1990) 922-923 (both from memory), here with limited stock as well: worths are rounded down to
 * whole numbers and everything after that is exact, so that whatever the linear programme says, the
 * bound is valid.
 */
final class Generation {
  /** Worths times the dearest panel stay below 2 to this power. */
  private static final int BITS = 40;

  /** A pattern has to be worth this much more than it costs, as a part of the cost. */
  private static final double GAIN = 1e-7;

  private final Inflated problem;
  private final long[] costs;
  private final Pricing pricing;
  private final Work work;
  private final Master master;
  private final long scale;
  private final List<Column> columns = new ArrayList<>();
  private final Set<List<Integer>> known = new HashSet<>();
  private final Sums sums;
  private long bound;

  /** How much of the worths asked before is kept in those asked next. From trials. */
  private static final double KEPT = 0.7;

  /** Where the linear programme came to. */
  record Relaxed(double value, List<Column> columns, double[] quantities, double[] worths) {}

  Generation(Inflated problem, long[] costs, Pricing pricing, Work work) {
    this.problem = problem;
    this.costs = costs;
    this.pricing = pricing;
    this.work = work;
    master = new Master(costs, work);
    int[] most = problem.panels.stream().mapToInt(p -> p.sheet().supply().most()).toArray();
    sums = new Sums(costs, most);
    long dearest = Math.max(1, Arrays.stream(costs).max().orElse(1));
    scale = Math.max(1, (1L << BITS) / dearest);
  }

  void add(Column column) {
    if (known.add(column.key())) {
      columns.add(column);
    }
  }

  /** How many patterns are known. */
  int count() {
    return columns.size();
  }

  /** The best bound so far on the cost of the whole demand, a whole number. */
  long bound() {
    return bound;
  }

  /** To the next cost possible; for a caller who knows that the bound can't be reached. */
  void raise() {
    bound = sums.atLeast(bound + 1);
  }

  /** The least cost of any layout that is no less than a number. */
  long reachable(long least) {
    return sums.atLeast(least);
  }

  long[] costs() {
    return costs;
  }

  /** What a cost of one counts as where worths are whole numbers. */
  long scale() {
    return scale;
  }

  /**
   * Solves for what is wanted.
   *
   * @param rounds of new patterns at most
   */
  Optional<Relaxed> solve(int[] wanted, int[] supply, int rounds) {
    Optional<Relaxed> best = relax(wanted, supply);
    long[] steady = best.map(this::worth).orElse(new long[wanted.length]);
    for (int round = 0; round < rounds && best.isPresent() && !work.spent(); round++) {
      steady = steadied(steady, worth(best.get()));
      if (!extend(wanted, supply, worth(best.get()), steady)) {
        return best;
      }
      best = relax(wanted, supply);
    }
    return best;
  }

  private Optional<Relaxed> relax(int[] wanted, int[] supply) {
    List<Column> useful = columns.stream().filter(column -> supply[column.panel()] > 0).toList();
    return master
        .solve(useful, wanted, supply)
        .map(s -> new Relaxed(s.value(), useful, s.quantities(), s.worths()));
  }

  private long[] worth(Relaxed relaxed) {
    long[] worth = new long[relaxed.worths.length];
    Arrays.setAll(worth, kind -> (long) (relaxed.worths[kind] * scale));
    return worth;
  }

  private static long[] steadied(long[] steady, long[] worth) {
    long[] next = new long[worth.length];
    Arrays.setAll(next, kind -> (long) (KEPT * steady[kind] + (1 - KEPT) * worth[kind]));
    return next;
  }

  /**
   * Adds patterns that pay; false when there are none. Those guessed at steadied worths come first,
   * since the worths of the linear programme jump about while few patterns are known.
   */
  private boolean extend(int[] wanted, int[] supply, long[] worth, long[] steady) {
    return guess(wanted, supply, worth, steady)
        || guess(wanted, supply, worth, worth)
        || prove(wanted, supply, worth);
  }

  private boolean guess(int[] wanted, int[] supply, long[] worth, long[] asked) {
    int before = columns.size();
    for (int panel = 0; panel < costs.length; panel++) {
      if (supply[panel] > 0) {
        addPaying(pricing.guess(panel, asked, wanted), worth);
      }
    }
    return columns.size() > before;
  }

  private boolean prove(int[] wanted, int[] supply, long[] worth) {
    int before = columns.size();
    long[] ceilings = new long[costs.length];
    for (int panel = 0; panel < costs.length; panel++) {
      if (supply[panel] > 0) {
        Pricing.Priced priced = pricing.prove(panel, worth, wanted);
        ceilings[panel] = priced.ceiling();
        addPaying(priced.columns(), worth);
      }
    }
    if (Arrays.equals(wanted, problem.fittingDemand())) {
      bound = Math.max(bound, sums.atLeast(bound(wanted, supply, worth, ceilings)));
    }
    return columns.size() > before;
  }

  private void addPaying(List<Column> found, long[] worth) {
    for (Column column : found) {
      double pays = (double) column.worth(worth) / scale;
      if (pays > costs[column.panel()] * (1 + GAIN) + GAIN) {
        add(column);
      }
    }
  }

  /**
   * The worths are shrunk until no pattern of a panel in unlimited supply is worth more than it
   * costs; panels in limited supply may be worth more, and are charged for it, each as often as
   * there are any.
   */
  private long bound(int[] wanted, int[] supply, long[] worth, long[] ceilings) {
    BigInteger cost = BigInteger.ONE;
    BigInteger ceiling = BigInteger.valueOf(scale);
    boolean first = true;
    for (int panel = 0; panel < costs.length; panel++) {
      BigInteger nextCost = BigInteger.valueOf(costs[panel]);
      BigInteger next = BigInteger.valueOf(ceilings[panel]);
      boolean tighter = nextCost.multiply(ceiling).compareTo(cost.multiply(next)) < 0;
      if (supply[panel] == Integer.MAX_VALUE && ceilings[panel] > 0 && (first || tighter)) {
        cost = nextCost;
        ceiling = next;
        first = false;
      }
    }
    return roundedUp(total(wanted, worth).multiply(cost), supply, ceilings, cost, ceiling);
  }

  private static BigInteger total(int[] wanted, long[] worth) {
    BigInteger total = BigInteger.ZERO;
    for (int kind = 0; kind < wanted.length; kind++) {
      BigInteger each = BigInteger.valueOf(worth[kind]);
      total = total.add(each.multiply(BigInteger.valueOf(wanted[kind])));
    }
    return total;
  }

  private long roundedUp(
      BigInteger total, int[] supply, long[] ceilings, BigInteger cost, BigInteger ceiling) {
    BigInteger sum = total;
    for (int panel = 0; panel < costs.length; panel++) {
      if (supply[panel] < Integer.MAX_VALUE) {
        BigInteger over =
            cost.multiply(BigInteger.valueOf(ceilings[panel]))
                .subtract(ceiling.multiply(BigInteger.valueOf(costs[panel])));
        sum = sum.subtract(over.max(BigInteger.ZERO).multiply(BigInteger.valueOf(supply[panel])));
      }
    }
    BigInteger least = sum.add(ceiling).subtract(BigInteger.ONE).divide(ceiling);
    return sum.signum() <= 0 ? 0 : least.longValueExact();
  }
}
