package fourpin.strength;

/**
 * Where a load and the weight of a shelf rest, front to back: a shelf tips where the middle of both
 * lies before its front row, and likewise behind its back row.
 *
 * @param load N
 * @param at its middle, from the front edge, mm
 * @param own the shelf's own weight, N
 * @param centre the middle of that, from the front edge, mm
 */
record Resting(double load, double at, double own, double centre) {

  static Resting of(Candidate shelf, LoadCase of) {
    LoadedShelf beam = shelf.beam();
    double depth = ShelfPlate.depth(beam);
    double banding = beam.section().depth() - depth;
    double own = beam.section().weight() * beam.length();
    double centre = beam.section().centreOfWeight();
    double load = of.newton(beam.load() * beam.length());
    return new Resting(load, banding + of.middle(depth), own, centre);
  }

  /** The same with all places from another edge. */
  Resting from(Over edge, Candidate shelf) {
    double depth = shelf.beam().section().depth();
    return switch (edge) {
      case FRONT -> this;
      case BACK -> new Resting(load, depth - at, own, depth - centre);
    };
  }

  /** Of both, N. */
  double all() {
    return load + own;
  }

  /** Of both, from the front edge, mm. */
  double middle() {
    return (load * at + own * centre) / all();
  }

  /**
   * What holds the shelf down so far behind the row over which it tips, N.
   *
   * @param front from the edge to that row, mm
   * @param margin by which the load may be larger
   */
  double heldDown(double front, double behind, double margin) {
    return Math.max(0, (margin * load * (front - at) - own * (centre - front)) / behind);
  }

  /** The load at which it is about to tip, N; none where it tips by itself. */
  double most(double front) {
    return Math.max(0, own * (centre - front) / (front - at));
  }
}
