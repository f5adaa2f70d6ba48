@NullMarked
package fourpin.boring.tolerance;

import org.jspecify.annotations.NullMarked;
