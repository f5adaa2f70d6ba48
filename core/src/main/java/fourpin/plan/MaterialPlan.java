package fourpin.plan;

import fourpin.cutting.CuttingOrder;
import fourpin.cutting.HoldLimits;
import fourpin.cutting.Layout;
import fourpin.cutting.Saw;
import fourpin.cutting.SetUp;
import fourpin.cutting.SheetPattern;
import fourpin.cutting.SheetProblem;
import fourpin.job.Material;
import fourpin.measure.Figure;
import fourpin.measure.Length;
import fourpin.measure.Quantity;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * How one material is cut.
 *
 * @param layouts one with all parts; none without stock
 * @param stock what is taken of each stock, in the order of the job
 */
public record MaterialPlan(Material material, List<StockLayout> layouts, List<StockUse> stock) {

  public MaterialPlan {
    layouts = List.copyOf(layouts);
    stock = List.copyOf(stock);
  }

  /** What of it matters at the saw. */
  public CutMaterial cut() {
    return new CutMaterial(material.name(), layouts, stock);
  }

  /**
   * A layout with the problem that it answers; marks in it are labels of the cut list.
   *
   * @param title "sheets", "boards 5 1/2 in wide, cut to length", "boards, cut to length and width"
   * @param holds what the shop can hold while it is cut
   * @param before the number of the last sheet of earlier cuttings of the material; zero for none
   * @param near how much it takes and comes to, and how near that is to the least
   * @param kept offcuts that are worth keeping, in the order of cutting
   * @param small names of pieces too small to be held safely when they are cut, or when they come
   *     off as parts
   * @param origin where it comes from if not from the planner's own search, as a clause
   */
  public record StockLayout(
      String title,
      SheetProblem problem,
      Layout layout,
      HoldLimits holds,
      int before,
      HowNear near,
      List<Kept> kept,
      List<String> small,
      Optional<String> origin) {
    public StockLayout {
      kept = List.copyOf(kept);
      small = List.copyOf(small);
    }

    /** The set-ups for each sheet that is cut in its own way, in the order of the layout. */
    public List<List<SetUp>> setUps() {
      return setUps(layout, before, problem.saw(), holds);
    }

    /**
     * The set-ups for one sheet.
     *
     * @param number of the pattern, from 1
     */
    List<SetUp> setUps(int number) {
      return CuttingOrder.of(
          layout.patterns().get(number - 1), before + number, problem.saw(), holds);
    }

    static List<List<SetUp>> setUps(Layout layout, int before, Saw saw, HoldLimits holds) {
      List<SheetPattern> patterns = layout.patterns();
      return IntStream.range(0, patterns.size())
          .mapToObj(i -> CuttingOrder.of(patterns.get(i), before + i + 1, saw, holds))
          .toList();
    }

    /**
     * The name of one sheet at the saw, "S5".
     *
     * @param number of the pattern in this layout, from 1
     */
    public String name(int number) {
      return "S" + (before + number);
    }

    /**
     * The small pieces of one sheet.
     *
     * @param number of the pattern, from 1
     */
    public List<String> small(int number) {
      String sheet = name(number);
      return small.stream()
          .filter(piece -> piece.equals(sheet) || piece.startsWith(sheet + "-"))
          .toList();
    }

    /** How much of what it comes to is the worth stated of stock on hand; empty for nothing. */
    public Optional<Quantity> onHand() {
      return near.gap().inputs().stream()
          .filter(input -> input.symbol().equals(LayoutFigures.WORTH))
          .map(Figure.Input::value)
          .findFirst();
    }
  }

  /**
   * An offcut to keep.
   *
   * @param name as it is lettered at the saw
   * @param count of sheets that are cut alike, each of which leaves one
   */
  public record Kept(String name, Length length, Length width, int count) {}

  /**
   * Sheets or boards taken.
   *
   * @param size as it is bought
   * @param count taken
   * @param buy how many of them are to be bought
   * @param each price of one, where it is stated
   */
  public record StockUse(String size, long count, long buy, Optional<BigDecimal> each) {

    /** What those to be bought come to, where one has a price. */
    public Optional<BigDecimal> together() {
      return each.map(price -> price.multiply(BigDecimal.valueOf(buy)));
    }
  }
}
