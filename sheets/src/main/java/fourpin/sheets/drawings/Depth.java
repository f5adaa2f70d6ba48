package fourpin.sheets.drawings;

import fourpin.casework.Axis;
import fourpin.casework.Box;
import fourpin.casework.Part;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * The order in which solids hide each other for a viewer who stands in front, above and to the
 * right, in an oblique projection.
 */
final class Depth {

  private static final double ROUNDING = 1e-6;

  private final double slant;
  private final List<Part> waiting;
  private final List<Part> ordered = new ArrayList<>();

  private Depth(List<Part> parts, double slant) {
    this.waiting = new ArrayList<>(parts);
    this.slant = slant;
  }

  /**
   * Takes next a part that hides none of those that wait; where joints interlock so that there is
   * none, the first.
   *
   * @param slant how far a point moves to the right and up for each unit of depth
   */
  static List<Part> farthestFirst(List<Part> parts, double slant) {
    Depth depth = new Depth(parts, slant);
    while (!depth.waiting.isEmpty()) {
      depth.take(
          depth.waiting.stream()
              .filter(depth::hidesNoneWaiting)
              .findFirst()
              .orElse(depth.waiting.getFirst()));
    }
    return List.copyOf(depth.ordered);
  }

  private void take(Part next) {
    waiting.remove(next);
    ordered.add(next);
  }

  private boolean hidesNoneWaiting(Part part) {
    return waiting.stream()
        .noneMatch(
            other ->
                !other.equals(part)
                    && meetOnPaper(part.box(), other.box())
                    && isNearer(part.box(), other.box()));
  }

  /** Whether the outlines overlap: hexagons with three directions of edges, told apart by one. */
  private boolean meetOnPaper(Box one, Box other) {
    return overlap(across(one), across(other))
        && overlap(up(one), up(other))
        && overlap(aslant(one), aslant(other));
  }

  private record Range(double low, double high) {}

  private static boolean overlap(Range one, Range other) {
    return one.low < other.high - ROUNDING && other.low < one.high - ROUNDING;
  }

  private Range across(Box box) {
    return new Range(
        box.low().x().mm() + slant * box.low().y().mm(),
        box.high().x().mm() + slant * box.high().y().mm());
  }

  private Range up(Box box) {
    return new Range(
        box.low().z().mm() + slant * box.low().y().mm(),
        box.high().z().mm() + slant * box.high().y().mm());
  }

  /** Along the axis on which depth does not show. */
  private static Range aslant(Box box) {
    return new Range(
        box.low().x().mm() - box.high().z().mm(), box.high().x().mm() - box.low().z().mm());
  }

  /**
   * Blocks are told apart along the axis on which they are farthest apart, since one may stick in
   * the other's joint.
   */
  private static boolean isNearer(Box one, Box other) {
    double apart = Double.NEGATIVE_INFINITY;
    boolean nearer = false;
    for (Axis axis : Axis.values()) {
      double above = gap(other.high().along(axis), one.low().along(axis));
      double below = gap(one.high().along(axis), other.low().along(axis));
      boolean nearIsHigh = axis != Axis.Y;
      if (Math.max(above, below) > apart) {
        apart = Math.max(above, below);
        nearer = nearIsHigh == above > below;
      }
    }
    return nearer;
  }

  private static double gap(Length from, Length to) {
    return to.minus(from).mm();
  }
}
