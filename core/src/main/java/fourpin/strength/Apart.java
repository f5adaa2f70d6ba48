package fourpin.strength;

import fourpin.measure.Figure;
import fourpin.measure.Sourced;
import java.util.Optional;

/**
 * What draws the sides of a bay apart besides what the job states, so that less of each pin lies
 * under a shelf.
 *
 * @param bow of one side at once, where its shelves stand, mm
 * @param creep bow of that side after years over bow at first
 * @param breath by how much the bay grows wider over the year, and the shelf does not, mm
 * @param shrinks by how much the shelf gets less deep in the driest month; nothing for panels
 */
record Apart(double bow, Sourced creep, double breath, Optional<Figure> shrinks) {

  /** Of one side after years, mm. */
  double bowInYears() {
    return bow * creep.number();
  }
}
