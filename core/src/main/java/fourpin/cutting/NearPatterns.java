package fourpin.cutting;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;

/**
 * Lists the crosscut patterns that lose little (see {@link Loss}): kind by kind, leaving off where
 * the best filling of the rest, from the table of the bounded knapsack, would lose too much. Also
 * patterns to which another part could be added, so that every cutting is made of patterns listed.
 */
final class NearPatterns {
  /** More are too many to choose from. */
  private static final int MOST_PATTERNS = 25_000;

  /** Cells of the tables of all kinds together. */
  private static final long MOST_CELLS = 4_000_000;

  /** Cells of a table to a step of work. */
  private static final int CELLS_PER_STEP = 50;

  /** When there are too many, so many tenths of the loss are tried next. */
  private static final int LESS = 7;

  private final Inflated problem;
  private final Loss loss;
  private final int[] wanted;
  private final Work work;
  private final List<OfPanel> panels = new ArrayList<>();
  private final List<Near> found = new ArrayList<>();
  private long most;

  /** A pattern and what it loses. */
  record Near(Column column, long loss) {}

  /** All patterns that lose no more than {@code most}. */
  record Listed(List<Near> patterns, long most) {
    static final Listed NONE = new Listed(List.of(), -1);
  }

  NearPatterns(Inflated problem, Loss loss, int[] wanted, int[] supply, Work work) {
    this.problem = problem;
    this.loss = loss;
    this.wanted = wanted;
    this.work = work;
    for (int panel = 0; panel < supply.length; panel++) {
      if (supply[panel] > 0) {
        panels.add(new OfPanel(panel));
      }
    }
  }

  /**
   * Those that lose as much as may be lost, or where they are too many, less; none where too many
   * lose next to nothing.
   *
   * @param mayLose at least zero
   */
  Listed list(long mayLose) {
    most = mayLose;
    while (!listed() && most > 0) {
      most = most / 10 * LESS;
    }
    return isTooMany() ? Listed.NONE : new Listed(List.copyOf(found), most);
  }

  private boolean listed() {
    found.clear();
    panels.forEach(OfPanel::list);
    return !isTooMany();
  }

  private boolean isTooMany() {
    return found.size() > MOST_PATTERNS;
  }

  private long length(int kind) {
    return problem.kinds.get(kind).length();
  }

  /** The patterns of one panel. */
  private final class OfPanel {
    private final int panel;
    private final long capacity;
    private final long unit;

    /** The most that the kinds from each on are worth in so many units. */
    private final long[][] best;

    private final int[] counts = new int[wanted.length];

    OfPanel(int panel) {
      this.panel = panel;
      capacity = problem.panels.get(panel).length();
      unit = unit();
      best = new long[wanted.length + 1][(int) (capacity / unit) + 1];
      for (int kind = wanted.length - 1; kind >= 0; kind--) {
        best[kind] = best[kind + 1].clone();
        fill(best[kind], kind);
      }
    }

    /** Lengths are rounded down to it, so that the worths are never too small. */
    private long unit() {
      BigInteger common = BigInteger.ZERO;
      for (Inflated.Kind kind : problem.kinds) {
        common = common.gcd(BigInteger.valueOf(kind.length()));
      }
      return Math.max(common.longValueExact(), capacity / (MOST_CELLS / (wanted.length + 1)) + 1);
    }

    private void fill(long[] value, int kind) {
      int cells = (int) (length(kind) / unit);
      long copies = Math.min(wanted[kind], capacity / length(kind));
      for (int size = 1; copies > 0; size *= 2) {
        int taken = (int) Math.min(size, copies);
        for (int cell = value.length - 1; cell >= taken * cells; cell--) {
          long with = value[cell - taken * cells] + taken * loss.worth()[kind];
          value[cell] = Math.max(value[cell], with);
        }
        work.spend(value.length / CELLS_PER_STEP + 1);
        copies -= taken;
      }
    }

    void list() {
      extend(0, capacity, loss.ofEmpty(panel));
    }

    /**
     * @param lost what the pattern would lose without any more parts
     */
    private void extend(int from, long left, long lost) {
      work.spend(1);
      if (lost <= most) {
        found.add(new Near(new Column(panel, counts.clone(), Draft.FREE), lost));
      }
      for (int kind = from; kind < wanted.length && hopeful(kind, left, lost); kind++) {
        int fitting = (int) Math.min(wanted[kind], left / length(kind));
        for (int count = 1; count <= fitting; count++) {
          counts[kind] = count;
          extend(kind + 1, left - count * length(kind), lost - count * loss.worth()[kind]);
        }
        counts[kind] = 0;
      }
    }

    private boolean hopeful(int kind, long left, long lost) {
      return lost - best[kind][(int) (left / unit)] <= most && !isTooMany();
    }
  }

  /** Each with its parts in their places. */
  static List<Column> cut(Inflated problem, List<Column> columns) {
    return columns.stream()
        .map(c -> new Column(c.panel(), c.counts(), BoardPricing.draft(problem, c.counts())))
        .toList();
  }
}
