/**
 * A store as one file of plain texts, the same from either database: docs/backup.md describes it.
 */
@NullMarked
package fourpin.shop.store.backup;

import org.jspecify.annotations.NullMarked;
