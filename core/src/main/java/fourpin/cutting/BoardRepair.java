package fourpin.cutting;

import fourpin.cutting.Attempt.Drafted;
import fourpin.cutting.Attempt.Outcome;
import fourpin.cutting.Inflated.Panel;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

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
  private final long[] lengths;
  private final long[] capacities;

  /** The place of each kind from the longest to the shortest, and the kinds in their places. */
  private final int[] places;

  private final int[] kinds;
  private final List<Board> boards = new ArrayList<>();
  private long price;
  private long work;

  /** One board: its panel, and the kinds cut from it by their places. */
  private record Board(int panel, int[] parts, long used) {}

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
    kinds =
        IntStream.range(0, problem.kinds.size())
            .boxed()
            .sorted(
                Comparator.comparingLong((Integer k) -> problem.kinds.get(k).length()).reversed())
            .mapToInt(Integer::intValue)
            .toArray();
    places = new int[kinds.length];
    lengths = IntStream.of(kinds).mapToLong(kind -> problem.kinds.get(kind).length()).toArray();
    for (int place = 0; place < kinds.length; place++) {
      places[kinds[place]] = place;
    }
    capacities = problem.panels.stream().mapToLong(Panel::length).toArray();
    start.drafts().forEach(this::add);
  }

  private void add(Drafted drafted) {
    IntStream.Builder parts = IntStream.builder();
    collect(drafted.draft(), parts);
    Board board = board(problem.panels.indexOf(drafted.panel()), parts.build().toArray());
    for (int i = 0; i < drafted.quantity(); i++) {
      add(board);
    }
  }

  private void collect(Draft draft, IntStream.Builder parts) {
    switch (draft) {
      case Draft.Place place -> parts.add(places[place.kind()]);
      case Draft.Free free -> {}
      case Draft.Split split -> split.slices().forEach(slice -> collect(slice.content(), parts));
    }
  }

  private Board board(int panel, int[] parts) {
    return new Board(panel, parts, length(parts));
  }

  /** Of all together. */
  private long length(int[] parts) {
    long sum = 0;
    for (int part : parts) {
      sum += lengths[part];
    }
    return sum;
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
    List<Board> rebuilt = rebuild(pool(taken));
    boolean better = parts(rebuilt) == parts(taken) && score(rebuilt).compareTo(score(taken)) <= 0;
    rebuilt.forEach(board -> supply[board.panel]++);
    (better ? rebuilt : taken).forEach(this::add);
  }

  /** The parts of some boards, the longest first or by lot. */
  private int[] pool(List<Board> some) {
    int[] pool = new int[parts(some)];
    int count = 0;
    for (Board board : some) {
      System.arraycopy(board.parts, 0, pool, count, board.parts.length);
      count += board.parts.length;
    }
    Arrays.sort(pool);
    if (random.nextInt(SHUFFLED) == 0) {
      shuffle(pool);
    }
    return pool;
  }

  private static int parts(List<Board> some) {
    int parts = 0;
    for (Board board : some) {
      parts += board.parts.length;
    }
    return parts;
  }

  private void shuffle(int[] pool) {
    for (int i = pool.length - 1; i > 0; i--) {
      int other = random.nextInt(i + 1);
      int part = pool[i];
      pool[i] = pool[other];
      pool[other] = part;
    }
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
    return capacities[board.panel] - board.used;
  }

  /** Cuts a pool of parts, in their order, as far as there are boards. */
  private List<Board> rebuild(int[] pool) {
    List<Board> rebuilt = new ArrayList<>();
    int[] left = pool;
    int panel = choosePanel(left);
    while (panel >= 0) {
      int[] chosen = fill(panel, left);
      rebuilt.add(board(panel, at(chosen, left)));
      supply[panel]--;
      left = without(chosen, left);
      panel = left.length == 0 ? -1 : choosePanel(left);
    }
    return rebuilt;
  }

  private static int[] at(int[] chosen, int[] pool) {
    int[] parts = new int[chosen.length];
    for (int i = 0; i < parts.length; i++) {
      parts[i] = pool[chosen[i]];
    }
    return parts;
  }

  private static int[] without(int[] chosen, int[] pool) {
    int[] left = new int[pool.length - chosen.length];
    int passed = 0;
    for (int i = 0; i < pool.length; i++) {
      if (passed < chosen.length && chosen[passed] == i) {
        passed++;
      } else {
        left[i - passed] = pool[i];
      }
    }
    return left;
  }

  /**
   * Any panel that the first part fits on; the cheapest for all that is left if one takes it all.
   */
  private int choosePanel(int[] pool) {
    long all = length(pool);
    int any = -1;
    int seen = 0;
    int whole = -1;
    for (int panel = 0; panel < supply.length; panel++) {
      boolean fits = supply[panel] > 0 && lengths[pool[0]] <= capacities[panel];
      if (fits && random.nextInt(++seen) == 0) {
        any = panel;
      }
      if (fits && all <= capacities[panel] && (whole < 0 || cheaper(panel, whole))) {
        whole = panel;
      }
    }
    return whole < 0 ? any : whole;
  }

  private boolean cheaper(int panel, int other) {
    long price = problem.panels.get(panel).sheet().price();
    long otherPrice = problem.panels.get(other).sheet().price();
    return price < otherPrice || (price == otherPrice && capacities[panel] < capacities[other]);
  }

  /** Which parts fill a board most that starts with the first part of the pool. */
  private int[] fill(int panel, int[] pool) {
    long[] each = new long[pool.length];
    for (int i = 0; i < each.length; i++) {
      each[i] = lengths[pool[i]];
    }
    Slack slack = new Slack(each, capacities[panel]);
    work += slack.search();
    return slack.best();
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
        Arrays.stream(board.parts)
            .sorted()
            .mapToObj(
                part -> new Draft.Slice(lengths[part], new Draft.Place(kinds[part], Lay.STRAIGHT)))
            .toList();
    return new Drafted(
        problem.panels.get(board.panel), new Draft.Split(Direction.CROSSCUT, slices), 1);
  }
}
