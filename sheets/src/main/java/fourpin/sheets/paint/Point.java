package fourpin.sheets.paint;

/** A place on paper in millimetres, y up. */
public record Point(double x, double y) {

  public static final Point ORIGIN = new Point(0, 0);

  public Point {
    if (!Double.isFinite(x) || !Double.isFinite(y)) {
      throw new IllegalArgumentException("A place on paper must be finite, not " + x + ", " + y);
    }
  }

  public Point moved(double dx, double dy) {
    return new Point(x + dx, y + dy);
  }

  public double distanceTo(Point other) {
    return Math.hypot(x - other.x, y - other.y);
  }

  /** This point turned about the origin, anticlockwise. */
  public Point turned(double degrees) {
    double angle = Math.toRadians(degrees);
    double cos = Math.cos(angle);
    double sin = Math.sin(angle);
    return new Point(x * cos - y * sin, x * sin + y * cos);
  }
}
