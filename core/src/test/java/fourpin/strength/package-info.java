@NullMarked
package fourpin.strength;

import org.jspecify.annotations.NullMarked;
