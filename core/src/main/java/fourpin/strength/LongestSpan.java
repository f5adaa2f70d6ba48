package fourpin.strength;

import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/**
 * Looks for the longest span that is within the limits when its plate is bent. What a plate sags
 * from front to back does not get less over a shorter span, and is then too much for it: there may
 * be no such span.
 */
final class LongestSpan {

  private static final int MOST_STEPS = 20;

  /** A span that uses this much of what is allowed holds: rough plates may say 2 % too little. */
  private static final double HOLDS = 0.98;

  /** What the next span tried is to use. */
  private static final double AIM = 0.97;

  /** A guess that uses less is not the longest. */
  private static final double NEARLY_ALL = 0.93;

  /** What spans less, in mm, is no shelf. */
  private static final double SHORTEST = 50;

  private final DoubleUnaryOperator use;

  /**
   * @param use how much of what is allowed a rough plate uses over a span in mm; over 1 it fails
   */
  LongestSpan(DoubleUnaryOperator use) {
    this.use = use;
  }

  /**
   * @param tooLong from which the first that holds is looked for, where the guess is a bad one
   * @return nothing if no span holds
   */
  Optional<Double> find(double guess, double tooLong) {
    return walk(guess, 2)
        .filter(span -> use.applyAsDouble(span) >= NEARLY_ALL)
        .or(() -> walk(tooLong, MOST_STEPS));
  }

  /** Use grows with the cube of the span or less: no step is too long. */
  private Optional<Double> walk(double from, int steps) {
    double span = from;
    double last = Double.POSITIVE_INFINITY;
    for (int i = 0; i < steps && span >= SHORTEST; i++) {
      double now = use.applyAsDouble(span);
      if (now <= HOLDS) {
        return Optional.of(span);
      }
      if (now >= last) {
        return Optional.empty();
      }
      last = now;
      span *= Math.cbrt(AIM / now);
    }
    return Optional.empty();
  }
}
