package fourpin.strength;

import fourpin.strength.PlateAnswer.Bends;

/**
 * How far a shelf goes down, and how hard it is bent.
 *
 * @param front the most along its front edge, mm
 * @param middle likewise in the middle of its depth
 * @param back likewise along its back edge
 * @param stress the largest in bending, MPa
 */
record Deflection(double front, double middle, double back, double stress) {

  static Deflection of(Bends bends) {
    return new Deflection(bends.front(), bends.middle(), bends.back(), bends.stress().all());
  }

  /** A beam sags alike over all its depth. */
  static Deflection of(LoadedShelf beam) {
    double sag = beam.sag();
    return new Deflection(sag, sag, sag, beam.stress());
  }

  Deflection times(double factor) {
    return new Deflection(front * factor, middle * factor, back * factor, stress * factor);
  }

  double at(Spot spot) {
    return switch (spot) {
      case FRONT -> front;
      case MIDDLE -> middle;
      case BACK -> back;
    };
  }

  /** Where it sags most; the middle where all sags are alike. */
  Spot spot() {
    double edge = Math.max(front, back);
    return middle >= edge ? Spot.MIDDLE : front >= back ? Spot.FRONT : Spot.BACK;
  }

  /** The most anywhere, mm. */
  double sag() {
    return at(spot());
  }
}
