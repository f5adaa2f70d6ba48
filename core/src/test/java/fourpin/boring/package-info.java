@NullMarked
package fourpin.boring;

import org.jspecify.annotations.NullMarked;
