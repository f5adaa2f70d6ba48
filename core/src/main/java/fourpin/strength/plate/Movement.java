package fourpin.strength.plate;

import fourpin.strength.plate.Plate.Edges;
import java.util.List;

/**
 * A way in which a plate that nothing holds moves as a whole.
 *
 * @param sinks how far it goes down at the left front corner
 * @param alongX how much farther at the right end
 * @param alongY how much farther at the back edge
 */
record Movement(double sinks, double alongX, double alongY) {

  private static final Movement SINKS = new Movement(1, 0, 0);
  private static final Movement ROLLS_RIGHT = new Movement(0, 1, 0);
  private static final Movement ROLLS_BACK = new Movement(0, 0, 1);

  /** About the middle line, which an upside-down image leaves where it is. */
  private static final Movement SEESAWS = new Movement(1, -2, 0);

  /** Those of a plate; none where its edges hold it. */
  static List<Movement> of(Plate plate, Fold fold) {
    if (!plate.edges().equals(Edges.FREE)) {
      return List.of();
    }
    return switch (fold) {
      case WHOLE -> List.of(SINKS, ROLLS_RIGHT, ROLLS_BACK);
      case EVEN -> List.of(SINKS, ROLLS_BACK);
      case ODD -> List.of(SEESAWS);
    };
  }

  /**
   * How far a place goes down.
   *
   * @param x as a share of the length
   * @param y as a share of the depth
   */
  double at(double x, double y) {
    return sinks + alongX * x + alongY * y;
  }
}
