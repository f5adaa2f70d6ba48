package fourpin.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * When a quick answer runs out of stock, a better one may still make do: a search is let have more
 * of what there is too little of, at a price that it would rather not pay, and if it does without
 * in the end, everything has found its place.
 */
final class Shortage {
  /** More of a stock costs so many times the dearest. */
  private static final long DEAR = 10;

  private final SheetProblem problem;
  private final SheetCutter search;

  Shortage(SheetProblem problem, SheetCutter search) {
    this.problem = problem;
    this.search = search;
  }

  /**
   * A layout of all parts, if the search finds one within the stock. Its bound holds, since what
   * may take more stock can only be cheaper.
   *
   * @param quick with parts left out
   */
  Optional<Layout> madeUp(Layout quick) {
    boolean onlyStock =
        quick.unplaced().stream().allMatch(u -> u.reason() == Unplaced.Reason.NO_SHEETS_LEFT);
    return onlyStock
        ? Optional.of(search.cut(withMore())).filter(this::keepsToTheStock)
        : Optional.empty();
  }

  private boolean keepsToTheStock(Layout layout) {
    Set<String> names = problem.stock().stream().map(StockSheet::name).collect(Collectors.toSet());
    return layout.unplaced().isEmpty()
        && layout.patterns().stream().allMatch(p -> names.contains(p.sheet().name()));
  }

  private SheetProblem withMore() {
    List<StockSheet> stock = new ArrayList<>(problem.stock());
    String unlike = problem.stock().stream().map(StockSheet::name).reduce("", String::concat);
    for (StockSheet sheet : problem.stock()) {
      if (sheet.supply() instanceof Supply.Limited) {
        stock.add(more(unlike + " more " + stock.size(), sheet));
      }
    }
    return new SheetProblem(problem.parts(), stock, problem.saw(), problem.ties());
  }

  private StockSheet more(String name, StockSheet sheet) {
    long dearest = problem.stock().stream().mapToLong(StockSheet::price).max().orElse(0);
    return new StockSheet(
        name,
        sheet.length(),
        sheet.width(),
        sheet.grain(),
        Supply.unlimited(),
        Math.multiplyExact(DEAR, Math.max(dearest, 1)),
        Origin.TO_BUY,
        List.of(),
        sheet.roughEdge());
  }
}
