package fourpin.plan;

import fourpin.job.Setting;
import fourpin.job.Settings;
import fourpin.measure.Length;
import fourpin.reference.Reference;
import fourpin.reference.ShelfPin;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Sizes in which bits and cutters can be bought or borrowed. */
record SoldSizes(Settings settings) {

  /** Nobody takes a bit for one that is more than twice as wide, or less than half. */
  private static final int MOST_TIMES = 2;

  /** Whether one may be taken for the other. */
  static boolean areNear(Length one, Length other) {
    return !one.isMoreThan(other.times(MOST_TIMES)) && !other.isMoreThan(one.times(MOST_TIMES));
  }

  /**
   * The next wider bit, or else the next narrower: one for pins, or where the right one is wider
   * than all of these, by steps.
   */
  Optional<Length> bitBeside(Length right, Predicate<Length> fits) {
    List<Length> pins = Reference.pins().rows().stream().map(ShelfPin::hole).toList();
    boolean wide = pins.stream().allMatch(right::isMoreThan);
    return beside(right, wide ? Stream.concat(pins.stream(), inSteps(right)) : pins.stream(), fits);
  }

  Optional<Length> cutterBeside(Length right) {
    return beside(right, inSteps(right), _ -> true);
  }

  private static Optional<Length> beside(
      Length right, Stream<Length> sizes, Predicate<Length> fits) {
    return sizes
        .filter(s -> !s.equals(right))
        .filter(fits)
        .min(
            Comparator.comparing((Length s) -> s.isLessThan(right))
                .thenComparing(s -> s.minus(right).abs()));
  }

  /** The whole steps on either side. */
  private Stream<Length> inSteps(Length right) {
    Length step = settings.length(Setting.CUTTER_STEP);
    long below = right.wholeTimes(step);
    return Stream.of(below - 1, below, below + 1).map(step::times).filter(Length::isPositive);
  }
}
