package fourpin.cutting;

import fourpin.cutting.NearPatterns.Near;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Makes a cutting of no more than a given cost from patterns listed, or shows that they make none:
 * branch and bound. A kind of part is chosen, and the patterns that hold it are tried one after the
 * other, those first that the linear programme takes most of; a pattern that was tried is then out.
 * A branch is cut off when its patterns would lose too much (see {@link Loss}), or when the worths
 * of the linear programme for the rest, in whole numbers, show that the rest costs too much; so
 * rounding errors cannot cut off a cutting.
 *
 * <p>Branching on patterns as in G. Belov and G. Scheithauer, A branch-and-cut-and-price algorithm
 * for one-dimensional stock cutting and two-dimensional two-stage cutting, European Journal of
 * Operational Research 171 (2006) 85-106.
 */
final class ExactCover {
  /** Branches at most; one takes about a millisecond. */
  private static final int MOST_NODES = 20_000;

  /** A quantity this near to another counts as the same. */
  private static final double SAME = 1e-6;

  private final long scale;
  private final long[] costs;
  private final Master master;
  private final Work work;
  private final List<Column> taken = new ArrayList<>();
  private int nodes;

  /** What came of it. */
  enum Answer {
    FOUND,
    NONE,
    /** The work was spent before. */
    UNKNOWN
  }

  /**
   * What is still to be cut, from which patterns, and how much it may cost and lose.
   *
   * @param near patterns that can still be taken
   */
  private record Rest(List<Near> near, int[] left, int[] supply, long cost, long loss) {

    boolean isNothing() {
      return Arrays.stream(left).allMatch(count -> count == 0);
    }

    Rest after(Near taken, long price) {
      int[] less = left.clone();
      Arrays.setAll(less, kind -> less[kind] - taken.column().counts()[kind]);
      int[] stock = supply.clone();
      stock[taken.column().panel()]--;
      return new Rest(near, less, stock, cost - price, loss - taken.loss());
    }

    Rest without(Near tried) {
      List<Near> others = near.stream().filter(other -> !other.equals(tried)).toList();
      return new Rest(others, left, supply, cost, loss);
    }

    Rest possible(long[] costs) {
      List<Near> possible = near.stream().filter(n -> isPossible(n, costs)).toList();
      return new Rest(possible, left, supply, cost, loss);
    }

    private boolean isPossible(Near one, long[] costs) {
      int panel = one.column().panel();
      return one.loss() <= loss
          && costs[panel] <= cost
          && supply[panel] > 0
          && one.column().most(left) > 0;
    }

    /** How many patterns hold each kind. */
    int[] choices() {
      int[] choices = new int[left.length];
      for (Near one : near) {
        for (int kind = 0; kind < left.length; kind++) {
          choices[kind] += Math.min(1, one.column().counts()[kind]);
        }
      }
      return choices;
    }
  }

  ExactCover(long[] costs, long scale, Work work) {
    this.costs = costs;
    this.scale = scale;
    this.work = work;
    master = new Master(costs, work);
  }

  /**
   * @param loss all patterns of a cutting together lose at most so much
   */
  Answer search(List<Near> near, int[] wanted, int[] supply, long cost, long loss) {
    return search(new Rest(near, wanted, supply, cost, loss));
  }

  /** The patterns of the cutting that was found, each as often as it is cut. */
  List<Column> taken() {
    return List.copyOf(taken);
  }

  private Answer search(Rest before) {
    if (before.isNothing()) {
      return Answer.FOUND;
    }
    if (++nodes > MOST_NODES || work.spent()) {
      return Answer.UNKNOWN;
    }
    Rest rest = before.possible(costs);
    int[] choices = rest.choices();
    int scarcest = scarcest(rest, choices);
    return switch (choices[scarcest]) {
      case 0 -> Answer.NONE;
      case 1 -> branch(rest, scarcest, new double[rest.near.size()]);
      default -> relaxed(rest, choices, scarcest);
    };
  }

  private static int scarcest(Rest rest, int[] choices) {
    return IntStream.range(0, choices.length)
        .filter(kind -> rest.left[kind] > 0)
        .boxed()
        .min(Comparator.comparingInt(kind -> choices[kind]))
        .orElseThrow();
  }

  private Answer relaxed(Rest rest, int[] choices, int scarcest) {
    List<Column> columns = rest.near.stream().map(Near::column).toList();
    Optional<Master.Solved> solved = master.solve(columns, rest.left, rest.supply);
    if (solved.isPresent() && costsTooMuch(rest, solved.get().worths())) {
      return Answer.NONE;
    }
    double[] quantities =
        solved.map(Master.Solved::quantities).orElse(new double[rest.near.size()]);
    int kind = solved.isPresent() ? mostDecided(rest, choices, quantities) : scarcest;
    return branch(rest, kind, quantities);
  }

  /**
   * Whether the worth of what is left is above the cost allowed, even if every panel holds as much
   * as the dearest pattern of it.
   */
  private boolean costsTooMuch(Rest rest, double[] worths) {
    long[] worth = new long[worths.length];
    Arrays.setAll(worth, kind -> (long) (worths[kind] * scale));
    long[] lift = new long[costs.length];
    for (Near one : rest.near) {
      int panel = one.column().panel();
      lift[panel] = Math.max(lift[panel], one.column().worth(worth) - costs[panel] * scale);
    }
    return new Loss(costs, scale, worth, lift).most(rest.left, rest.supply, rest.cost) < 0;
  }

  /** The kind with a pattern that is taken most, once at most; of those that with least choice. */
  private static int mostDecided(Rest rest, int[] choices, double[] quantities) {
    double[] most = new double[choices.length];
    for (int i = 0; i < quantities.length; i++) {
      int[] counts = rest.near.get(i).column().counts();
      for (int kind = 0; kind < counts.length; kind++) {
        double taken = counts[kind] > 0 ? Math.min(1, quantities[i]) : 0;
        most[kind] = Math.max(most[kind], taken);
      }
    }
    return IntStream.range(0, choices.length)
        .filter(kind -> rest.left[kind] > 0)
        .boxed()
        .min(
            Comparator.comparingLong((Integer kind) -> -Math.round(most[kind] / SAME))
                .thenComparingInt(kind -> choices[kind]))
        .orElseThrow();
  }

  private Answer branch(Rest rest, int kind, double[] quantities) {
    List<Integer> order =
        IntStream.range(0, quantities.length)
            .filter(i -> rest.near.get(i).column().counts()[kind] > 0)
            .boxed()
            .sorted(Comparator.comparingDouble(i -> -quantities[i]))
            .toList();
    Rest open = rest;
    for (int i : order) {
      Near one = rest.near.get(i);
      taken.add(one.column());
      Answer answer = search(open.after(one, costs[one.column().panel()]));
      if (answer != Answer.NONE) {
        return answer;
      }
      taken.removeLast();
      open = open.without(one);
    }
    return Answer.NONE;
  }
}
