/**
 * What a shop keeps: job files and the shop file with all their revisions, ticks of bench steps,
 * the rack, and paired devices. In one file by SQLite, or on a PostgreSQL server.
 */
@NullMarked
package fourpin.shop.store;

import org.jspecify.annotations.NullMarked;
