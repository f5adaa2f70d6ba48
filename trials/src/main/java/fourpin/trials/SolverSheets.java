package fourpin.trials;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.NoOverlap2dConstraint;
import fourpin.cutting.Node;
import fourpin.cutting.Part;
import fourpin.cutting.Placed;
import fourpin.cutting.SheetProblem;
import fourpin.cutting.StockSheet;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Rectangles on sheets: each copy lies on one sheet, and no two of a sheet overlap. That the cuts
 * run from edge to edge is not asked, so that a layout may be better than any that a saw can cut.
 */
final class SolverSheets implements Solver.Parts {

  private final CpModel model;
  private final long length;
  private final long width;
  private final List<LinearExprBuilder> areas = new ArrayList<>();
  private final List<NoOverlap2dConstraint> apart = new ArrayList<>();
  private final Map<String, Deque<Copy>> copies = new LinkedHashMap<>();

  /** Where one copy of a part lies: on which of the sheets, and at which corner. */
  private record Copy(BoolVar[] on, IntVar x, IntVar y) {

    LinearExpr number() {
      long[] numbers = new long[on.length];
      for (int i = 0; i < on.length; i++) {
        numbers[i] = i;
      }
      return LinearExpr.weightedSum(on, numbers);
    }
  }

  SolverSheets(CpModel model, SheetProblem problem, int most) {
    this.model = model;
    StockSheet sheet = problem.stock().getFirst();
    this.length = Solver.units(sheet.length().picometres());
    this.width = Solver.units(sheet.width().picometres());
    for (int i = 0; i < most; i++) {
      areas.add(LinearExpr.newBuilder());
      apart.add(model.addNoOverlap2D());
    }
    problem.parts().forEach(this::add);
  }

  @Override
  public List<LinearExprBuilder> areas() {
    return areas;
  }

  /** Copies of one part lie on sheets in rising order. */
  private void add(Part part) {
    Deque<Copy> placed = new ArrayDeque<>();
    for (int i = 0; i < part.count(); i++) {
      Copy copy =
          place(Solver.units(part.length().picometres()), Solver.units(part.width().picometres()));
      if (!placed.isEmpty()) {
        model.addLessOrEqual(placed.getLast().number(), copy.number());
      }
      placed.addLast(copy);
    }
    copies.put(part.mark(), placed);
  }

  private Copy place(long dx, long dy) {
    IntVar x = model.newIntVar(0, length - dx, "x");
    IntVar y = model.newIntVar(0, width - dy, "y");
    BoolVar[] on = new BoolVar[areas.size()];
    for (int i = 0; i < on.length; i++) {
      on[i] = model.newBoolVar("on");
      IntervalVar along = model.newOptionalFixedSizeIntervalVar(x, dx, on[i], "along");
      IntervalVar across = model.newOptionalFixedSizeIntervalVar(y, dy, on[i], "across");
      apart.get(i).addRectangle(along, across);
      areas.get(i).addTerm(on[i], dx * dy);
    }
    model.addExactlyOne(on);
    return new Copy(on, x, y);
  }

  @Override
  public void start(List<List<Placed>> sheets) {
    for (int i = 0; i < sheets.size(); i++) {
      for (Placed part : sheets.get(i)) {
        start(part, i);
      }
    }
  }

  private void start(Placed part, int sheet) {
    String mark = ((Node.Finished) part.node()).mark();
    Copy copy = Objects.requireNonNull(copies.get(mark)).removeFirst();
    for (int i = 0; i < copy.on.length; i++) {
      model.addHint(copy.on[i], i == sheet);
    }
    model.addHint(copy.x, Solver.units(part.x().picometres()));
    model.addHint(copy.y, Solver.units(part.y().picometres()));
  }
}
