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
import java.util.stream.IntStream;

/**
 * A guide as it lies on a drawing, its block's end below, in millimetres of the case.
 *
 * @param index where its index edge lies, from left to right
 * @param hand 1 where its width runs to the right from there, -1 where it runs to the left
 * @param zero height of the block's stop face
 */
record GuidePlace(Guide guide, double index, int hand, double zero) {

  /** Of a cross, on paper. */
  private static final double LEAST_ARM = 1.1;

  /** Of a cross, to the distance of holes, so that crosses keep apart. */
  private static final double MOST_ARM = 0.4;

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

  /**
   * A hole that nothing is bored through: crossed out, so large that it shows, but apart from the
   * next.
   */
  void crossOut(Sketch sketch, GuideHole hole) {
    double large = Math.max(sketch.scale().toReal(LEAST_ARM), CROSS * hole.diameter().mm());
    double arm = Math.min(large, MOST_ARM * pitch());
    double u = u(hole);
    double v = v(hole);
    sketch.line(u - arm, v - arm, u + arm, v + arm, Pen.EDGE);
    sketch.line(u - arm, v + arm, u + arm, v - arm, Pen.EDGE);
  }

  /** The least distance from one hole along the guide to the next, mm. */
  private double pitch() {
    List<Double> along =
        guide.holes().stream().map(h -> h.along().mm()).distinct().sorted().toList();
    return IntStream.range(1, along.size())
        .mapToDouble(i -> along.get(i) - along.get(i - 1))
        .min()
        .orElse(Double.MAX_VALUE);
  }

  void drawBlock(Sketch sketch) {
    if (guide.block().isPositive()) {
      sketch.rectangle(block(), Pen.OUTLINE, Fill.HATCH);
    }
  }
}
