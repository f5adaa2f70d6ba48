/**
 * How far holes that should lie at one height miss each other, and the odds that a shelf rocks on
 * them.
 */
@NullMarked
package fourpin.boring.tolerance;

import org.jspecify.annotations.NullMarked;
