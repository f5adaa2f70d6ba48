package fourpin.strength;

import fourpin.strength.ShelfOnSupports.Bearing;
import java.util.Optional;

/** Over which of its rows of supports a shelf tips. */
enum Over {
  FRONT("front", "back"),
  BACK("back", "front");

  private final String row;
  private final String off;

  Over(String row, String off) {
    this.row = row;
    this.off = off;
  }

  /** That row, and the edge before it. */
  String row() {
    return row;
  }

  /** The row that it lifts off. */
  String off() {
    return off;
  }

  /** Nothing of a shelf in joints. */
  static Optional<Over> of(Candidate shelf, LoadCase of) {
    return shelf.bearing() instanceof Bearing.Rows rows
        ? Optional.of(of(shelf, rows, of))
        : Optional.empty();
  }

  private static Over of(Candidate shelf, Bearing.Rows rows, LoadCase of) {
    double fromBack = Resting.of(shelf, of).from(BACK, shelf).middle();
    return fromBack < BACK.setback(rows) ? BACK : FRONT;
  }

  /** From that edge of the shelf to that row, mm. */
  double setback(Bearing.Rows rows) {
    return switch (this) {
      case FRONT -> rows.front().number();
      case BACK -> rows.back().number();
    };
  }
}
