package fourpin.boring.tolerance;

import fourpin.boring.BayGrid.Row;
import fourpin.boring.tolerance.Miss.Point;
import fourpin.casework.Face;

/**
 * A hole that a shelf lies on.
 *
 * @param level number in the bay's grid
 */
record Hole(int bay, int level, Point point) {

  /**
   * @param inside face of the upright, looking into the bay
   */
  static Point point(Face inside, Row.Name row) {
    boolean left = inside == Face.RIGHT;
    return switch (row) {
      case FRONT -> left ? Point.LEFT_FRONT : Point.RIGHT_FRONT;
      case MIDDLE -> left ? Point.LEFT_MIDDLE : Point.RIGHT_MIDDLE;
      case BACK -> left ? Point.LEFT_BACK : Point.RIGHT_BACK;
    };
  }

  static String sideOf(Point point) {
    return switch (point) {
      case LEFT_FRONT, LEFT_MIDDLE, LEFT_BACK -> "left";
      case RIGHT_FRONT, RIGHT_MIDDLE, RIGHT_BACK -> "right";
    };
  }

  String text() {
    return "bay " + bay + " " + point + " " + level;
  }
}
