package fourpin.trials;

import com.google.ortools.Loader;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import fourpin.cutting.Layout;
import fourpin.cutting.Placed;
import fourpin.cutting.SheetPattern;
import fourpin.cutting.SheetProblem;
import fourpin.cutting.StockSheet;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The same problem for the constraint solver CP-SAT of OR-Tools: sheets or boards of one size,
 * parts that are not turned, no kerf, the fewest sheets. No sheet holds more than its area; what
 * else is asked is in {@link SolverSheets} and {@link SolverBoards}. A layout to start from is told
 * to it.
 */
final class Solver {

  /** Sizes of the published problems are whole numbers of it, in picometres. */
  private static final long UNIT = 10_000_000_000L;

  private static final int PROCESSORS = 2;

  private static final double SLACK = 1e-6;

  /** What came of it. @param sheets as found @param bound none needs fewer */
  record Answer(long sheets, long bound, double seconds) {}

  /** How parts come to lie on sheets. */
  interface Parts {

    /** The area of the parts on each sheet. */
    List<LinearExprBuilder> areas();

    /** Tells the solver where the parts of a layout lie, sheet by sheet. */
    void start(List<List<Placed>> sheets);
  }

  private final CpModel model = new CpModel();
  private final List<BoolVar> used = new ArrayList<>();

  private Solver() {}

  /**
   * Searches for some seconds on two processors.
   *
   * @param start a layout to begin with: no more sheets are tried
   */
  static Answer solve(PublishedRun.Task task, SheetProblem problem, Layout start, int seconds) {
    Loader.loadNativeLibraries();
    return new Solver().search(task, problem, start, seconds);
  }

  static long units(long picometres) {
    return picometres / UNIT;
  }

  private Answer search(PublishedRun.Task task, SheetProblem problem, Layout start, int seconds) {
    int most = Math.toIntExact(start.sheets());
    Parts parts =
        switch (task) {
          case PublishedRun.Task.Sheets(var sheets) -> new SolverSheets(model, sheets, most);
          case PublishedRun.Task.Boards(var boards) -> new SolverBoards(model, problem, most);
        };
    StockSheet sheet = problem.stock().getFirst();
    long area = units(sheet.length().picometres()) * units(sheet.width().picometres());
    parts.areas().forEach(on -> use(on, area));
    parts.start(sheets(start));
    model.minimize(LinearExpr.sum(used.toArray(BoolVar[]::new)));
    return solve(seconds);
  }

  private static List<List<Placed>> sheets(Layout layout) {
    return layout.patterns().stream()
        .flatMap(p -> Collections.nCopies(p.quantity(), p).stream())
        .map(SheetPattern::parts)
        .toList();
  }

  /** A sheet that is used holds no more than its area; the first ones are used first. */
  private void use(LinearExprBuilder on, long area) {
    BoolVar next = model.newBoolVar("used");
    model.addLessOrEqual(on.addTerm(next, -area), 0);
    if (!used.isEmpty()) {
      model.addImplication(next, used.getLast());
    }
    model.addHint(next, true);
    used.add(next);
  }

  private Answer solve(int seconds) {
    CpSolver solver = new CpSolver();
    solver.getParameters().setMaxTimeInSeconds(seconds).setNumWorkers(PROCESSORS);
    CpSolverStatus status = solver.solve(model);
    boolean found = status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE;
    long bound = (long) Math.ceil(solver.bestObjectiveBound() - SLACK);
    return new Answer(found ? Math.round(solver.objectiveValue()) : 0, bound, solver.wallTime());
  }
}
