package fourpin.cutting;

import fourpin.cutting.Attempt.Drafted;
import fourpin.cutting.Attempt.Outcome;
import fourpin.cutting.Inflated.Panel;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Makes a cutting of boards better: takes a few boards apart and cuts their parts anew, each board
 * from the longest part on with whatever fills it best, and keeps what is no worse.
 *
 * <p>The filling is the "minimum bin slack" of J.N.D. Gupta and J.C. Ho, A new heuristic algorithm
 * for the one-dimensional bin-packing problem, Production Planning and Control 10 (1999) 598-603
 * (from memory).
 */
final class BoardRepair {
  private static final long SEED = 1;

  /** Boards taken apart at a time. */
  private static final int FEWEST = 2;

  private static final int MOST = 5;

  /** Steps allowed to fill one board; enough to try all fillings of a dozen parts. */
  private static final int STEPS_PER_BOARD = 3_000;

  /** What one repair costs besides the filling. */
  private static final int STEPS_PER_REPAIR = 100;

  /** One repair in so many starts its boards from parts drawn by lot, to get out of dead ends. */
  private static final int SHUFFLED = 3;

  private final Inflated problem;
  private final SplittableRandom random = new SplittableRandom(SEED);
  private final int[] supply;
  private final List<Board> boards = new ArrayList<>();
  private long price;
  private long work;

  /** One board: its panel and the kinds cut from it. */
  private record Board(int panel, List<Integer> kinds, long used) {}

  /**
   * Lower is better; boards that are nearly full or nearly empty are better than boards half full.
   */
  private record Score(long price, double area, double unevenness) implements Comparable<Score> {
    private static final Comparator<Score> ORDER =
        Comparator.comparingLong(Score::price)
            .thenComparingDouble(Score::area)
            .thenComparing(Comparator.comparingDouble(Score::unevenness).reversed());

    @Override
    public int compareTo(Score other) {
      return ORDER.compare(this, other);
    }
  }

  BoardRepair(Inflated problem, Outcome start) {
    this.problem = problem;
    supply = problem.panels.stream().mapToInt(p -> p.sheet().supply().most()).toArray();
    for (Drafted drafted : start.drafts()) {
      int panel = problem.panels.indexOf(drafted.panel());
      for (int i = 0; i < drafted.quantity(); i++) {
        List<Integer> kinds = new ArrayList<>();
        collect(drafted.draft(), kinds);
        add(board(panel, kinds));
      }
    }
  }

  private static void collect(Draft draft, List<Integer> kinds) {
    switch (draft) {
      case Draft.Place place -> kinds.add(place.kind());
      case Draft.Free free -> {}
      case Draft.Split split -> split.slices().forEach(slice -> collect(slice.content(), kinds));
    }
  }

  private Board board(int panel, List<Integer> kinds) {
    return new Board(panel, kinds, kinds.stream().mapToLong(this::length).sum());
  }

  private long length(int kind) {
    return problem.kinds.get(kind).length();
  }

  private void add(Board board) {
    boards.add(board);
    supply[board.panel]--;
    price += problem.panels.get(board.panel).sheet().price();
  }

  private Board remove(int index) {
    Board board = boards.get(index);
    boards.set(index, boards.getLast());
    boards.removeLast();
    supply[board.panel]++;
    price -= problem.panels.get(board.panel).sheet().price();
    return board;
  }

  /** Repairs until the bound is reached or the work is spent. */
  List<Drafted> repair(LowerBound bound, Work mostWork) {
    while (!mostWork.spent() && !bound.reachedBy(price, boards.size())) {
      long before = work;
      repairOnce();
      mostWork.spend(work - before);
    }
    return boards.stream().map(this::drafted).toList();
  }

  private void repairOnce() {
    List<Board> taken = takeApart();
    List<Integer> pool = new ArrayList<>();
    taken.forEach(board -> pool.addAll(board.kinds));
    pool.sort(Comparator.comparingLong((Integer kind) -> this.length(kind)).reversed());
    if (random.nextInt(SHUFFLED) == 0) {
      Collections.shuffle(pool, random);
    }
    List<Board> rebuilt = rebuild(pool);
    boolean better = pool.isEmpty() && score(rebuilt).compareTo(score(taken)) <= 0;
    rebuilt.forEach(board -> supply[board.panel]++);
    (better ? rebuilt : taken).forEach(this::add);
  }

  private List<Board> takeApart() {
    int number = Math.min(boards.size(), FEWEST + random.nextInt(MOST - FEWEST + 1));
    List<Board> taken = new ArrayList<>();
    work += STEPS_PER_REPAIR;
    for (int i = 0; i < number; i++) {
      taken.add(remove(i == 0 ? emptierOfTwo() : random.nextInt(boards.size())));
    }
    return taken;
  }

  private int emptierOfTwo() {
    int one = random.nextInt(boards.size());
    int two = random.nextInt(boards.size());
    return left(boards.get(one)) > left(boards.get(two)) ? one : two;
  }

  private long left(Board board) {
    return capacity(board.panel) - board.used;
  }

  /** Cuts a pool of parts, longest first; what is left in the pool did not fit. */
  private List<Board> rebuild(List<Integer> pool) {
    List<Board> rebuilt = new ArrayList<>();
    while (!pool.isEmpty()) {
      int panel = choosePanel(pool);
      if (panel < 0) {
        break;
      }
      Board board = fill(panel, pool);
      board.kinds.forEach(kind -> pool.remove(kind));
      supply[panel]--;
      rebuilt.add(board);
    }
    return rebuilt;
  }

  /**
   * Any panel that the longest part fits on; the cheapest for all that is left if one takes it all.
   */
  private int choosePanel(List<Integer> pool) {
    long all = pool.stream().mapToLong(this::length).sum();
    int any = -1;
    int seen = 0;
    int whole = -1;
    for (int panel = 0; panel < supply.length; panel++) {
      boolean fits = supply[panel] > 0 && length(pool.getFirst()) <= capacity(panel);
      if (fits && random.nextInt(++seen) == 0) {
        any = panel;
      }
      if (fits && all <= capacity(panel) && (whole < 0 || cheaper(panel, whole))) {
        whole = panel;
      }
    }
    return whole < 0 ? any : whole;
  }

  private boolean cheaper(int panel, int other) {
    long price = problem.panels.get(panel).sheet().price();
    long otherPrice = problem.panels.get(other).sheet().price();
    return price < otherPrice || (price == otherPrice && capacity(panel) < capacity(other));
  }

  private long capacity(int panel) {
    return problem.panels.get(panel).length();
  }

  /** The fullest board that starts with the longest part of the pool. */
  private Board fill(int panel, List<Integer> pool) {
    Slack slack = new Slack(pool.stream().mapToLong(this::length).toArray(), capacity(panel));
    work += slack.search();
    List<Integer> kinds = new ArrayList<>();
    for (int i : slack.best()) {
      kinds.add(pool.get(i));
    }
    return board(panel, kinds);
  }

  /** Searches the filling of one board with the least left over. */
  private static final class Slack {
    private final long[] lengths;
    private final long capacity;
    private final int[] chosen;
    private int[] best = new int[0];
    private long bestLeft = Long.MAX_VALUE;
    private int steps;

    Slack(long[] lengths, long capacity) {
      this.lengths = lengths;
      this.capacity = capacity;
      chosen = new int[lengths.length];
    }

    int search() {
      extend(0, 1, capacity - lengths[0]);
      return steps;
    }

    int[] best() {
      return best;
    }

    /**
     * {@code chosen[0..count)} are fixed, the first part always; tries every later part of another
     * length.
     */
    private void extend(int from, int count, long left) {
      steps++;
      if (left < bestLeft) {
        bestLeft = left;
        best = Arrays.copyOf(chosen, count);
      }
      for (int i = from + 1; i < lengths.length && bestLeft > 0 && steps < STEPS_PER_BOARD; i++) {
        boolean fresh = i == from + 1 || lengths[i] != lengths[i - 1];
        if (fresh && lengths[i] <= left) {
          chosen[count] = i;
          extend(i, count + 1, left - lengths[i]);
        }
      }
    }
  }

  private Score score(List<Board> some) {
    long price = 0;
    double area = 0;
    double unevenness = 0;
    for (Board board : some) {
      Panel panel = problem.panels.get(board.panel);
      price += panel.sheet().price();
      area += panel.area();
      unevenness += (double) board.used * board.used;
    }
    return new Score(price, area, unevenness);
  }

  private Drafted drafted(Board board) {
    List<Draft.Slice> slices =
        board.kinds.stream()
            .sorted(Comparator.comparingLong((Integer kind) -> length(kind)).reversed())
            .map(kind -> new Draft.Slice(length(kind), new Draft.Place(kind, Lay.STRAIGHT)))
            .toList();
    return new Drafted(
        problem.panels.get(board.panel), new Draft.Split(Direction.CROSSCUT, slices), 1);
  }
}
