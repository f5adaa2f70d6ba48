package fourpin.cutting;

import fourpin.cutting.Inflated.Option;
import fourpin.cutting.Inflated.Panel;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToLongFunction;
import java.util.stream.IntStream;

/**
 * Valuable patterns of a sheet: guessed strip by strip within the demand (see {@link Filler}), and
 * proven by the table of all guillotine patterns (see {@link GuillotineTable}), which may hold more
 * of a part than is wanted, so that its ceiling is valid but not always sharp. Where the table
 * would be too large, sizes are rounded down to a grid, which leaves the ceiling valid.
 */
final class SheetPricing implements Pricing {
  /** Larger tables are not made. */
  private static final long MOST_STEPS = 100_000_000;

  private static final int MOST_SIZES = 2_000;

  /** Cells of the grid for sizes rounded down, fewest and most; the table stays small enough. */
  private static final int FEWEST_CELLS = 250;

  private static final int MOST_CELLS = 560;

  /** Steps of a table to a step of work. */
  private static final int STEPS_PER_WORK = 30;

  /** Weight of the area beside the worth, so that room is filled with what is worth nothing. */
  private static final double AREA = 0.01;

  /** Sheets of a rest at most for which it is filled. From trials. */
  private static final double MOST_FILLED = 16;

  private final Inflated problem;
  private final Work work;
  private final Strips.Tools tools = PatternSearch.tools();

  SheetPricing(Inflated problem, Work work) {
    this.problem = problem;
    this.work = work;
  }

  @Override
  public Direction[][] ways() {
    return StripCutter.WAYS;
  }

  @Override
  public double mostFilled() {
    return MOST_FILLED;
  }

  @Override
  public List<Column> guess(int index, long[] worth, int[] wanted) {
    Panel panel = problem.panels.get(index);
    if (panel.options().isEmpty()) {
      return List.of();
    }
    long before = tools.work();
    double[] values = values(panel, worth);
    List<Column> columns = new ArrayList<>();
    for (Direction[] ways : ways()) {
      Filler filler = new Filler(panel, values, wanted.clone(), tools);
      Draft draft = filler.fill(panel.length(), panel.width(), ways);
      columns.add(Column.of(index, draft, wanted.length));
    }
    work.spend((tools.work() - before) / TOOL_STEPS_PER_WORK + 1);
    return columns;
  }

  static final int TOOL_STEPS_PER_WORK = 5;

  private double[] values(Panel panel, long[] worth) {
    double[] values = new double[worth.length];
    double perArea = 0;
    for (Option o : panel.options()) {
      perArea = Math.max(perArea, worth[o.kind()] / problem.area(o.kind()));
    }
    double share = AREA * perArea;
    Arrays.setAll(values, kind -> worth[kind] + share * problem.area(kind));
    return values;
  }

  @Override
  public Priced prove(int index, long[] worth, int[] wanted) {
    Panel panel = problem.panels.get(index);
    List<Option> options =
        panel.options().stream().filter(o -> wanted[o.kind()] > 0 && worth[o.kind()] > 0).toList();
    if (options.isEmpty()) {
      return new Priced(0, List.of());
    }
    return table(panel.length(), panel.width(), options, worth, wanted, mostSteps())
        .map(table -> priced(index, table, wanted))
        .orElseGet(() -> new Priced(ceiling(panel, options, worth, wanted), List.of()));
  }

  private long mostSteps() {
    return Math.min(MOST_STEPS / STEPS_PER_WORK, work.left()) * STEPS_PER_WORK;
  }

  private Priced priced(int index, GuillotineTable table, int[] wanted) {
    Panel panel = problem.panels.get(index);
    Draft draft = table.draft(panel.length(), panel.width());
    Column column = Column.of(index, draft, wanted.length).without(wanted);
    boolean allowed = panel.rules().allow(column.draft(), panel.length(), panel.width());
    return new Priced(table.best(), allowed ? List.of(column) : List.of());
  }

  /** No table where it would be too large, or take more work than is left. */
  private Optional<GuillotineTable> table(
      long length, long width, List<Option> options, long[] worth, int[] wanted, long most) {
    Optional<NormalSizes> lengths = sizes(length, options, Option::dx, wanted);
    Optional<NormalSizes> widths = sizes(width, options, Option::dy, wanted);
    if (lengths.isEmpty() || widths.isEmpty()) {
      return Optional.empty();
    }
    long x = lengths.get().count();
    long y = widths.get().count();
    long steps = x * y * (x + y) / 4;
    if (steps > most) {
      return Optional.empty();
    }
    work.spend(steps / STEPS_PER_WORK + 1);
    return Optional.of(new GuillotineTable(lengths.get(), widths.get(), options, worth));
  }

  private static Optional<NormalSizes> sizes(
      long limit, List<Option> options, ToLongFunction<Option> size, int[] wanted) {
    long[] each = options.stream().mapToLong(size).toArray();
    int[] copies = options.stream().mapToInt(o -> wanted[o.kind()]).toArray();
    return NormalSizes.of(limit, each, copies, MOST_SIZES);
  }

  /** From sizes rounded down to a grid: what fits side by side still does. */
  private long ceiling(Panel panel, List<Option> options, long[] worth, int[] wanted) {
    Grid along = Grid.of(panel.length(), options, Option::dx, worth);
    Grid across = Grid.of(panel.width(), options, Option::dy, worth);
    List<Option> coarse =
        options.stream()
            .map(o -> new Option(o.kind(), along.down(o.dx()), across.down(o.dy()), o.lay()))
            .toList();
    boolean lost = coarse.stream().anyMatch(o -> o.dx() == 0 || o.dy() == 0);
    return lost
        ? Long.MAX_VALUE
        : table(along.cells, across.cells, coarse, worth, wanted, MOST_STEPS).orElseThrow().best();
  }

  /** A whole, divided into so many cells. */
  private record Grid(long whole, long cells) {

    /** The grid that takes least from the sizes, by the worth of their parts. */
    static Grid of(long whole, List<Option> options, ToLongFunction<Option> size, long[] worth) {
      return IntStream.rangeClosed(FEWEST_CELLS, MOST_CELLS)
          .mapToObj(cells -> new Grid(whole, cells))
          .min(Comparator.comparingDouble(grid -> grid.lost(options, size, worth)))
          .orElseThrow();
    }

    private double lost(List<Option> options, ToLongFunction<Option> size, long[] worth) {
      double lost = 0;
      for (Option o : options) {
        double exact = (double) size.applyAsLong(o) * cells / whole;
        lost += worth[o.kind()] * (1 - down(size.applyAsLong(o)) / exact);
      }
      return lost;
    }

    long down(long size) {
      return Math.multiplyExact(size, cells) / whole;
    }
  }
}
