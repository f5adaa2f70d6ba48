package fourpin.strength;

import fourpin.strength.Verdict.Most;
import java.util.Optional;
import java.util.function.DoubleFunction;

/**
 * Looks for the longest span that is within all limits when its plate is bent: by rough plates, and
 * from there by fine ones. What a plate sags from front to back does not get less over a shorter
 * span, and is then too much for it: there may be no such span.
 */
final class LongestSpan {

  private static final int MOST_STEPS = 20;

  /** What the next span tried is to use. */
  private static final double AIM = 0.995;

  /** A span that uses less is not the longest. */
  private static final double NEARLY_ALL = 0.99;

  /** Sag over span grows with the cube of the span or less, and with no less than its root. */
  private static final double STEEPEST = 3;

  private static final double FLATTEST = 0.5;

  /** What spans less, in mm, is no shelf. */
  private static final double SHORTEST = 50;

  private final DoubleFunction<Use> rough;
  private final DoubleFunction<Use> fine;

  /**
   * @param rough what a rough plate uses most of what is allowed over a span in mm
   * @param fine likewise
   */
  LongestSpan(DoubleFunction<Use> rough, DoubleFunction<Use> fine) {
    this.rough = rough;
    this.fine = fine;
  }

  /**
   * @param tooLong from which the first that holds is looked for, where the guess is a bad one
   * @return nothing if no span holds
   */
  Optional<Most> find(double guess, double tooLong) {
    return walk(rough, guess)
        .or(() -> walk(rough, tooLong))
        .flatMap(near -> walk(fine, near.number()))
        .or(() -> walk(fine, tooLong));
  }

  /**
   * Down to the first span that holds, and up again while it leaves much. In logarithms what is
   * used lies nearly on a straight line.
   */
  private static Optional<Most> walk(DoubleFunction<Use> of, double from) {
    Optional<Most> low = Optional.empty();
    Optional<Most> high = Optional.empty();
    double power = STEEPEST;
    Most last = new Most(from, of.apply(from));
    for (int i = 0; i < MOST_STEPS && !isLongest(last); i++) {
      low = last.governs().holds() ? Optional.of(last) : low;
      high = last.governs().holds() ? high : Optional.of(last);
      double span = next(low, high, last, power);
      if (span < SHORTEST || i == MOST_STEPS - 1) {
        return low;
      }
      Most now = new Most(span, of.apply(span));
      power = power(last, now);
      if (power < 0 && low.isEmpty()) {
        return Optional.empty();
      }
      power = Math.clamp(power, FLATTEST, STEEPEST);
      last = now;
    }
    return Optional.of(last);
  }

  private static boolean isLongest(Most tried) {
    double share = tried.governs().share();
    return share <= 1 && (share >= NEARLY_ALL || tried.number() >= ShelfLimits.LONGEST_SPAN_MM);
  }

  private static double next(Optional<Most> low, Optional<Most> high, Most last, double power) {
    double by =
        low.flatMap(one -> high.map(other -> power(one, other)))
            .map(p -> Math.clamp(p, FLATTEST, 2 * STEEPEST))
            .orElse(power);
    Most from = low.orElse(last);
    double span = from.number() * Math.pow(AIM / from.governs().share(), 1 / by);
    return Math.min(span, ShelfLimits.LONGEST_SPAN_MM);
  }

  /** With which power of the span what is used grows. */
  private static double power(Most one, Most other) {
    return Math.log(other.governs().share() / one.governs().share())
        / Math.log(other.number() / one.number());
  }
}
