@NullMarked
package fourpin.cutting;

import org.jspecify.annotations.NullMarked;
