package fourpin.strength;

import fourpin.strength.Beam.Load;
import java.util.List;

/**
 * What a support carries of a board that lies over many, taken for a lever between each two: all of
 * what stands right over it, and nothing of what stands over the next.
 *
 * @param at its place along the board, mm
 * @param before how far the support before it is; none for the first
 * @param behind likewise the next
 */
record Tributary(double at, double before, double behind) {

  /**
   * @param all places of supports, from the left
   */
  static Tributary of(double at, List<Double> all) {
    return new Tributary(
        at,
        all.stream().filter(x -> x < at).mapToDouble(x -> at - x).min().orElse(0),
        all.stream().filter(x -> x > at).mapToDouble(x -> x - at).min().orElse(0));
  }

  /** Of a load in N at a place. */
  double of(double load, double place) {
    double far = place < at ? before : behind;
    return far == 0 ? load : load * Math.max(0, 1 - Math.abs(place - at) / far);
  }

  /** Of an even load. */
  double of(Load.Even load) {
    return load.perMm()
        * (side(at - load.to(), at - load.from(), before)
            + side(load.from() - at, load.to() - at, behind));
  }

  /** Of a load of 1 N/mm on one side, from and to so far off. */
  private static double side(double from, double to, double far) {
    double near = Math.max(0, from);
    double end = far == 0 ? Math.max(0, to) : Math.clamp(to, 0, far);
    double length = Math.max(0, end - near);
    return far == 0 ? length : length * (1 - (near + end) / 2 / far);
  }
}
