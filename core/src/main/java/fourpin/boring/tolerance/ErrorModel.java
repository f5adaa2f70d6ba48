package fourpin.boring.tolerance;

import java.util.List;

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
   * @param deviation standard deviation, mm; a uniform cause reaches the square root of 3 times as
   *     far to either side
   */
  public record Cause(String name, Shape shape, double deviation) {}

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
  }
}
