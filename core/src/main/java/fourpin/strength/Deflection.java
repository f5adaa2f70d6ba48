package fourpin.strength;

import fourpin.strength.PlateAnswer.Bends;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.Map;

/**
 * How far a shelf goes down, and how hard it is bent.
 *
 * @param sags the most along each line, mm
 * @param stress the largest in bending, MPa
 */
record Deflection(Map<Spot, Double> sags, double stress) {

  Deflection {
    sags = Collections.unmodifiableMap(new EnumMap<>(sags));
  }

  static Deflection of(Bends bends) {
    return new Deflection(
        Map.of(Spot.FRONT, bends.front(), Spot.MIDDLE, bends.middle(), Spot.BACK, bends.back()),
        bends.stress().all());
  }

  /** A beam sags alike over all its depth. */
  static Deflection of(LoadedShelf beam) {
    double sag = beam.sag();
    return new Deflection(Map.of(Spot.FRONT, sag, Spot.MIDDLE, sag, Spot.BACK, sag), beam.stress());
  }

  Deflection times(double factor) {
    Map<Spot, Double> changed = new EnumMap<>(sags);
    changed.replaceAll((_, sag) -> sag * factor);
    return new Deflection(changed, stress * factor);
  }

  /** Where it sags most; the middle where all sags are alike. */
  Spot spot() {
    return sags.keySet().stream()
        .max(Comparator.<Spot>comparingDouble(sags::get).thenComparing(s -> s == Spot.MIDDLE))
        .orElseThrow();
  }

  /** The most anywhere, mm. */
  double sag() {
    return sags.get(spot());
  }
}
