/** The command line: what a maker types, and what it answers. */
@NullMarked
package fourpin.shop.line;

import org.jspecify.annotations.NullMarked;
