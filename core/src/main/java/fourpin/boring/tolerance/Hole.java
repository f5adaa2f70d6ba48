package fourpin.boring.tolerance;

import fourpin.boring.BayGrid.Row;
import fourpin.boring.tolerance.Miss.Corner;
import fourpin.casework.Face;

/**
 * A hole that a corner of a shelf lies on.
 *
 * @param level number in the bay's grid
 */
record Hole(int bay, int level, Corner corner) {

  /**
   * @param inside face of the upright, looking into the bay
   */
  static Corner corner(Face inside, Row.Name row) {
    boolean front = row == Row.Name.FRONT;
    if (inside == Face.RIGHT) {
      return front ? Corner.LEFT_FRONT : Corner.LEFT_BACK;
    }
    return front ? Corner.RIGHT_FRONT : Corner.RIGHT_BACK;
  }

  static String sideOf(Corner corner) {
    return corner == Corner.LEFT_FRONT || corner == Corner.LEFT_BACK ? "left" : "right";
  }

  String text() {
    return "bay " + bay + " " + corner + " " + level;
  }
}
