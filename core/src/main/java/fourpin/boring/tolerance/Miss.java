package fourpin.boring.tolerance;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;

/**
 * What holes that should lie at one height do to a shelf, as a sum of their errors.
 *
 * <p>The gap: a rigid flat shelf lies on supports at the corners of a rectangle, errors
 * z<sub>LF</sub>, z<sub>LB</sub>, z<sub>RF</sub>, z<sub>RB</sub>. It rests on three of them. A
 * plane has as much height at the middle of one diagonal as at the middle of the other, since the
 * middles are the same point; so the plane through LF, LB and RF has the height z<sub>LB</sub> +
 * z<sub>RF</sub> - z<sub>LF</sub> at RB, and the gap there is |z<sub>LF</sub> - z<sub>LB</sub> -
 * z<sub>RF</sub> + z<sub>RB</sub>|. The expression keeps its size whichever support is taken as the
 * fourth, so it is the gap on whichever three the shelf rests. Neither a common error, nor a slope
 * from left to right, nor one from front to back changes it.
 *
 * <p>Where a third row stands half way between the two, {@link SixPoints} puts these sums together.
 */
public enum Miss {
  /** How far the fourth pin stays from a rigid shelf that lies on the three others. */
  GAP(1, -1, -1, 1, 0, 0),
  /** How much higher the shelf lies at its left end than at its right end. */
  SLOPE(0.5, 0.5, -0.5, -0.5, 0, 0),
  /** How far the left middle pin stands above the line from the front to the back pin. */
  LEFT_PROUD(-0.5, -0.5, 0, 0, 1, 0),
  /** The same of the right middle pin. */
  RIGHT_PROUD(0, 0, -0.5, -0.5, 0, 1);

  private final double[] factors;

  Miss(double... factors) {
    this.factors = factors;
  }

  /** The points that a shelf lies on, seen from the front; the corners first. */
  public enum Point {
    LEFT_FRONT,
    LEFT_BACK,
    RIGHT_FRONT,
    RIGHT_BACK,
    LEFT_MIDDLE,
    RIGHT_MIDDLE;

    /** Those of every shelf. */
    public static final Set<Point> CORNERS =
        Collections.unmodifiableSet(EnumSet.range(LEFT_FRONT, RIGHT_BACK));

    /** Those of a shelf on three rows. */
    public static final Set<Point> SIX = Collections.unmodifiableSet(EnumSet.allOf(Point.class));
  }

  /** How much of a point's error goes into the sum, with its sign. */
  public double factor(Point point) {
    return factors[point.ordinal()];
  }

  /**
   * The sum for given errors of the corners, with its sign.
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
