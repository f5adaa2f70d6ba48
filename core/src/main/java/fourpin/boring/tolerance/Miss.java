package fourpin.boring.tolerance;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;

/**
 * What four holes that should lie at one height do to a shelf, as a sum of their errors.
 *
 * <p>The gap: a rigid flat shelf lies on supports at the corners of a rectangle, errors
 * z<sub>LF</sub>, z<sub>LB</sub>, z<sub>RF</sub>, z<sub>RB</sub>. It rests on three of them. A
 * plane has as much height at the middle of one diagonal as at the middle of the other, since the
 * middles are the same point; so the plane through LF, LB and RF has the height z<sub>LB</sub> +
 * z<sub>RF</sub> - z<sub>LF</sub> at RB, and the gap there is |z<sub>LF</sub> - z<sub>LB</sub> -
 * z<sub>RF</sub> + z<sub>RB</sub>|. The expression keeps its size whichever support is taken as the
 * fourth, so it is the gap on whichever three the shelf rests. Neither a common error, nor a slope
 * from left to right, nor one from front to back changes it.
 */
public enum Miss {
  /** How far the fourth pin stays from a rigid shelf that lies on the three others. */
  GAP(1, -1, -1, 1),
  /** How much higher the shelf lies at its left end than at its right end. */
  SLOPE(0.5, 0.5, -0.5, -0.5);

  private final double[] factors;

  Miss(double... factors) {
    this.factors = factors;
  }

  /** The points that a shelf lies on, seen from the front; the corners first. */
  public enum Point {
    LEFT_FRONT,
    LEFT_BACK,
    RIGHT_FRONT,
    RIGHT_BACK;

    /** Those of every shelf. */
    public static final Set<Point> CORNERS =
        Collections.unmodifiableSet(EnumSet.range(LEFT_FRONT, RIGHT_BACK));
  }

  /** How much of a point's error goes into the sum, with its sign. */
  public double factor(Point point) {
    return factors[point.ordinal()];
  }

  /**
   * The sum for given errors, with its sign.
   *
   * @param leftFront error of that hole, upwards; all in one unit, that of the answer
   */
  public double of(double leftFront, double leftBack, double rightFront, double rightBack) {
    return factors[0] * leftFront
        + factors[1] * leftBack
        + factors[2] * rightFront
        + factors[3] * rightBack;
  }
}
