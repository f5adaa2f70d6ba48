package fourpin.cutting;

import fourpin.measure.Length;
import java.util.List;
import java.util.Optional;

/**
 * Why a whole sheet can't hold all parts that must share one, whatever the cuts: proven by sums of
 * lengths and areas. Where the sums would do, a layout may still not be had.
 */
public sealed interface GroupLack {

  StockSheet sheet();

  /**
   * Some of the parts are wider than half of the board, so that no two of them lie beside each
   * other: end to end, with the kerfs between, they take more than is clear of it.
   */
  record TooLong(StockSheet sheet, List<String> marks, Length taken, Length clear)
      implements GroupLack {
    public TooLong {
      marks = List.copyOf(marks);
    }
  }

  /**
   * The area of the parts is more than that of the sheet, without trim and defects.
   *
   * @param clear what there is, as a share of what they take; from 0 to 1
   */
  record TooLarge(StockSheet sheet, double clear) implements GroupLack {}

  /** Of a group of a problem on one of its sheets. */
  static Optional<GroupLack> of(SheetProblem problem, Together group, StockSheet sheet) {
    return new GroupSums(problem, group, sheet).lack();
  }
}
