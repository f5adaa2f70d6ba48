@NullMarked
package fourpin.strength.plate;

import org.jspecify.annotations.NullMarked;
