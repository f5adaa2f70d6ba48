package fourpin.sheets.paint;

/**
 * The side of a drawing on which dimensions stand; along it they run, and away from its edge they
 * are stacked.
 */
public enum Side {
  BELOW,
  ABOVE,
  LEFT,
  RIGHT;

  /**
   * A place so far along the side and so far away from its edge, which lies at {@code edge} on the
   * other axis.
   */
  Point at(double along, double away, double edge) {
    return switch (this) {
      case BELOW -> new Point(along, edge - away);
      case ABOVE -> new Point(along, edge + away);
      case LEFT -> new Point(edge - away, along);
      case RIGHT -> new Point(edge + away, along);
    };
  }

  boolean upright() {
    return this == LEFT || this == RIGHT;
  }
}
