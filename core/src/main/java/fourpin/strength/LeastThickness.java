package fourpin.strength;

import fourpin.measure.Length;
import fourpin.measure.Unit;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** How thick a panel has to be at the least, in steps that makers name. */
final class LeastThickness {

  /** Nobody makes a panel so many times as thick as it is. */
  private static final int MOST_TIMES = 4;

  private static final Length STEP_INCHES = Length.inches(1, 8);
  private static final Length STEP_METRIC = Length.mm(1);

  private LeastThickness() {}

  /** What is thicker than it is now, thinnest first. */
  static Stream<Length> steps(double now, Unit unit) {
    Length step = unit.customary() ? STEP_INCHES : STEP_METRIC;
    int first = (int) Math.floor(now / step.mm()) + 1;
    return IntStream.range(0, (int) (MOST_TIMES * now / step.mm()))
        .mapToObj(i -> step.times(first + i));
  }
}
