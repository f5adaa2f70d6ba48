package fourpin.cutting;

import fourpin.cutting.CoverRelaxation.Solution;
import fourpin.cutting.NearPatterns.Near;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * Makes a cutting of no more than a given cost from patterns listed, or shows that they make none:
 * branch and bound. A kind of part is chosen, and the patterns that hold it are tried one after the
 * other, those first that the linear programme takes most of; a pattern that was tried is then out.
 * A branch is cut off when its patterns would lose too much (see {@link Loss}), or when the worths
 * of the linear programme for the rest, in whole numbers, show that the rest costs too much; so
 * rounding errors cannot cut off a cutting. A pattern taken whole leaves the rest of the solution
 * as it is. A search that comes to nothing begins anew, by lot and for longer each time, since a
 * wrong pattern near the top takes ages to be tried out.
 *
 * <p>Branching on patterns as in G. Belov and G. Scheithauer, A branch-and-cut-and-price algorithm
 * for one-dimensional stock cutting and two-dimensional two-stage cutting, European Journal of
 * Operational Research 171 (2006) 85-106; beginning anew as in C.P. Gomes, B. Selman and H. Kautz,
 * Boosting combinatorial search through randomization, AAAI (1998) 431-437 (from memory).
 */
final class ExactCover {
  private static final long SEED = 1;

  /** Branches at most; one takes some tenths of a millisecond. */
  private static final int MOST_NODES = 100_000;

  /** Linear programmes before the search begins anew by lot; from trials, as the next two. */
  private static final double FIRST_RUN = 1_500;

  /** The same for the first search by lot. */
  private static final double FIRST_BY_LOT = 100;

  /** How many times longer each search by lot is than the one before. */
  private static final double LONGER = 1.5;

  /** Patterns looked at to a step of work. */
  private static final int PATTERNS_PER_STEP = 10;

  /** A quantity this near to another counts as the same. */
  private static final double SAME = 1e-6;

  /** Before all lots, which are one at most. */
  private static final double FIRST_OF_ALL = 2;

  private final long[] costs;
  private final long scale;
  private final Work work;
  private final SplittableRandom random = new SplittableRandom(SEED);
  private final List<Column> taken = new ArrayList<>();
  private int nodes;
  private int runs;
  private double end;

  /** What came of it. */
  enum Answer {
    FOUND,
    NONE,
    /** The work was spent before. */
    UNKNOWN
  }

  ExactCover(long[] costs, long scale, Work work) {
    this.costs = costs;
    this.scale = scale;
    this.work = work;
  }

  /**
   * @param loss all patterns of a cutting together lose at most so much
   */
  Answer search(List<Near> near, int[] wanted, int[] supply, long cost, long loss) {
    int[] all = IntStream.range(0, near.size()).toArray();
    long[] losses = near.stream().mapToLong(Near::loss).toArray();
    CoverRest rest = new CoverRest(all, losses, wanted, supply, cost, loss);
    Search search = new Search(new CoverRelaxation(near, wanted.length, costs, scale, work));
    Answer answer = Answer.UNKNOWN;
    for (double run = FIRST_RUN; answer == Answer.UNKNOWN && mayGoOn(); run = longer(run)) {
      taken.clear();
      runs++;
      end = search.relaxation.solved() + run;
      answer = search.search(rest, Optional.empty());
    }
    return answer;
  }

  private double longer(double run) {
    return runs == 1 ? FIRST_BY_LOT : run * LONGER;
  }

  private boolean mayGoOn() {
    return nodes < MOST_NODES && !work.spent();
  }

  /** The patterns of the cutting that was found, each as often as it is cut. */
  List<Column> taken() {
    return List.copyOf(taken);
  }

  /** Down and back again. */
  private final class Search {
    private final CoverRelaxation relaxation;
    private final List<CoverPattern> patterns;

    Search(CoverRelaxation relaxation) {
      this.relaxation = relaxation;
      patterns = relaxation.patterns();
    }

    /**
     * @param known the solution for it, where that is known
     */
    Answer search(CoverRest before, Optional<double[]> known) {
      if (before.isNothing()) {
        return Answer.FOUND;
      }
      nodes++;
      work.spend(before.open().length / PATTERNS_PER_STEP + 1);
      if (!mayGoOn() || relaxation.solved() >= end) {
        return Answer.UNKNOWN;
      }
      CoverRest rest = before.possible(patterns, costs);
      int[] choices = rest.choices(patterns);
      int scarcest = scarcest(rest, choices);
      return switch (choices[scarcest]) {
        case 0 -> Answer.NONE;
        case 1 -> branch(rest, scarcest, known.orElseGet(this::nothing));
        default ->
            known
                .map(quantities -> branch(rest, mostDecided(rest, choices, quantities), quantities))
                .orElseGet(() -> relaxed(rest, scarcest));
      };
    }

    private double[] nothing() {
      return new double[patterns.size()];
    }

    private Answer relaxed(CoverRest rest, int scarcest) {
      return switch (relaxation.solve(rest)) {
        case Solution.TooDear() -> Answer.NONE;
        case Solution.None() -> branch(rest, scarcest, nothing());
        case Solution.Taken(double[] quantities, CoverRest narrowed) ->
            search(narrowed, Optional.of(quantities));
      };
    }

    /** The kind with a pattern that is taken most; of those that with least choice. */
    private int mostDecided(CoverRest rest, int[] choices, double[] quantities) {
      double[] most = new double[choices.length];
      for (int number : rest.open()) {
        double lot = lot(quantities[number]);
        for (int kind : patterns.get(number).kinds()) {
          most[kind] = Math.max(most[kind], lot);
        }
      }
      return IntStream.range(0, choices.length)
          .filter(kind -> rest.left()[kind] > 0)
          .boxed()
          .min(
              Comparator.comparingLong((Integer kind) -> -Math.round(most[kind] / SAME))
                  .thenComparingInt(kind -> choices[kind]))
          .orElseThrow();
    }

    private Answer branch(CoverRest rest, int kind, double[] quantities) {
      CoverRest open = rest;
      for (int number : order(rest, kind, quantities)) {
        CoverPattern one = patterns.get(number);
        taken.add(one.near().column());
        CoverRest next = open.after(number, one, costs[one.panel()]);
        Answer answer = search(next, isWhole(quantities[number]) ? less(quantities, number) : NEW);
        if (answer != Answer.NONE) {
          return answer;
        }
        taken.removeLast();
        open = open.without(number);
      }
      return Answer.NONE;
    }

    private List<Integer> order(CoverRest rest, int kind, double[] quantities) {
      record Lot(int number, double weight) {}
      return IntStream.of(rest.open())
          .filter(number -> patterns.get(number).holds(kind))
          .mapToObj(number -> new Lot(number, lot(quantities[number])))
          .sorted(Comparator.comparingDouble(lot -> -lot.weight))
          .map(Lot::number)
          .toList();
    }

    private static Optional<double[]> less(double[] quantities, int number) {
      double[] less = quantities.clone();
      less[number]--;
      return Optional.of(less);
    }
  }

  /** A rest whose solution is not known. */
  private static final Optional<double[]> NEW = Optional.empty();

  private static boolean isWhole(double quantity) {
    return quantity > 1 - SAME;
  }

  /** The first search has no lots. */
  private double lot(double quantity) {
    double lot = runs == 1 ? quantity : quantity * random.nextDouble();
    return isWhole(quantity) ? FIRST_OF_ALL : lot;
  }

  private static int scarcest(CoverRest rest, int[] choices) {
    return IntStream.range(0, choices.length)
        .filter(kind -> rest.left()[kind] > 0)
        .boxed()
        .min(Comparator.comparingInt(kind -> choices[kind]))
        .orElseThrow();
  }
}
