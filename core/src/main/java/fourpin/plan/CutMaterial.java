package fourpin.plan;

import fourpin.plan.MaterialPlan.StockLayout;
import fourpin.plan.MaterialPlan.StockUse;
import java.util.List;

/**
 * How the parts of one material come out of its stock.
 *
 * @param material its name
 * @param layouts one with all parts; none without stock
 * @param stock what is taken of each stock, in the order stated
 */
public record CutMaterial(String material, List<StockLayout> layouts, List<StockUse> stock) {

  public CutMaterial {
    layouts = List.copyOf(layouts);
    stock = List.copyOf(stock);
  }
}
