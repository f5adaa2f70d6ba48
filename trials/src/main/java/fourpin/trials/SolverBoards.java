package fourpin.trials;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import fourpin.cutting.Node;
import fourpin.cutting.Part;
import fourpin.cutting.Placed;
import fourpin.cutting.SheetProblem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Lengths on boards: how many of each part lie on each board, all of them somewhere. */
final class SolverBoards implements Solver.Parts {

  private final CpModel model;
  private final List<LinearExprBuilder> areas = new ArrayList<>();
  private final Map<String, IntVar[]> counts = new LinkedHashMap<>();

  /**
   * @param problem boards as sheets that are exactly as wide as the parts
   */
  SolverBoards(CpModel model, SheetProblem problem, int most) {
    this.model = model;
    for (int i = 0; i < most; i++) {
      areas.add(LinearExpr.newBuilder());
    }
    problem.parts().forEach(this::add);
  }

  @Override
  public List<LinearExprBuilder> areas() {
    return areas;
  }

  private void add(Part part) {
    long area = Solver.units(part.length().picometres()) * Solver.units(part.width().picometres());
    IntVar[] on = new IntVar[areas.size()];
    for (int i = 0; i < on.length; i++) {
      on[i] = model.newIntVar(0, part.count(), "on");
      areas.get(i).addTerm(on[i], area);
    }
    model.addEquality(LinearExpr.sum(on), part.count());
    counts.put(part.mark(), on);
  }

  @Override
  public void start(List<List<Placed>> boards) {
    counts.forEach(
        (mark, on) -> {
          for (int i = 0; i < on.length; i++) {
            model.addHint(on[i], of(mark, boards.get(i)));
          }
        });
  }

  private static long of(String mark, List<Placed> parts) {
    return parts.stream()
        .filter(p -> p.node() instanceof Node.Finished(var of, var lay) && of.equals(mark))
        .count();
  }
}
