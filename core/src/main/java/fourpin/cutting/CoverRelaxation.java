package fourpin.cutting;

import fourpin.cutting.NearPatterns.Near;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The linear programme over many patterns listed, of which it holds few: those that lose least, and
 * then those that would pay for themselves where without them a cutting would cost too much. So
 * thousands of patterns can be chosen from at the price of a few hundred.
 *
 * <p>Column generation from a pool, as in L.R. Ford and D.R. Fulkerson, A suggested computation for
 * maximal multi-commodity network flows, Management Science 5 (1958) 97-101 (from memory).
 */
final class CoverRelaxation {
  /** All patterns are held at first where they are few. */
  private static final int FEW = 1_000;

  /** And else so many for each kind. */
  private static final int HELD_PER_KIND = 2;

  /** So many more at a time. */
  private static final int MORE = 50;

  /** Times that more are added for one solution. */
  private static final int ROUNDS = 20;

  /** A cost this much above another counts as the same. */
  private static final double SAME = 1e-6;

  private final List<CoverPattern> patterns;
  private final long[] costs;
  private final long scale;
  private final Master master;
  private final boolean[] held;
  private int solved;

  /** Where it came to. */
  sealed interface Solution {
    /**
     * It may be.
     *
     * @param quantities how often each pattern is taken
     * @param rest without the patterns that would cost too much with the least for the others,
     *     where all that can be taken are held
     */
    record Taken(double[] quantities, CoverRest rest) implements Solution {}

    /** What is left costs too much, whichever of the patterns are taken. */
    record TooDear() implements Solution {}

    /** The solver found none. */
    record None() implements Solution {}
  }

  CoverRelaxation(List<Near> near, int kinds, long[] costs, long scale, Work work) {
    patterns = near.stream().map(CoverPattern::of).toList();
    this.costs = costs;
    this.scale = scale;
    master = new Master(costs, work);
    held = new boolean[near.size()];
    IntStream.range(0, held.length)
        .boxed()
        .sorted(Comparator.comparingLong(number -> near.get(number).loss()))
        .limit(near.size() <= FEW ? FEW : (long) HELD_PER_KIND * kinds)
        .forEach(number -> held[number] = true);
  }

  List<CoverPattern> patterns() {
    return patterns;
  }

  /** How many programmes have been solved. */
  int solved() {
    return solved;
  }

  Solution solve(CoverRest rest) {
    Solution solution = new Solution.None();
    for (int round = 0; round <= ROUNDS; round++) {
      int[] used = IntStream.of(rest.open()).filter(number -> held[number]).toArray();
      Optional<Master.Solved> found = solved(rest, used);
      if (found.isEmpty()) {
        return new Solution.None();
      }
      long[] worth = worth(found.get().worths());
      CoverRest narrowed = narrowed(rest, worth);
      if (narrowed.loss() < 0) {
        return new Solution.TooDear();
      }
      CoverRest next = used.length == rest.open().length ? narrowed : rest;
      solution = new Solution.Taken(spread(used, found.get().quantities()), next);
      if (found.get().value() <= rest.cost() + SAME || !hold(rest, worth)) {
        return solution;
      }
    }
    return solution;
  }

  private Optional<Master.Solved> solved(CoverRest rest, int[] used) {
    solved++;
    List<Column> columns =
        IntStream.of(used).mapToObj(number -> patterns.get(number).near().column()).toList();
    return master.solve(columns, rest.left(), rest.supply());
  }

  private double[] spread(int[] used, double[] quantities) {
    double[] all = new double[patterns.size()];
    for (int i = 0; i < used.length; i++) {
      all[used[i]] = quantities[i];
    }
    return all;
  }

  private long[] worth(double[] worths) {
    long[] worth = new long[worths.length];
    Arrays.setAll(worth, kind -> (long) (worths[kind] * scale));
    return worth;
  }

  /**
   * By these worths, every panel lifted to the dearest pattern of it. What may be lost is below
   * zero where what is left costs too much.
   */
  private CoverRest narrowed(CoverRest rest, long[] worth) {
    long[] lift = new long[costs.length];
    for (int number : rest.open()) {
      int panel = patterns.get(number).panel();
      lift[panel] = Math.max(lift[panel], gain(number, worth));
    }
    long[] losses = new long[patterns.size()];
    for (int number : rest.open()) {
      losses[number] = lift[patterns.get(number).panel()] - gain(number, worth);
    }
    Loss loss = new Loss(costs, scale, worth, lift);
    return rest.narrowed(losses, loss.most(rest.left(), rest.supply(), rest.cost()));
  }

  /** What a pattern is worth above its cost. */
  private long gain(int number, long[] worth) {
    return patterns.get(number).worth(worth) - costs[patterns.get(number).panel()] * scale;
  }

  /** Holds more of those that pay; false when there are none. */
  private boolean hold(CoverRest rest, long[] worth) {
    record Paying(int number, long gain) {}
    List<Paying> paying = new ArrayList<>();
    for (int number : rest.open()) {
      long gain = gain(number, worth);
      if (!held[number] && gain > scale * SAME) {
        paying.add(new Paying(number, gain));
      }
    }
    paying.stream()
        .sorted(Comparator.comparingLong(Paying::gain).reversed())
        .limit(MORE)
        .forEach(more -> held[more.number] = true);
    return !paying.isEmpty();
  }
}
