package fourpin.sheets.drawings;

import fourpin.casework.Axis;
import fourpin.casework.Face;
import fourpin.casework.Point;
import fourpin.sheets.paint.Box;

/**
 * How space looks from straight before one of its faces: u to the right, v up, in millimetres.
 *
 * <p>From the right side the front of a case is at the left, from the left side at the right; from
 * above the front is below. So the inside faces of a left and a right side come out handed without
 * being mirrored anywhere.
 *
 * @param face that the viewer looks at
 */
record Projection(Face face) {

  double u(Point point) {
    return switch (face) {
      case FRONT, TOP, BOTTOM -> point.x().mm();
      case BACK -> -point.x().mm();
      case RIGHT -> point.y().mm();
      case LEFT -> -point.y().mm();
    };
  }

  double v(Point point) {
    return switch (face) {
      case FRONT, BACK, LEFT, RIGHT -> point.z().mm();
      case TOP -> point.y().mm();
      case BOTTOM -> -point.y().mm();
    };
  }

  Axis across() {
    return switch (face) {
      case FRONT, BACK, TOP, BOTTOM -> Axis.X;
      case LEFT, RIGHT -> Axis.Y;
    };
  }

  Axis up() {
    return switch (face) {
      case FRONT, BACK, LEFT, RIGHT -> Axis.Z;
      case TOP, BOTTOM -> Axis.Y;
    };
  }

  /** What a block covers in this view. */
  Box box(fourpin.casework.Box block) {
    double u1 = u(block.low());
    double u2 = u(block.high());
    double v1 = v(block.low());
    double v2 = v(block.high());
    return new Box(Math.min(u1, u2), Math.min(v1, v2), Math.max(u1, u2), Math.max(v1, v2));
  }

  /** How near the block's nearest face is to the viewer; larger is nearer. */
  double near(fourpin.casework.Box block) {
    return face.direction() * block.at(face).mm();
  }

  /** On which side of the view the front of a case lies. */
  Edge front() {
    return switch (face) {
      case RIGHT -> Edge.LEFT;
      case LEFT -> Edge.RIGHT;
      case TOP -> Edge.BOTTOM;
      case BOTTOM -> Edge.TOP;
      case FRONT, BACK -> Edge.NONE;
    };
  }

  /** Edges of a view. */
  enum Edge {
    LEFT,
    RIGHT,
    BOTTOM,
    TOP,
    NONE
  }
}
