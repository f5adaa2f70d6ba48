package fourpin.casework;

/** One of the six faces of a part as it stands in the case. */
public enum Face {
  LEFT(Axis.X, -1),
  RIGHT(Axis.X, 1),
  FRONT(Axis.Y, -1),
  BACK(Axis.Y, 1),
  BOTTOM(Axis.Z, -1),
  TOP(Axis.Z, 1);

  private final Axis axis;
  private final int direction;

  Face(Axis axis, int direction) {
    this.axis = axis;
    this.direction = direction;
  }

  public Axis axis() {
    return axis;
  }

  /** 1 where the face looks along its axis, -1 where it looks back. */
  public int direction() {
    return direction;
  }

  public Face opposite() {
    return switch (this) {
      case LEFT -> RIGHT;
      case RIGHT -> LEFT;
      case FRONT -> BACK;
      case BACK -> FRONT;
      case BOTTOM -> TOP;
      case TOP -> BOTTOM;
    };
  }
}
