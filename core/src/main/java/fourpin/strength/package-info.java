/** Strength of shelves and cases. */
@NullMarked
package fourpin.strength;

import org.jspecify.annotations.NullMarked;
