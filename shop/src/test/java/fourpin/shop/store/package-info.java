/** Tests of what is kept, on both databases. */
@NullMarked
package fourpin.shop.store;

import org.jspecify.annotations.NullMarked;
