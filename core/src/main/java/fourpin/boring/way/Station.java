package fourpin.boring.way;

import fourpin.boring.way.Clamping.Bearing;
import fourpin.measure.Length;
import java.util.List;
import java.util.Optional;

/**
 * Where a guide is clamped first for one row.
 *
 * @param along from the panel's lower end up to the guide's zero
 * @param levels that are bored, rising, each as the number of pitches above the guide's first hole
 * @param ceiling from the guide's zero to the panel above, where the case stands
 */
record Station(
    Column column, Bearing bearing, Length along, List<Integer> levels, Optional<Length> ceiling) {

  Station {
    levels = List.copyOf(levels);
  }

  int top() {
    return levels.getLast();
  }
}
