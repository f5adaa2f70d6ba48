/** Tests of the tables themselves. */
@NullMarked
package fourpin.shop.store.sql;

import org.jspecify.annotations.NullMarked;
