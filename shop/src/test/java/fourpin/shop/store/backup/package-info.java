/** Tests of backups, between both databases. */
@NullMarked
package fourpin.shop.store.backup;

import org.jspecify.annotations.NullMarked;
