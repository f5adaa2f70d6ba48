@NullMarked
package fourpin.reference;

import org.jspecify.annotations.NullMarked;
