/** The store in a database: the same SQL for SQLite and PostgreSQL. */
@NullMarked
package fourpin.shop.store.sql;

import org.jspecify.annotations.NullMarked;
