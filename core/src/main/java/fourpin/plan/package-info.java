/** Ties the answers together into one plan. */
@NullMarked
package fourpin.plan;

import org.jspecify.annotations.NullMarked;
