package fourpin.cutting;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The most valuable filling of a board, by the table of the bounded knapsack over the lengths that
 * are multiples of a unit.
 *
 * <p>P.C. Gilmore and R.E. Gomory, A linear programming approach to the cutting-stock problem,
 * Operations Research 9 (1961) 849-859 (from memory). Where the common measure of the lengths is
 * too small, lengths are rounded down to a coarser unit: the ceiling stays valid, and a filling is
 * thinned until it fits.
 */
final class BoardPricing implements Pricing {
  private static final long MOST_CELLS = 100_000;

  /** Fillings sought at a time, each without the parts of those before it. */
  private static final int FILLINGS = 20;

  /** Cells of a table to a step of work. */
  private static final int CELLS_PER_STEP = 50;

  private final Inflated problem;
  private final Work work;

  BoardPricing(Inflated problem, Work work) {
    this.problem = problem;
    this.work = work;
  }

  @Override
  public Direction[][] ways() {
    return new Direction[][] {{Direction.CROSSCUT}};
  }

  @Override
  public double mostFilled() {
    return Double.POSITIVE_INFINITY;
  }

  @Override
  public List<Column> guess(int panel, long[] worth, int[] wanted) {
    return List.of();
  }

  @Override
  public Priced prove(int panel, long[] worth, int[] wanted) {
    int[] left = wanted.clone();
    Table first = new Table(panel, worth, left);
    List<Column> columns = new ArrayList<>();
    Table table = first;
    for (int i = 0; i < FILLINGS && table.best() > 0; i++) {
      Column column = table.column();
      columns.add(column);
      for (int kind = 0; kind < left.length; kind++) {
        left[kind] -= column.counts()[kind];
      }
      table = i + 1 < FILLINGS ? new Table(panel, worth, left) : table;
    }
    return new Priced(first.best(), columns);
  }

  /** So many copies of one kind, taken together or not at all. */
  private record Bundle(int kind, int copies, int cells) {}

  private final class Table {
    private final int panel;
    private final long capacity;
    private final List<Bundle> bundles = new ArrayList<>();
    private final long[] value;
    private final long[][] taken;

    Table(int panel, long[] worth, int[] wanted) {
      this.panel = panel;
      capacity = problem.panels.get(panel).length();
      long unit = unit();
      for (int kind = 0; kind < worth.length; kind++) {
        if (worth[kind] > 0) {
          bundle(kind, Math.min(wanted[kind], most(kind)), (int) (length(kind) / unit));
        }
      }
      value = new long[(int) (capacity / unit) + 1];
      taken = new long[bundles.size()][(value.length >> 6) + 1];
      fill(worth);
    }

    private long unit() {
      BigInteger common = BigInteger.ZERO;
      for (Inflated.Kind kind : problem.kinds) {
        common = common.gcd(BigInteger.valueOf(kind.length()));
      }
      return Math.max(common.longValueExact(), capacity / MOST_CELLS + 1);
    }

    private int most(int kind) {
      return (int) Math.min(Integer.MAX_VALUE, capacity / length(kind));
    }

    /** Bundles of 1, 2, 4, ... copies, and the rest: every number up to the most can be made. */
    private void bundle(int kind, int copies, int cells) {
      for (int size = 1, left = copies; left > 0; size *= 2) {
        int taking = Math.min(size, left);
        bundles.add(new Bundle(kind, taking, taking * cells));
        left -= taking;
      }
    }

    private void fill(long[] worth) {
      for (int b = 0; b < bundles.size(); b++) {
        Bundle bundle = bundles.get(b);
        offer(taken[b], bundle.cells, bundle.copies * worth[bundle.kind]);
      }
      work.spend((long) bundles.size() * value.length / CELLS_PER_STEP + 1);
    }

    private void offer(long[] bits, int cells, long gain) {
      for (int cell = value.length - 1; cell >= cells; cell--) {
        long with = value[cell - cells] + gain;
        if (with > value[cell]) {
          value[cell] = with;
          bits[cell >> 6] |= 1L << cell;
        }
      }
    }

    long best() {
      return value[value.length - 1];
    }

    Column column() {
      int[] counts = new int[problem.kinds.size()];
      int cell = value.length - 1;
      for (int b = bundles.size() - 1; b >= 0; b--) {
        if ((taken[b][cell >> 6] >> cell & 1) != 0) {
          counts[bundles.get(b).kind] += bundles.get(b).copies;
          cell -= bundles.get(b).cells;
        }
      }
      return new Column(panel, counts, draft(counts));
    }

    /** The longest parts first; what the rounding let in too much is left out. */
    private Draft draft(int[] counts) {
      long left = capacity;
      for (int kind : byLength(problem)) {
        counts[kind] = (int) Math.min(counts[kind], left / length(kind));
        left -= counts[kind] * length(kind);
      }
      return BoardPricing.draft(problem, counts);
    }
  }

  /** One board with so many parts of each kind, the longest first. */
  static Draft draft(Inflated problem, int[] counts) {
    List<Draft.Slice> slices = new ArrayList<>();
    for (int kind : byLength(problem)) {
      Draft.Place place = new Draft.Place(kind, Lay.STRAIGHT);
      long length = problem.kinds.get(kind).length();
      slices.addAll(Collections.nCopies(counts[kind], new Draft.Slice(length, place)));
    }
    return new Draft.Split(Direction.CROSSCUT, List.copyOf(slices));
  }

  private long length(int kind) {
    return problem.kinds.get(kind).length();
  }

  private static int[] byLength(Inflated problem) {
    return IntStream.range(0, problem.kinds.size())
        .boxed()
        .sorted(Comparator.comparingLong((Integer k) -> problem.kinds.get(k).length()).reversed())
        .mapToInt(Integer::intValue)
        .toArray();
  }
}
