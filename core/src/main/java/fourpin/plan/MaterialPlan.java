package fourpin.plan;

import fourpin.cutting.Layout;
import fourpin.cutting.SheetProblem;
import fourpin.job.Material;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * How one material is cut.
 *
 * @param layouts one for sheets; for boards one for each width of stock that is used
 * @param stock what is taken of each stock, in the order of the job
 */
public record MaterialPlan(Material material, List<StockLayout> layouts, List<StockUse> stock) {

  public MaterialPlan {
    layouts = List.copyOf(layouts);
    stock = List.copyOf(stock);
  }

  /**
   * A layout with the problem that it answers; marks in it are labels of the cut list.
   *
   * @param title "3/4 oak plywood, sheets" or "oak, boards 5 1/2 wide"
   */
  public record StockLayout(String title, SheetProblem problem, Layout layout) {}

  /**
   * Sheets or boards taken.
   *
   * @param size as it is bought
   * @param count taken
   * @param buy how many of them are to be bought
   * @param each price of one, where it is stated
   */
  public record StockUse(String size, long count, long buy, Optional<BigDecimal> each) {}
}
