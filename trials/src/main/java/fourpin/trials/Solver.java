package fourpin.trials;

import com.google.ortools.Loader;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.NoOverlap2dConstraint;
import fourpin.cutting.Part;
import fourpin.cutting.SheetProblem;
import fourpin.cutting.StockSheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The same problem for the constraint solver CP-SAT of OR-Tools: sheets of one size, parts that are
 * not turned, no kerf, the fewest sheets. Each part lies on one sheet, no two parts of a sheet
 * overlap, and no sheet holds more than its area. That the cuts run from edge to edge is not asked
 * of it, so that its layouts may be better than any that a saw can cut.
 */
final class Solver {

  /** Sizes of the published problems are whole numbers of it. */
  private static final long UNIT = 10_000_000_000L;

  private static final int PROCESSORS = 2;

  private static final double SLACK = 1e-6;

  /** What came of it. @param sheets as found @param bound none needs fewer */
  record Answer(long sheets, long bound, double seconds) {}

  private final CpModel model = new CpModel();
  private final long length;
  private final long width;
  private final List<OfSheet> sheets = new ArrayList<>();

  /** One sheet: whether it is used, the area of the parts on it, and that they do not overlap. */
  private record OfSheet(BoolVar used, LinearExprBuilder area, NoOverlap2dConstraint apart) {}

  private Solver(SheetProblem problem, int most) {
    StockSheet sheet = problem.stock().getFirst();
    this.length = units(sheet.length().picometres());
    this.width = units(sheet.width().picometres());
    for (int i = 0; i < most; i++) {
      sheets.add(
          new OfSheet(model.newBoolVar("used"), LinearExpr.newBuilder(), model.addNoOverlap2D()));
    }
    problem.parts().forEach(this::add);
  }

  /**
   * Searches for some seconds on two processors.
   *
   * @param most sheets that are enough, as is known
   */
  static Answer solve(SheetProblem problem, int most, int seconds) {
    Loader.loadNativeLibraries();
    return new Solver(problem, most).solve(seconds);
  }

  private static long units(long picometres) {
    return picometres / UNIT;
  }

  /** Copies of one part lie on sheets in rising order. */
  private void add(Part part) {
    long dx = units(part.length().picometres());
    long dy = units(part.width().picometres());
    Optional<LinearExpr> before = Optional.empty();
    for (int copy = 0; copy < part.count(); copy++) {
      LinearExpr number = place(dx, dy);
      before.ifPresent(last -> model.addLessOrEqual(last, number));
      before = Optional.of(number);
    }
  }

  /** Gives back the number of the sheet that the part lies on. */
  private LinearExpr place(long dx, long dy) {
    IntVar x = model.newIntVar(0, length - dx, "x");
    IntVar y = model.newIntVar(0, width - dy, "y");
    BoolVar[] on = new BoolVar[sheets.size()];
    long[] numbers = new long[sheets.size()];
    for (int i = 0; i < on.length; i++) {
      on[i] = model.newBoolVar("on");
      numbers[i] = i;
      IntervalVar along = model.newOptionalFixedSizeIntervalVar(x, dx, on[i], "along");
      IntervalVar across = model.newOptionalFixedSizeIntervalVar(y, dy, on[i], "across");
      sheets.get(i).apart.addRectangle(along, across);
      sheets.get(i).area.addTerm(on[i], dx * dy);
    }
    model.addExactlyOne(on);
    return LinearExpr.weightedSum(on, numbers);
  }

  private Answer solve(int seconds) {
    BoolVar[] used = sheets.stream().map(OfSheet::used).toArray(BoolVar[]::new);
    for (int i = 0; i < used.length; i++) {
      LinearExprBuilder free = sheets.get(i).area;
      model.addLessOrEqual(free.addTerm(used[i], -length * width), 0);
      if (i > 0) {
        model.addImplication(used[i], used[i - 1]);
      }
    }
    model.minimize(LinearExpr.sum(used));
    CpSolver solver = new CpSolver();
    solver.getParameters().setMaxTimeInSeconds(seconds).setNumWorkers(PROCESSORS);
    CpSolverStatus status = solver.solve(model);
    boolean found = status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE;
    long bound = (long) Math.ceil(solver.bestObjectiveBound() - SLACK);
    return new Answer(found ? Math.round(solver.objectiveValue()) : 0, bound, solver.wallTime());
  }
}
