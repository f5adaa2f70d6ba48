package fourpin.boring;

import fourpin.casework.Axis;
import fourpin.casework.Box;
import fourpin.casework.Part;
import fourpin.job.Shelves;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Puts the shelves of one opening on its levels: the best of all ways that keep their order and let
 * none overlap, found by going through shelves and levels once (dynamic programming).
 *
 * <p>Evenly spread shelves: least sum of the squares of all openings, which is the most equal
 * openings because their sum is fixed. Shelves at stated heights: least sum of the ways that they
 * are moved. Among equals the lower levels.
 */
final class Seating {

  private static final long NONE = Long.MAX_VALUE;
  private static final long PM_PER_MICROMETRE = 1_000_000;

  private final Box opening;
  private final List<Part> shelves;
  private final List<Length> undersides;
  private final Shelves.Placing placing;

  private Seating(
      Box opening, List<Part> shelves, List<Length> undersides, Shelves.Placing placing) {
    this.opening = opening;
    this.shelves = shelves;
    this.undersides = undersides;
    this.placing = placing;
  }

  /**
   * The place of each shelf's level in {@code undersides}.
   *
   * @param shelves from the bottom up, at their planned heights
   * @param undersides that the levels give a shelf, rising
   * @return empty if the levels can't take so many shelves
   */
  static Optional<List<Integer>> choose(
      Box opening, List<Part> shelves, List<Length> undersides, Shelves.Placing placing) {
    return new Seating(opening, shelves, undersides, placing).best();
  }

  private Optional<List<Integer>> best() {
    int levels = undersides.size();
    long[][] cost = new long[shelves.size()][levels];
    int[][] from = new int[shelves.size()][levels];
    for (int shelf = 0; shelf < shelves.size(); shelf++) {
      for (int level = 0; level < levels; level++) {
        settle(shelf, level, cost, from);
      }
    }
    return trace(cost, from);
  }

  private void settle(int shelf, int level, long[][] cost, int[][] from) {
    cost[shelf][level] = NONE;
    if (!fitsOpening(shelf, level)) {
      return;
    }
    if (shelf == 0) {
      cost[0][level] = step(0, level, opening.low().z());
      return;
    }
    for (int below = 0; below < level; below++) {
      Length top = top(shelf - 1, below);
      if (cost[shelf - 1][below] != NONE && bottom(shelf, level).isAtLeast(top)) {
        long sum = cost[shelf - 1][below] + step(shelf, level, top);
        if (sum < cost[shelf][level]) {
          cost[shelf][level] = sum;
          from[shelf][level] = below;
        }
      }
    }
  }

  private boolean fitsOpening(int shelf, int level) {
    return bottom(shelf, level).isAtLeast(opening.low().z())
        && opening.high().z().isAtLeast(top(shelf, level));
  }

  /** Of the shelf and of a strip that hangs below it. */
  private Length bottom(int shelf, int level) {
    return undersides.get(level).minus(shelves.get(shelf).hang());
  }

  private Length top(int shelf, int level) {
    return undersides.get(level).plus(shelves.get(shelf).box().size(Axis.Z));
  }

  private long step(int shelf, int level, Length below) {
    return switch (placing) {
      case Shelves.Placing.Evenly _ -> square(undersides.get(level).minus(below));
      case Shelves.Placing.AtHeights _ ->
          micrometres(undersides.get(level).minus(shelves.get(shelf).box().low().z()).abs());
    };
  }

  private long last(int level) {
    return switch (placing) {
      case Shelves.Placing.Evenly _ ->
          square(opening.high().z().minus(top(shelves.size() - 1, level)));
      case Shelves.Placing.AtHeights _ -> 0;
    };
  }

  private Optional<List<Integer>> trace(long[][] cost, int[][] from) {
    long[] end = cost[shelves.size() - 1];
    int best = -1;
    long least = NONE;
    for (int level = 0; level < end.length; level++) {
      if (end[level] != NONE && end[level] + last(level) < least) {
        least = end[level] + last(level);
        best = level;
      }
    }
    return best < 0 ? Optional.empty() : Optional.of(back(best, from));
  }

  private List<Integer> back(int best, int[][] from) {
    Integer[] chosen = new Integer[shelves.size()];
    int level = best;
    for (int shelf = shelves.size() - 1; shelf >= 0; shelf--) {
      chosen[shelf] = level;
      level = from[shelf][level];
    }
    return new ArrayList<>(Arrays.asList(chosen));
  }

  private static long square(Length length) {
    long micrometres = micrometres(length);
    return micrometres * micrometres;
  }

  private static long micrometres(Length length) {
    return length.picometres() / PM_PER_MICROMETRE;
  }
}
