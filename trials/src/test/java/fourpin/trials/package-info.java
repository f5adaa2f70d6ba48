@NullMarked
package fourpin.trials;

import org.jspecify.annotations.NullMarked;
