/**
 * Hole rows from one pattern in space, grooves for standards, strips for cleats, and where shelves
 * lie on them.
 */
@NullMarked
package fourpin.boring;

import org.jspecify.annotations.NullMarked;
