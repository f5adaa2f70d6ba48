package fourpin.sheets.paint;

import java.util.ArrayList;
import java.util.List;

/**
 * Hatch lines inside a polygon, so that every output draws the same ones.
 *
 * <p>The lines are counted from the first corner, so that they move with the area. Inside is by the
 * even-odd rule.
 */
public final class Hatching {

  private Hatching() {}

  /** A straight piece of hatching. */
  public record Segment(Point from, Point to) {}

  public static List<Segment> segments(List<Point> corners, Fill fill) {
    List<Segment> segments = new ArrayList<>();
    fill.hatches().forEach(hatch -> segments.addAll(segments(corners, hatch)));
    return segments;
  }

  private static List<Segment> segments(List<Point> corners, Fill.Hatch hatch) {
    List<Point> level = corners.stream().map(p -> p.turned(-hatch.degrees())).toList();
    Box box = Box.round(level);
    double first = level.getFirst().y() + hatch.spacing() / 2;
    long last = (long) Math.floor((box.top() - first) / hatch.spacing());
    List<Segment> segments = new ArrayList<>();
    for (long i = (long) Math.ceil((box.bottom() - first) / hatch.spacing()); i <= last; i++) {
      segments.addAll(row(level, first + i * hatch.spacing(), hatch.degrees()));
    }
    return segments;
  }

  private static List<Segment> row(List<Point> level, double y, double degrees) {
    List<Double> crossings = crossings(level, y);
    List<Segment> segments = new ArrayList<>();
    for (int i = 0; i + 1 < crossings.size(); i += 2) {
      segments.add(
          new Segment(
              new Point(crossings.get(i), y).turned(degrees),
              new Point(crossings.get(i + 1), y).turned(degrees)));
    }
    return segments;
  }

  private static List<Double> crossings(List<Point> level, double y) {
    List<Double> crossings = new ArrayList<>();
    for (int i = 0; i < level.size(); i++) {
      Point a = level.get(i);
      Point b = level.get((i + 1) % level.size());
      if ((a.y() <= y) != (b.y() <= y)) {
        crossings.add(a.x() + (y - a.y()) / (b.y() - a.y()) * (b.x() - a.x()));
      }
    }
    crossings.sort(null);
    return crossings;
  }
}
