package fourpin.cutting;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.linear.LinearSolver;

/**
 * The linear programme over patterns: cut every part that is wanted at the least cost, patterns in
 * fractions. A part may also be left out, at a cost above any other, so that there is always an
 * answer.
 */
final class Master {

  /**
   * @param value least cost
   * @param quantities of the columns
   * @param worths what one more part of each kind would cost
   */
  record Solved(double value, double[] quantities, double[] worths) {}

  /** How much dearer than the dearest panel a part left out is. */
  private static final double LEFT_OUT = 2;

  /** What one entry of the matrix costs, in steps of work. */
  private static final int STEPS_PER_ENTRY = 4;

  private final long[] costs;
  private final Work work;

  /**
   * @param costs of the panels
   */
  Master(long[] costs, Work work) {
    this.costs = costs;
    this.work = work;
  }

  /** Empty when the solver found no solution. */
  Optional<Solved> solve(List<Column> columns, int[] wanted, int[] supply) {
    int[] kinds = indices(wanted, most -> most > 0);
    int[] scarce = indices(supply, most -> most < Integer.MAX_VALUE);
    LinearSolver.Builder programme = LinearSolver.newBuilder(objective(columns, kinds.length));
    programme.lower(0.0);
    for (int row = 0; row < kinds.length; row++) {
      programme.inequality(-wanted[kinds[row]], cover(columns, kinds, row, wanted));
    }
    for (int panel : scarce) {
      programme.inequality(supply[panel], uses(columns, kinds.length, panel));
    }
    work.spend((long) STEPS_PER_ENTRY * (kinds.length + 1) * (columns.size() + kinds.length));
    return solved(programme.build().solve(), columns.size(), kinds, wanted.length);
  }

  private interface Test {
    boolean holds(int number);
  }

  private static int[] indices(int[] numbers, Test test) {
    int[] all = new int[numbers.length];
    int count = 0;
    for (int i = 0; i < numbers.length; i++) {
      if (test.holds(numbers[i])) {
        all[count++] = i;
      }
    }
    return Arrays.copyOf(all, count);
  }

  private double[] objective(List<Column> columns, int rows) {
    double[] cost = new double[columns.size() + rows];
    Arrays.fill(cost, LEFT_OUT * (1 + Arrays.stream(costs).max().orElse(0)));
    for (int i = 0; i < columns.size(); i++) {
      cost[i] = costs[columns.get(i).panel()];
    }
    return cost;
  }

  /** Turned about, since the solver knows only upper limits. */
  private static double[] cover(List<Column> columns, int[] kinds, int row, int[] wanted) {
    double[] entries = new double[columns.size() + kinds.length];
    int kind = kinds[row];
    for (int i = 0; i < columns.size(); i++) {
      entries[i] = -Math.min(columns.get(i).counts()[kind], wanted[kind]);
    }
    entries[columns.size() + row] = -1;
    return entries;
  }

  private static double[] uses(List<Column> columns, int rows, int panel) {
    double[] entries = new double[columns.size() + rows];
    for (int i = 0; i < columns.size(); i++) {
      entries[i] = columns.get(i).panel() == panel ? 1 : 0;
    }
    return entries;
  }

  private static Optional<Solved> solved(
      Optimisation.Result result, int columns, int[] kinds, int allKinds) {
    if (!result.getState().isOptimal() || result.getDualSolution().isEmpty()) {
      return Optional.empty();
    }
    double[] quantities = new double[columns];
    Arrays.setAll(quantities, i -> Math.max(0, result.doubleValue(i)));
    var duals = result.getDualSolution().get().get();
    double[] worths = new double[allKinds];
    for (int row = 0; row < kinds.length; row++) {
      worths[kinds[row]] = Math.max(0, duals.doubleValue(row));
    }
    return Optional.of(new Solved(result.getValue(), quantities, worths));
  }
}
