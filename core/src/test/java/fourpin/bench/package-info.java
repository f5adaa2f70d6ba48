@NullMarked
package fourpin.bench;

import org.jspecify.annotations.NullMarked;
