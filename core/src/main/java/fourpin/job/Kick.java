package fourpin.job;

import fourpin.measure.Length;

/**
 * The board under the bottom.
 *
 * @param height from the floor to the bottom's lower face
 * @param recess from the front of the sides to the front of the kick; the sides are notched for it
 */
public record Kick(Length height, Length recess, String material) {}
