package fourpin.casework;

import fourpin.measure.Length;

/**
 * A block in case coordinates with faces along the axes.
 *
 * @param low the corner at the left, front, bottom
 * @param high the corner at the right, back, top; nowhere below {@code low}
 */
public record Box(Point low, Point high) {

  public Box {
    for (Axis axis : Axis.values()) {
      if (high.along(axis).isLessThan(low.along(axis))) {
        throw new IllegalArgumentException(
            "a box from " + low + " to " + high + " is inside out along " + axis);
      }
    }
  }

  /** From the left to the right, front to back and bottom to top. */
  public static Box of(
      Length left, Length right, Length front, Length back, Length bottom, Length top) {
    return new Box(new Point(left, front, bottom), new Point(right, back, top));
  }

  public Length size(Axis axis) {
    return high.along(axis).minus(low.along(axis));
  }

  /** Where a face lies along its axis. */
  public Length at(Face face) {
    return (face.direction() > 0 ? high : low).along(face.axis());
  }

  /** This box with one face moved to another place along its axis. */
  public Box with(Face face, Length place) {
    return face.direction() > 0
        ? new Box(low, high.with(face.axis(), place))
        : new Box(low.with(face.axis(), place), high);
  }

  /** Whether the two share more than a surface. */
  public boolean overlaps(Box other) {
    for (Axis axis : Axis.values()) {
      if (!low.along(axis).isLessThan(other.high.along(axis))
          || !other.low.along(axis).isLessThan(high.along(axis))) {
        return false;
      }
    }
    return true;
  }

  /** What the two share. @throws IllegalArgumentException if they lie apart */
  public Box shared(Box other) {
    return new Box(
        new Point(
            Length.max(low.x(), other.low.x()),
            Length.max(low.y(), other.low.y()),
            Length.max(low.z(), other.low.z())),
        new Point(
            Length.min(high.x(), other.high.x()),
            Length.min(high.y(), other.high.y()),
            Length.min(high.z(), other.high.z())));
  }

  /** Whether the other lies wholly inside this one, surfaces included. */
  public boolean contains(Box other) {
    for (Axis axis : Axis.values()) {
      if (other.low.along(axis).isLessThan(low.along(axis))
          || high.along(axis).isLessThan(other.high.along(axis))) {
        return false;
      }
    }
    return true;
  }

  /** Volume in cubic millimetres. */
  public double volume() {
    return size(Axis.X).mm() * size(Axis.Y).mm() * size(Axis.Z).mm();
  }

  /** This box moved along an axis. */
  public Box shifted(Axis axis, Length by) {
    return new Box(low.shifted(axis, by), high.shifted(axis, by));
  }

  /** The smallest box round this one and another. */
  public Box around(Box other) {
    return new Box(
        new Point(
            Length.min(low.x(), other.low.x()),
            Length.min(low.y(), other.low.y()),
            Length.min(low.z(), other.low.z())),
        new Point(
            Length.max(high.x(), other.high.x()),
            Length.max(high.y(), other.high.y()),
            Length.max(high.z(), other.high.z())));
  }
}
