package fourpin.cutting;

import java.util.List;

/**
 * Parts of one material, the stock of that material, and the saw. Marks differ, and so do the names
 * of the stock.
 */
public record SheetProblem(List<Part> parts, List<StockSheet> stock, Saw saw) {

  public SheetProblem {
    parts = List.copyOf(parts);
    stock = List.copyOf(stock);
    Require.distinct(parts.stream().map(Part::mark).toList(), "marks of parts");
    Require.distinct(stock.stream().map(StockSheet::name).toList(), "names of stock");
  }
}
