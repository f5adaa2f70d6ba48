/**
 * The ways in which this shop can bore a case: which are possible, with which guide, stops and
 * clampings, how long they take, what they cost, and which to take.
 */
@NullMarked
package fourpin.boring.way;

import org.jspecify.annotations.NullMarked;
