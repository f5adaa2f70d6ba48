package fourpin.cutting;

import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Lays out in two goes what could share its boards: first the parts that are as wide as some of the
 * stock and only have to be cut to length, which is a problem of one dimension, then the rest from
 * what stock is left.
 */
final class Apart {
  private final SheetProblem problem;
  private final SheetCutter cutter;
  private final Map<String, Integer> used = new HashMap<>();
  private final List<SheetPattern> patterns = new ArrayList<>();

  private Apart(SheetProblem problem, SheetCutter cutter) {
    this.problem = problem;
    this.cutter = cutter;
  }

  /** Empty where there is but one go. */
  static Optional<Layout> answer(SheetProblem problem, SheetCutter cutter) {
    return new Apart(problem, cutter).layout();
  }

  private Optional<Layout> layout() {
    List<Length> widths =
        problem.stock().stream()
            .map(StockSheet::width)
            .distinct()
            .sorted()
            .filter(width -> problem.parts().stream().anyMatch(p -> isOnlyCrosscut(p, width)))
            .toList();
    return widths.isEmpty() || isOneGo(widths) ? Optional.empty() : Optional.of(layout(widths));
  }

  private boolean isOneGo(List<Length> widths) {
    return problem.stock().stream().allMatch(sheet -> widths.equals(List.of(sheet.width())))
        && problem.parts().stream().allMatch(p -> isOnlyCrosscut(p, widths.getFirst()));
  }

  private Layout layout(List<Length> widths) {
    List<Part> rest = problem.parts();
    for (Length width : widths) {
      List<Part> same = rest.stream().filter(part -> isOnlyCrosscut(part, width)).toList();
      List<Part> others = new ArrayList<>(rest);
      others.removeAll(same);
      others.addAll(leftOut(same, toLength(same, width)));
      rest = others;
    }
    List<Unplaced> leftOut = rest.isEmpty() ? List.of() : take(cut(rest, stock()));
    return new Layout(patterns, leftOut, new LowerBound(0, 0));
  }

  /** Whether nothing but crosscuts is needed to get a part out of a board of that width. */
  private boolean isOnlyCrosscut(Part part, Length width) {
    boolean beside =
        problem
            .ties()
            .matched(part.mark())
            .filter(set -> set.run() == Matched.Run.SIDE_BY_SIDE)
            .isPresent();
    return part.width().equals(width) && !beside;
  }

  private List<Unplaced> toLength(List<Part> parts, Length width) {
    List<Part> straight = parts.stream().map(part -> part.with(Grain.FIXED)).toList();
    List<StockSheet> boards = stock().stream().filter(s -> s.width().equals(width)).toList();
    return parts.isEmpty() ? List.of() : take(cut(straight, boards));
  }

  private Layout cut(List<Part> parts, List<StockSheet> stock) {
    return cutter.cut(new SheetProblem(parts, stock, problem.saw(), problem.ties().among(parts)));
  }

  /** What is left of the stock. */
  private List<StockSheet> stock() {
    return problem.stock().stream()
        .map(
            sheet ->
                sheet.supply() instanceof Supply.Limited(int count)
                    ? sheet.with(Supply.of(count - used.getOrDefault(sheet.name(), 0)))
                    : sheet)
        .toList();
  }

  private List<Unplaced> take(Layout layout) {
    patterns.addAll(layout.patterns());
    layout.patterns().forEach(p -> used.merge(p.sheet().name(), p.quantity(), Integer::sum));
    return layout.unplaced();
  }

  private static List<Part> leftOut(List<Part> parts, List<Unplaced> unplaced) {
    List<Part> left = new ArrayList<>();
    for (Part part : parts) {
      int count =
          unplaced.stream()
              .filter(u -> u.mark().equals(part.mark()))
              .mapToInt(Unplaced::count)
              .sum();
      if (count > 0) {
        left.add(part.times(count));
      }
    }
    return left;
  }
}
