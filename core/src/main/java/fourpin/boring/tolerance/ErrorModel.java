package fourpin.boring.tolerance;

import fourpin.boring.tolerance.Miss.Point;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * How the heights of holes miss, as sums of causes that are independent of each other. Causes that
 * holes have in common make their errors alike, and what is alike in all holes of a shelf doesn't
 * rock it.
 *
 * @param positions every place that a shelf can lie at
 */
public record ErrorModel(List<Cause> causes, List<Position> positions) {

  public ErrorModel {
    causes = List.copyOf(causes);
    positions = List.copyOf(positions);
  }

  /** How values of a cause are spread round zero. */
  public enum Shape {
    NORMAL,
    UNIFORM
  }

  /**
   * One cause of error.
   *
   * @param which of its kind: which hole, which clamping
   * @param deviation standard deviation, mm; a uniform cause reaches the square root of 3 times as
   *     far to either side
   */
  public record Cause(CauseKind kind, String which, Shape shape, double deviation) {
    public Cause {
      if (!(deviation >= 0 && Double.isFinite(deviation))) {
        throw new IllegalArgumentException(kind + " can't deviate by " + deviation + " mm");
      }
    }
  }

  /**
   * What a cause adds to a height.
   *
   * @param cause index in the model's causes
   */
  public record Term(int cause, double factor) {}

  /**
   * A shelf's place: the errors of the holes that it lies on.
   *
   * @param level number in the bay's grid
   * @param points the errors by point, in the order of {@link Point}: of the corners, or of all six
   */
  public record Position(int bay, int level, Map<Point, List<Term>> points) {
    public Position {
      if (!points.keySet().equals(Point.CORNERS) && !points.keySet().equals(Point.SIX)) {
        throw new IllegalArgumentException("a shelf can't lie on " + points.keySet());
      }
      Map<Point, List<Term>> copy = new EnumMap<>(Point.class);
      points.forEach((point, terms) -> copy.put(point, List.copyOf(terms)));
      points = Collections.unmodifiableMap(copy);
    }

    /** Whether middle pins are among them. */
    public boolean isOnSix() {
      return points.size() == Point.SIX.size();
    }

    /** On four corners. */
    public static Position of(
        int bay,
        int level,
        List<Term> leftFront,
        List<Term> leftBack,
        List<Term> rightFront,
        List<Term> rightBack) {
      return new Position(
          bay,
          level,
          Map.of(
              Point.LEFT_FRONT, leftFront,
              Point.LEFT_BACK, leftBack,
              Point.RIGHT_FRONT, rightFront,
              Point.RIGHT_BACK, rightBack));
    }
  }
}
