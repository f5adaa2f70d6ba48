/** Changes to the text of a job file that leave everything else in it as it was written. */
@NullMarked
package fourpin.shop.edit;

import org.jspecify.annotations.NullMarked;
