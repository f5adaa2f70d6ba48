package fourpin.sheets.paint;

import java.util.Collection;
import java.util.List;

/** An upright rectangle on paper in millimetres, y up; it may have no width or height. */
public record Box(double left, double bottom, double right, double top) {

  /** How far two boxes may reach into each other by rounding alone. */
  private static final double TOUCH = 1e-9;

  public Box {
    if (!(left <= right && bottom <= top)) {
      throw new IllegalArgumentException(
          "A box needs left <= right and bottom <= top, not "
              + left
              + " "
              + bottom
              + " "
              + right
              + " "
              + top);
    }
  }

  /** The smallest box round some points, of which there must be one. */
  public static Box round(Collection<Point> points) {
    double left = Double.POSITIVE_INFINITY;
    double bottom = Double.POSITIVE_INFINITY;
    double right = Double.NEGATIVE_INFINITY;
    double top = Double.NEGATIVE_INFINITY;
    for (Point point : points) {
      left = Math.min(left, point.x());
      bottom = Math.min(bottom, point.y());
      right = Math.max(right, point.x());
      top = Math.max(top, point.y());
    }
    return new Box(left, bottom, right, top);
  }

  /** A point as a box without width and height. */
  public static Box round(Point point) {
    return new Box(point.x(), point.y(), point.x(), point.y());
  }

  public static Box at(Point corner, double width, double height) {
    return new Box(corner.x(), corner.y(), corner.x() + width, corner.y() + height);
  }

  public double width() {
    return right - left;
  }

  public double height() {
    return top - bottom;
  }

  public Point centre() {
    return new Point((left + right) / 2, (bottom + top) / 2);
  }

  /** Its corners from the lower left, anticlockwise. */
  public List<Point> corners() {
    return List.of(
        new Point(left, bottom),
        new Point(right, bottom),
        new Point(right, top),
        new Point(left, top));
  }

  public Box with(Box other) {
    return new Box(
        Math.min(left, other.left),
        Math.min(bottom, other.bottom),
        Math.max(right, other.right),
        Math.max(top, other.top));
  }

  /** This box with a margin all round. */
  public Box grown(double margin) {
    return new Box(left - margin, bottom - margin, right + margin, top + margin);
  }

  public Box moved(double dx, double dy) {
    return new Box(left + dx, bottom + dy, right + dx, top + dy);
  }

  /** Whether a point lies inside or on the rim. */
  public boolean holds(Point point) {
    return contains(round(point));
  }

  /** Whether the insides of the two share a place; boxes that touch do not overlap. */
  public boolean overlaps(Box other) {
    return left < other.right - TOUCH
        && other.left < right - TOUCH
        && bottom < other.top - TOUCH
        && other.bottom < top - TOUCH;
  }

  /** Whether the other lies wholly inside, edges allowed. */
  public boolean contains(Box other) {
    return left <= other.left + TOUCH
        && bottom <= other.bottom + TOUCH
        && right >= other.right - TOUCH
        && top >= other.top - TOUCH;
  }
}
