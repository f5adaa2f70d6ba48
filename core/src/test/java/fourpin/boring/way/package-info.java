@NullMarked
package fourpin.boring.way;

import org.jspecify.annotations.NullMarked;
