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
    boolean front = row == Row.Name.FRONT;
    if (inside == Face.RIGHT) {
      return front ? Point.LEFT_FRONT : Point.LEFT_BACK;
    }
    return front ? Point.RIGHT_FRONT : Point.RIGHT_BACK;
  }

  static String sideOf(Point point) {
    return point == Point.LEFT_FRONT || point == Point.LEFT_BACK ? "left" : "right";
  }

  String text() {
    return "bay " + bay + " " + point + " " + level;
  }
}
