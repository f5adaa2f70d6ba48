package fourpin.strength;

import fourpin.casework.Face;
import fourpin.casework.Part;
import fourpin.job.Edging;
import fourpin.job.Material;
import fourpin.measure.Length;
import fourpin.strength.Made.Stripped;
import fourpin.strength.ShelfOnSupports.Bearing;

/**
 * How thick a strip may be that hangs below an edge of a shelf, so that the supports keep their
 * place under the panel.
 *
 * @param front from the front edge to what the front row takes, mm; without end for what rests on
 *     no rows
 * @param back likewise
 */
record StripRoom(double front, double back) {

  /** Lengths are exact, and their mm are not. */
  private static final double ROUNDING = 1e-9;

  /**
   * @param breadth of what is bored, cut or stands in a row, from front to back
   */
  static StripRoom of(Bearing bearing, Length breadth) {
    return switch (bearing) {
      case Bearing.Rows rows ->
          new StripRoom(
              rows.front().number() - breadth.mm() / 2, rows.back().number() - breadth.mm() / 2);
      case Bearing.WholeEnd _ -> new StripRoom(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);
    };
  }

  /** For a strip as thick as its board on each of the edges. */
  boolean has(Material board, Stripped edges) {
    double least =
        switch (edges) {
          case FRONT -> front;
          case FRONT_AND_BACK -> Math.min(front, back);
        };
    return board.thickness().mm() <= least + ROUNDING;
  }

  /** For the rows themselves, and for strips of a shelf as they are that hang below it. */
  boolean isLeftBy(Part shelf) {
    return Math.min(front, back) >= -ROUNDING && hasStripsOf(shelf);
  }

  private boolean hasStripsOf(Part shelf) {
    return shelf.edging().stream()
        .filter(band -> band.edging().kind() == Edging.Kind.STRIP)
        .filter(band -> band.edging().height().isMoreThan(shelf.thickness()))
        .allMatch(band -> band.edging().thickness().mm() <= room(band.face()) + ROUNDING);
  }

  /** On the ends they lie over supports wherever those stand. */
  private double room(Face edge) {
    return switch (edge) {
      case FRONT -> front;
      case BACK -> back;
      case LEFT, RIGHT, BOTTOM, TOP -> Double.POSITIVE_INFINITY;
    };
  }
}
