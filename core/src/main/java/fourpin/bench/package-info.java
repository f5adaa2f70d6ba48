/**
 * Bench steps as typed data, and the virtual bench that runs them; knows pieces, faces, holes and
 * cuts, not furniture.
 */
@NullMarked
package fourpin.bench;

import org.jspecify.annotations.NullMarked;
