package fourpin.strength;

import fourpin.strength.ShelfOnSupports.Bearing;
import fourpin.strength.ShelfPlate.Prop;

/**
 * How hard a shelf presses on one of its supports at the least, by statics alone: where that is too
 * much, its plate need not be bent. Shelves are alike on both sides, so that each end carries half.
 */
final class LeastPush {

  private static final int ENDS = 2;

  /** What is passed by no more than rounding is left to the plate. */
  private static final double CLEARLY = 1 - 1e-6;

  private LeastPush() {}

  static boolean isTooMuch(Candidate shelf) {
    return shelf.bearing() instanceof Bearing.Rows rows
        && shelf.prop() == Prop.NONE
        && shelf.supports().stream().anyMatch(limit -> limit.isPassedBy(CLEARLY * of(shelf, rows)));
  }

  private static double of(Candidate shelf, Bearing.Rows rows) {
    return shelf.cases().loadedAllOver().stream()
        .map(of -> Resting.of(shelf, of))
        .mapToDouble(resting -> resting.all() / ENDS * share(shelf, rows, resting))
        .max()
        .orElse(0);
  }

  /** Two rows carry by the law of the lever; of three, one carries no less than their mean. */
  private static double share(Candidate shelf, Bearing.Rows rows, Resting resting) {
    return switch (rows.count()) {
      case TWO -> larger((resting.middle() - rows.front().number()) / rows.between(depth(shelf)));
      case THREE -> 1 / 3.0;
    };
  }

  private static double depth(Candidate shelf) {
    return shelf.beam().section().depth();
  }

  private static double larger(double share) {
    return Math.max(share, 1 - share);
  }
}
