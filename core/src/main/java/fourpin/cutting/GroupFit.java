package fourpin.cutting;

import java.util.List;
import java.util.Optional;

/**
 * Looks for a whole sheet that holds all parts that must share one, in a hurry: what it finds is
 * there, what it does not find may be.
 */
public final class GroupFit {

  private GroupFit() {}

  /** The first stock of a problem, of which one is found to hold a group of it. */
  public static Optional<StockSheet> found(SheetProblem problem, Together group) {
    return problem.stock().stream().filter(sheet -> holds(problem, group, sheet)).findFirst();
  }

  private static boolean holds(SheetProblem problem, Together group, StockSheet sheet) {
    List<Part> parts =
        problem.parts().stream().filter(part -> group.marks().contains(part.mark())).toList();
    Ties ties = problem.ties().ofMatched().among(parts);
    List<StockSheet> one = List.of(sheet.with(Supply.of(1)));
    SheetProblem alone = new SheetProblem(parts, one, problem.saw(), ties);
    Layout strips = new StripCutter().cut(alone);
    Layout best = DefectCutter.isFor(alone) ? strips : FewParts.best(alone, strips);
    return best.unplaced().isEmpty();
  }
}
