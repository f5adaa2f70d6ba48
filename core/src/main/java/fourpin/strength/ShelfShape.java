package fourpin.strength;

import fourpin.measure.Figure;
import fourpin.strength.SpanTable.Lying;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * How a shelf lies, to be drawn, with its load as it sags most.
 *
 * @param load how it lies
 * @param now how far the shelf then goes down at the most, with its working
 * @param years the same after years
 * @param length of the shelf, mm
 * @param supports where it is carried along its length, mm from its left end, rising
 * @param sags how far each line has gone down below the supports' tops, at places spread evenly
 *     from end to end, mm; the same number of places for each line
 */
public record ShelfShape(
    Lying load,
    Figure now,
    Figure years,
    double length,
    List<Double> supports,
    Map<Spot, List<Double>> sags) {

  public ShelfShape {
    supports = List.copyOf(supports);
    sags = Collections.unmodifiableMap(new EnumMap<>(sags));
  }
}
