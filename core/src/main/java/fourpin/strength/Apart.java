package fourpin.strength;

/**
 * What draws the sides of a bay apart besides what the job states, so that less of each pin lies
 * under a shelf.
 *
 * @param bow of one side where its shelves stand, mm
 * @param breath by how much the bay grows wider over the year, and the shelf does not, mm
 */
record Apart(double bow, double breath) {}
