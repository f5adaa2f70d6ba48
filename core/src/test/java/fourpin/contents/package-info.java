@NullMarked
package fourpin.contents;

import org.jspecify.annotations.NullMarked;
