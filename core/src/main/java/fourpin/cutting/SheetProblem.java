package fourpin.cutting;

import java.util.List;

/**
 * Parts of one material, the stock of that material, the saw, and what the parts have to do with
 * each other. Marks differ, and so do the names of the stock.
 */
public record SheetProblem(List<Part> parts, List<StockSheet> stock, Saw saw, Ties ties) {

  public SheetProblem {
    parts = List.copyOf(parts);
    stock = List.copyOf(stock);
    Require.distinct(parts.stream().map(Part::mark).toList(), "marks of parts");
    Require.distinct(stock.stream().map(StockSheet::name).toList(), "names of stock");
    ties.require(parts);
  }

  /** A problem whose parts have nothing to do with each other. */
  public SheetProblem(List<Part> parts, List<StockSheet> stock, Saw saw) {
    this(parts, stock, saw, Ties.NONE);
  }

  /** The same with other limits of the saw. */
  public SheetProblem with(SawLimits others) {
    return new SheetProblem(parts, stock, saw.with(others), ties);
  }
}
