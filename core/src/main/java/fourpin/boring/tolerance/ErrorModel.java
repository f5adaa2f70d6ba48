package fourpin.boring.tolerance;

import fourpin.boring.tolerance.Miss.Corner;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * How the heights of holes miss, as sums of causes that are independent of each other. Causes that
 * holes have in common make their errors alike, and what is alike in all four holes of a shelf
 * doesn't rock it.
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
   * A shelf's place: the errors of its four holes.
   *
   * @param level number in the bay's grid
   */
  public record Position(
      int bay,
      int level,
      List<Term> leftFront,
      List<Term> leftBack,
      List<Term> rightFront,
      List<Term> rightBack) {
    public Position {
      leftFront = List.copyOf(leftFront);
      leftBack = List.copyOf(leftBack);
      rightFront = List.copyOf(rightFront);
      rightBack = List.copyOf(rightBack);
    }

    /** The errors by corner, in the order of {@link Corner}. */
    public Map<Corner, List<Term>> corners() {
      Map<Corner, List<Term>> corners = new EnumMap<>(Corner.class);
      corners.put(Corner.LEFT_FRONT, leftFront);
      corners.put(Corner.LEFT_BACK, leftBack);
      corners.put(Corner.RIGHT_FRONT, rightFront);
      corners.put(Corner.RIGHT_BACK, rightBack);
      return corners;
    }
  }
}
