package fourpin.strength;

import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * What one end of a shelf brings to its joint by statics. Alone on one half, a load brings three
 * quarters of what it does all over.
 *
 * @param of how its load lies
 * @param place the same after "the load"
 * @param newton half of load and weight
 * @param middle of both, from the front edge, mm
 */
record EndLoad(LoadCase of, String place, double newton, double middle) {

  static final String MIDDLE = "from the front edge to the middle of load and weight";

  static List<EndLoad> all(Candidate shelf) {
    return shelf.cases().onBothEnds().stream().map(of -> of(shelf, of)).toList();
  }

  private static EndLoad of(Candidate shelf, LoadCase of) {
    Resting resting = Resting.of(shelf, of);
    return new EndLoad(of, of.place(), (resting.load() + resting.own()) / 2, resting.middle());
  }

  static EndLoad most(List<EndLoad> loads, ToDoubleFunction<EndLoad> by) {
    return Collections.max(loads, Comparator.comparingDouble(by));
  }

  /** On the most loaded of screws in a row that give alike, N. @param places of them, mm */
  double onScrew(List<Double> places) {
    double square = places.stream().mapToDouble(y -> Math.pow(y - mean(places), 2)).sum();
    double even = newton / places.size();
    double turned = newton * Math.abs(middle - mean(places)) * furthest(places);
    return square > 0 ? even + turned / square : even;
  }

  /** How {@link #onScrew} is worked out: of one alone nothing is turned about. */
  static String onScrewFormula(List<Double> places) {
    return furthest(places) > 0 ? "R / n + R × |y - y₀| × (y₁ - y₀) / Σ (yᵢ - y₀)²" : "R / n";
  }

  /**
   * Where it presses hardest on a line that gives alike and only pushes, N/mm. At the very edge it
   * would press without bounds; wood gives way there.
   *
   * @param least over which it bears at the least, mm
   */
  double onLine(double length, double least) {
    return gapes(length)
        ? 2 * newton / Math.max(3 * near(length), least)
        : newton / length * (1 + 6 * (length / 2 - near(length)) / length);
  }

  /** How {@link #onLine} is worked out, over a line D long and a wide, of it t at the least. */
  String onLineFormula(double length) {
    return gapes(length)
        ? "2 R / (a max(3 min(y, D - y), t))"
        : "R / (a D) × (1 + 6 × |D / 2 - y| / D)";
  }

  /** Whether it lies so near one end that the other bears nothing. */
  private boolean gapes(double length) {
    return near(length) < length / 3;
  }

  private double near(double length) {
    return Math.min(middle, length - middle);
  }

  static double mean(List<Double> places) {
    return places.stream().mapToDouble(Double::doubleValue).average().orElse(0);
  }

  static double furthest(List<Double> places) {
    return places.stream().mapToDouble(y -> Math.abs(y - mean(places))).max().orElse(0);
  }
}
