package fourpin.sheets.drawings;

import fourpin.boring.way.Guide;
import fourpin.boring.way.Guide.GuideHole;
import fourpin.sheets.paint.Box;
import fourpin.sheets.paint.Fill;
import fourpin.sheets.paint.Pen;
import fourpin.sheets.paint.Sketch;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * A guide as it lies on a drawing, its block's end below, in millimetres of the case.
 *
 * @param index where its index edge lies, from left to right
 * @param hand 1 where its width runs to the right from there, -1 where it runs to the left
 * @param zero height of the block's stop face
 */
record GuidePlace(Guide guide, double index, int hand, double zero) {

  /** Of a cross, on paper. */
  private static final double LEAST_ARM = 0.7;

  /** Of a cross, to the hole's diameter. */
  private static final double CROSS = 0.6;

  /** From above on its side A: block down, index edge at the right. */
  static GuidePlace sideA(Guide guide) {
    return new GuidePlace(guide, guide.width().mm(), -1, 0);
  }

  double u(GuideHole hole) {
    return index + hand * hole.across().mm();
  }

  double v(GuideHole hole) {
    return zero + hole.along().mm();
  }

  /** Without the block. */
  Box body() {
    return across(zero, zero + guide.length().mm());
  }

  Box block() {
    return across(zero - guide.block().mm(), zero);
  }

  private Box across(double bottom, double top) {
    double far = index + hand * guide.width().mm();
    return new Box(Math.min(index, far), bottom, Math.max(index, far), top);
  }

  /**
   * The centre line of each column of holes, from the lowest to the highest and a little beyond.
   */
  List<Box> columns() {
    return guide.holes().stream()
        .collect(Collectors.groupingBy(GuideHole::across, TreeMap::new, Collectors.toList()))
        .values()
        .stream()
        .map(this::column)
        .toList();
  }

  private Box column(List<GuideHole> holes) {
    return holes.stream()
        .map(h -> new Box(u(h), v(h), u(h), v(h)))
        .reduce(Box::with)
        .map(b -> beyond(b, holes.getFirst()))
        .orElseThrow();
  }

  private static Box beyond(Box line, GuideHole hole) {
    double more = hole.diameter().mm();
    return new Box(line.left(), line.bottom() - more, line.right(), line.top() + more);
  }

  /** A hole that nothing is bored through: crossed out, so large that it shows at any scale. */
  void crossOut(Sketch sketch, GuideHole hole) {
    double arm = Math.max(sketch.scale().toReal(LEAST_ARM), CROSS * hole.diameter().mm());
    double u = u(hole);
    double v = v(hole);
    sketch.line(u - arm, v - arm, u + arm, v + arm, Pen.EDGE);
    sketch.line(u - arm, v + arm, u + arm, v - arm, Pen.EDGE);
  }

  void drawBlock(Sketch sketch) {
    if (guide.block().isPositive()) {
      sketch.rectangle(block(), Pen.OUTLINE, Fill.HATCH);
    }
  }
}
