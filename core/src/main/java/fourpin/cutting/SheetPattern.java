package fourpin.cutting;

import fourpin.measure.Length;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/** So many identical sheets, all cut in the same way. */
public record SheetPattern(StockSheet sheet, int quantity, Node root) {

  public SheetPattern {
    Require.atLeastOne(quantity, "quantity of sheets");
  }

  /** The whole sheet as the first rectangle. */
  Placed whole() {
    return new Placed(root, Length.ZERO, Length.ZERO, sheet.length(), sheet.width());
  }

  /**
   * Every rectangle of the tree in place, each before what is cut from it, near before far; for
   * drawing.
   */
  public List<Placed> rectangles() {
    List<Placed> found = new ArrayList<>();
    Deque<Placed> open = new ArrayDeque<>(List.of(whole()));
    while (!open.isEmpty()) {
      Placed next = open.pop();
      found.add(next);
      next.under().reversed().forEach(open::push);
    }
    return found;
  }

  /** The finished parts in place. */
  public List<Placed> parts() {
    return rectangles().stream().filter(p -> p.node() instanceof Node.Finished).toList();
  }

  /** The offcuts in place. */
  public List<Placed> offcuts() {
    return rectangles().stream().filter(p -> p.node() instanceof Node.Offcut).toList();
  }
}
