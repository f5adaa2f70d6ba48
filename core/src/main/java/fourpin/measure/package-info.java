/** Lengths, fractions, quantities, and figures with their working. */
@NullMarked
package fourpin.measure;

import org.jspecify.annotations.NullMarked;
