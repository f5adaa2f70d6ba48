/** Parts and stock as tables, for cutting without a case. */
@NullMarked
package fourpin.shop.cut;

import org.jspecify.annotations.NullMarked;
