package fourpin.cutting;

import fourpin.cutting.Inflated.Panel;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;

/**
 * The area of a panel that parts can take, each with a kerf added to its length and width. Of a
 * defect they never take what lies more than a kerf behind its near end and its near edge: shifted
 * back by no more than a kerf, such a place would lie in the part itself.
 */
final class ClearArea {
  private final Inflated problem;
  private final Panel panel;

  /** What is never taken, from the corner of the panel. */
  private record Block(long x0, long y0, long x1, long y1) {
    boolean isEmpty() {
      return x0 >= x1 || y0 >= y1;
    }

    boolean meets(Block other) {
      return x0 < other.x1 && other.x0 < x1 && y0 < other.y1 && other.y0 < y1;
    }

    BigInteger area() {
      return BigInteger.valueOf(x1 - x0).multiply(BigInteger.valueOf(y1 - y0));
    }
  }

  ClearArea(Inflated problem, Panel panel) {
    this.problem = problem;
    this.panel = panel;
  }

  /** Of defects that lie over each other only one is counted: it may be more than is clear. */
  BigInteger most() {
    BigInteger clear =
        BigInteger.valueOf(panel.length()).multiply(BigInteger.valueOf(panel.width()));
    for (Block block : apart()) {
      clear = clear.subtract(block.area());
    }
    return clear.max(BigInteger.ONE);
  }

  private List<Block> apart() {
    List<Block> apart = new ArrayList<>();
    for (Defect defect : panel.sheet().defects()) {
      Block block = block(defect);
      if (!block.isEmpty() && apart.stream().noneMatch(block::meets)) {
        apart.add(block);
      }
    }
    return apart;
  }

  private Block block(Defect defect) {
    long end = problem.trim.nearEnd().picometres();
    long edge = problem.trim.nearEdge().picometres() + panel.whole() - panel.width();
    long x = defect.x().picometres() - end;
    long y = defect.y().picometres() - edge;
    return new Block(
        Math.max(0, x + problem.kerf),
        Math.max(0, y + problem.kerf),
        Math.min(panel.length(), x + defect.length().picometres()),
        Math.min(panel.width(), y + defect.width().picometres()));
  }
}
