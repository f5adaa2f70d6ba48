/**
 * Woods, panels, loads and hardware: tables with source, range and unit, from the class path.
 *
 * <p>A value that was read in the work named is marked published; a value that was not is marked
 * from memory and decides nothing alone.
 */
@NullMarked
package fourpin.reference;

import org.jspecify.annotations.NullMarked;
