package fourpin.cutting;

import fourpin.cutting.ClearPieces.Cuts;
import fourpin.cutting.DefectCutter.Way;
import fourpin.cutting.Inflated.Panel;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Puts what is left out on boards with defects that are not taken yet, each cut round a clear place
 * for one of the parts: so none is left out that such a board holds. What is left out in the end is
 * told with the reason that holds for whole boards. Groups of several parts are not looked at.
 */
final class LastPlaces {
  private final SheetProblem problem;
  private final Way way;
  private final SheetCutter clear;
  private final List<SheetPattern> patterns;
  private List<Unplaced> left;

  private LastPlaces(SheetProblem problem, Way way, SheetCutter clear, Layout layout) {
    this.problem = problem;
    this.way = way;
    this.clear = clear;
    patterns = new ArrayList<>(layout.patterns());
    left = layout.unplaced();
  }

  /**
   * A layout with what still has a place.
   *
   * @param clear lays out on the clear pieces
   */
  static Layout filled(SheetProblem problem, Way way, SheetCutter clear, Layout layout) {
    return layout.unplaced().isEmpty()
        ? layout
        : new LastPlaces(problem, way, clear, layout).filled();
  }

  /** Of each board the first place found for one of the parts of a layout's left out. */
  static Map<StockSheet, ClearPlace> places(SheetProblem problem, List<Unplaced> left) {
    Map<StockSheet, ClearPlace> places = new HashMap<>();
    SheetProblem rest = rest(problem, left, problem.stock());
    Inflated inflated = new Inflated(rest);
    inflated.panels.forEach(p -> place(inflated, p).ifPresent(its -> places.put(p.sheet(), its)));
    return places;
  }

  private static Optional<ClearPlace> place(Inflated inflated, Panel panel) {
    return IntStream.range(0, inflated.kinds.size())
        .boxed()
        .filter(kind -> !panel.sheet().defects().isEmpty())
        .flatMap(kind -> ClearPlace.of(inflated, panel, kind).stream())
        .findFirst();
  }

  private Layout filled() {
    Set<String> taken =
        patterns.stream().map(pattern -> pattern.sheet().name()).collect(Collectors.toSet());
    problem.stock().stream()
        .filter(board -> !board.defects().isEmpty() && !taken.contains(board.name()))
        .filter(board -> board.supply().most() > 0)
        .forEach(this::fill);
    List<Unplaced> told = left.stream().map(this::told).toList();
    return new Layout(patterns, told, Bounds.ofPlaced(problem, told));
  }

  private void fill(StockSheet board) {
    SheetProblem rest = rest(problem, left, List.of(board));
    Inflated inflated = new Inflated(rest);
    place(inflated, inflated.panels.getFirst())
        .map(its -> DefectCutter.once(rest, way.with(board, Cuts.around(its)), clear))
        .ifPresent(this::take);
  }

  private void take(Layout more) {
    patterns.addAll(more.patterns());
    List<Unplaced> grouped = left.stream().filter(out -> isOfSeveral(problem, out)).toList();
    left = new ArrayList<>(grouped);
    left.addAll(more.unplaced());
  }

  /** Whether it has to share its sheet with others. */
  private static boolean isOfSeveral(SheetProblem problem, Unplaced out) {
    List<String> marks = problem.ties().together(out.mark()).map(Together::marks).orElse(List.of());
    return problem.parts().stream()
            .filter(part -> marks.contains(part.mark()))
            .mapToInt(Part::count)
            .sum()
        > 1;
  }

  private static SheetProblem rest(
      SheetProblem problem, List<Unplaced> left, List<StockSheet> stock) {
    Map<String, Integer> counts =
        left.stream()
            .filter(out -> !isOfSeveral(problem, out))
            .collect(Collectors.toMap(Unplaced::mark, Unplaced::count, Integer::sum));
    List<Part> parts =
        problem.parts().stream()
            .filter(part -> counts.containsKey(part.mark()))
            .map(part -> part.times(counts.getOrDefault(part.mark(), 0)))
            .toList();
    return new SheetProblem(parts, stock, problem.saw(), problem.ties().ofMatched().among(parts));
  }

  private Unplaced told(Unplaced out) {
    Inflated whole = new Inflated(problem);
    Unplaced.Reason own = new Misfits(whole).reason(whole.kind(out.mark()));
    boolean asGroup =
        problem.ties().together(out.mark()).isPresent() && own == Unplaced.Reason.NO_SHEETS_LEFT;
    return new Unplaced(out.mark(), out.count(), asGroup ? ofGroup(out.reason()) : own);
  }

  private static Unplaced.Reason ofGroup(Unplaced.Reason reason) {
    return reason == Unplaced.Reason.NOT_ON_ONE_SHEET
        ? reason
        : Unplaced.Reason.TOO_MUCH_FOR_ONE_SHEET;
  }
}
