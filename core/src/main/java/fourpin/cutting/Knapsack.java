package fourpin.cutting;

import java.util.Arrays;

/**
 * The best filling of a length by bounded items. The length is divided into cells, and each cell
 * keeps the best filling that ends in it, with its exact length: exact where sizes are whole
 * multiples of a cell, a good guess elsewhere.
 */
final class Knapsack {
  private static final int NONE = -1;

  private final int cells;
  private final long[] length;
  private final double[] value;
  private final int[] used;
  private final int[] last;
  private int[] choice = new int[256];
  private int[] copies = new int[256];
  private int[] before = new int[256];
  private int links;
  private long capacity = 1;
  private double cellsPerLength;
  private int highest;
  private long work;

  Knapsack(int cells) {
    this.cells = cells;
    length = new long[cells];
    value = new double[cells];
    used = new int[cells];
    last = new int[cells];
  }

  /** Starts anew with nothing in a length above zero. */
  void open(long newCapacity) {
    capacity = newCapacity;
    cellsPerLength = (cells - 1) / (double) newCapacity;
    Arrays.fill(value, NONE);
    value[0] = 0;
    length[0] = 0;
    last[0] = NONE;
    links = 0;
    highest = 0;
    work += cells;
  }

  /**
   * Offers one item: at most {@code most} copies in all, in {@code count} choices, each of its own
   * size and holding up to its own number of copies.
   */
  void offer(int most, double worth, int[] choices, long[] sizes, int[] copiesPer, int count) {
    Arrays.fill(used, 0, highest + 1, 0);
    long farthest = capacity - least(sizes, count);
    for (int cell = 0; cell <= highest && !isLonger(cell, farthest); cell++) {
      boolean again = value[cell] >= 0;
      while (again && used[cell] < most) {
        again = false;
        for (int i = 0; i < count && used[cell] < most; i++) {
          int number = Math.min(copiesPer[i], most - used[cell]);
          again |= extend(cell, choices[i], sizes[i], number, worth);
        }
      }
    }
    work += (long) (highest + 1) * count;
  }

  /**
   * Whether a filling is too long for the shortest choice, and so are all in the cells after it.
   */
  private boolean isLonger(int cell, long farthest) {
    return value[cell] >= 0 && length[cell] > farthest;
  }

  private static long least(long[] sizes, int count) {
    long least = sizes[0];
    for (int i = 1; i < count; i++) {
      least = Math.min(least, sizes[i]);
    }
    return least;
  }

  /** The share of the capacity that a length takes, in whole cells, without a slow division. */
  private int cell(long reached) {
    int about = (int) (reached * cellsPerLength);
    long over = reached * (cells - 1) - about * capacity;
    return over < 0 ? about - 1 : over >= capacity ? about + 1 : about;
  }

  /**
   * Adds to the filling of a cell; true when it grew within the cell, so that it can be extended
   * again.
   */
  private boolean extend(int cell, int chosen, long size, int number, double worth) {
    long reached = length[cell] + size;
    if (reached > capacity) {
      return false;
    }
    double worthThere = value[cell] + number * worth;
    int there = cell(reached);
    boolean better =
        worthThere > value[there] || (worthThere == value[there] && reached < length[there]);
    if (better) {
      last[there] = link(chosen, number, last[cell]);
      used[there] = used[cell] + number;
      value[there] = worthThere;
      length[there] = reached;
      highest = Math.max(highest, there);
    }
    return better && there == cell;
  }

  private int link(int chosen, int number, int previous) {
    if (links == choice.length) {
      choice = Arrays.copyOf(choice, 2 * links);
      copies = Arrays.copyOf(copies, 2 * links);
      before = Arrays.copyOf(before, 2 * links);
    }
    choice[links] = chosen;
    copies[links] = number;
    before[links] = previous;
    return links++;
  }

  /** The cell of the most valuable filling; the shortest of equals. */
  int best() {
    int best = 0;
    for (int cell = 1; cell <= highest; cell++) {
      if (value[cell] > value[best]) {
        best = cell;
      }
    }
    return best;
  }

  double value(int cell) {
    return value[cell];
  }

  /** The choices of a filling, last one first, as pairs of choice and number of copies. */
  int[] filling(int cell) {
    int size = 0;
    for (int link = last[cell]; link != NONE; link = before[link]) {
      size += 2;
    }
    int[] pairs = new int[size];
    int at = 0;
    for (int link = last[cell]; link != NONE; link = before[link]) {
      pairs[at++] = choice[link];
      pairs[at++] = copies[link];
    }
    return pairs;
  }

  /** Steps taken since the beginning, as a measure of work that does not depend on the machine. */
  long work() {
    return work;
  }
}
