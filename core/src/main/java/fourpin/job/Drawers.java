package fourpin.job;

import fourpin.measure.Length;
import fourpin.measure.Quantity;

/**
 * Drawers that are alike, known only by how they pull their case forward when they are out; Fourpin
 * does not plan how they are made.
 *
 * @param count 1 or more
 * @param height of the middle of the highest one above the foot of the case
 * @param length of one, from the front of the case's sides backwards while it is shut
 * @param out how far its front comes out, at most its length
 * @param mass of one with what is in it
 */
public record Drawers(int count, Length height, Length length, Length out, Quantity mass) {}
