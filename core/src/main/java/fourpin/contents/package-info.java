/** What stands on the shelves, and whether it fits there. */
@NullMarked
package fourpin.contents;

import org.jspecify.annotations.NullMarked;
