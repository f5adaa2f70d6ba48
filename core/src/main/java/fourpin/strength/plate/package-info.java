/**
 * Thin plates of wood, panels and glass on points and edges: a solver that knows no furniture.
 *
 * <p>Forces in N, lengths in mm, stresses in MPa. The x axis runs along the plate, the y axis over
 * its depth from the front edge; downward is positive, for loads, deflections and places of
 * supports.
 */
@NullMarked
package fourpin.strength.plate;

import org.jspecify.annotations.NullMarked;
