package fourpin.boring.way;

import fourpin.boring.BayGrid;
import fourpin.boring.BayGrid.Row;
import fourpin.casework.BaySpace;
import fourpin.casework.Face;
import fourpin.casework.Part;
import fourpin.measure.Length;

/**
 * A row of a bay as it is bored in one face of one panel.
 *
 * @param face of the panel, looking into the bay
 */
record Column(BayGrid grid, BaySpace bay, Part part, Face face, Row row) {

  /** From the panel's front edge inwards to the centres. */
  Length fromFront() {
    return row.y().minus(part.box().at(Face.FRONT));
  }

  /** From the panel's back edge inwards to the centres. */
  Length fromBack() {
    return part.box().at(Face.BACK).minus(row.y());
  }

  /** Height of the panel's lower end above the foot of the case. */
  Length end() {
    return part.box().at(Face.BOTTOM);
  }
}
