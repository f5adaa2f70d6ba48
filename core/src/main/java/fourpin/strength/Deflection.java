package fourpin.strength;

import fourpin.measure.Lazy;
import fourpin.strength.PlateAnswer.Bends;
import fourpin.strength.PlateAnswer.Stress;
import java.util.List;

/**
 * How far a shelf goes down, and how hard it is bent.
 *
 * @param front the most along its front edge, mm
 * @param middle likewise in the middle of its depth
 * @param back likewise along its back edge
 * @param sag the most anywhere
 * @param across the largest stress in each of its layers in the middle of its length
 * @param strips the largest in each of its strips
 * @param stresses the largest anywhere
 */
record Deflection(
    double front,
    double middle,
    double back,
    double sag,
    Lazy<List<Stress>> across,
    Lazy<List<Stress>> strips,
    Lazy<List<Stress>> stresses) {

  /** What differs by less than this share is an error of the sums. */
  private static final double ALIKE = 1 - 1e-6;

  static Deflection of(Bends bends) {
    return new Deflection(
        bends.front(),
        bends.middle(),
        bends.back(),
        bends.sag(),
        bends.across(),
        bends.strips(),
        bends.stresses());
  }

  /** A beam sags alike over all its depth. */
  static Deflection of(LoadedShelf beam) {
    double sag = beam.sag();
    Lazy<List<Stress>> stresses = Lazy.of(() -> beam.stresses(beam.moment()));
    return new Deflection(sag, sag, sag, sag, stresses, stresses, stresses);
  }

  double at(Spot spot) {
    return switch (spot) {
      case FRONT -> front;
      case MIDDLE -> middle;
      case BACK -> back;
    };
  }

  /** Where it sags most, in words. */
  String there() {
    boolean both = Math.min(front, back) >= ALIKE * Math.max(front, back);
    return both && spot() == Spot.BACK ? "at both edges" : spot().there();
  }

  /** Which line sags most; the middle where all sag alike, the back where both edges do. */
  Spot spot() {
    double edge = Math.max(front, back);
    return middle >= ALIKE * edge ? Spot.MIDDLE : back >= ALIKE * front ? Spot.BACK : Spot.FRONT;
  }
}
