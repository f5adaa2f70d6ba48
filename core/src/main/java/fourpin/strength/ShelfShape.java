package fourpin.strength;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * How a loaded shelf lies, to be drawn.
 *
 * @param length of the shelf, mm
 * @param supports where it is carried along its length, mm from its left end, rising
 * @param sags how far each line has gone down below the supports' tops, at places spread evenly
 *     from end to end, mm; the same number of places for each line
 */
public record ShelfShape(double length, List<Double> supports, Map<Spot, List<Double>> sags) {

  public ShelfShape {
    supports = List.copyOf(supports);
    sags = Collections.unmodifiableMap(new EnumMap<>(sags));
  }
}
