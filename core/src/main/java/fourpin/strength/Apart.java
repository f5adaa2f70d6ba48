package fourpin.strength;

import fourpin.measure.Sourced;

/**
 * What draws the sides of a bay apart besides what the job states, so that less of each pin lies
 * under a shelf.
 *
 * @param bow of one side at once, where its shelves stand, mm
 * @param creep bow of that side after years over bow at first
 * @param breath by how much the bay grows wider over the year, and the shelf does not, mm
 */
record Apart(double bow, Sourced creep, double breath) {

  /** Of one side after years, mm. */
  double bowInYears() {
    return bow * creep.number();
  }
}
