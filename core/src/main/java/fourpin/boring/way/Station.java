package fourpin.boring.way;

import fourpin.boring.way.Clamping.Bearing;
import fourpin.measure.Length;
import java.util.List;
import java.util.Optional;

/**
 * Where a guide is clamped first for one row.
 *
 * @param along from the panel's lower end up to the guide's zero
 */
record Station(Column column, Bearing bearing, Length along, Run run) {

  /**
   * What of a row is bored from one bearing. Many rows of a case are alike in that.
   *
   * @param levels that are bored, rising, each as the number of pitches above the guide's first
   *     hole
   * @param ceiling from the guide's zero to the panel above, where the case stands
   */
  record Run(List<Integer> levels, Optional<Length> ceiling) {
    Run {
      levels = List.copyOf(levels);
    }

    int top() {
      return levels.getLast();
    }

    /** By how many pitches a guide of a length can be moved up. */
    int room(Length guide, Length pitch) {
      return ceiling.map(c -> (int) c.minus(guide).wholeTimes(pitch)).orElse(Integer.MAX_VALUE);
    }
  }
}
