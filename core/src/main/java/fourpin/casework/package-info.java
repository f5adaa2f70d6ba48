/**
 * Parts and features in space.
 *
 * <p>Case coordinates: x from the outer face of the left side to the right, y from the front of the
 * sides to the back, z from the foot of the sides up. What stands in front of the sides (face
 * frame, overlay doors) has negative y. The foot of the sides is the datum of every height in a
 * case.
 */
@NullMarked
package fourpin.casework;

import org.jspecify.annotations.NullMarked;
