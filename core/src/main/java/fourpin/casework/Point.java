package fourpin.casework;

import fourpin.measure.Length;

/** A point in case coordinates. */
public record Point(Length x, Length y, Length z) {

  public Length along(Axis axis) {
    return switch (axis) {
      case X -> x;
      case Y -> y;
      case Z -> z;
    };
  }

  public Point with(Axis axis, Length value) {
    return switch (axis) {
      case X -> new Point(value, y, z);
      case Y -> new Point(x, value, z);
      case Z -> new Point(x, y, value);
    };
  }

  /** This point moved along an axis. */
  public Point shifted(Axis axis, Length by) {
    return with(axis, along(axis).plus(by));
  }
}
