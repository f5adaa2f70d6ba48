package fourpin.shop.store.sql;

import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.mapper.RowMapper;

/**
 * All that a backup holds, as it stood at one moment, in an order that does not hang on the
 * database. Each stream is to be closed.
 */
public final class Snapshot {

  /** Rows fetched at once, so that a large store does not have to fit into memory. */
  private static final int AT_ONCE = 200;

  private final Handle db;

  Snapshot(Handle db) {
    this.db = db;
  }

  boolean isEmpty() {
    return db.createQuery("select (select count(*) from document) + (select count(*) from piece)")
            .mapTo(Long.class)
            .one()
        == 0;
  }

  public Stream<DocumentRow> documents() {
    return rows("select * from document order by id", (row, _) -> DocumentRow.of(row));
  }

  /** Each after the edit that it shows, and after the edit that it was made on. */
  public Stream<RevisionRow> revisions() {
    return rows(
        "select * from revision order by document, number", (row, _) -> RevisionRow.of(row));
  }

  public Stream<TickRow> ticks() {
    return rows(
        "select * from tick order by document, plan, step, device", (row, _) -> TickRow.of(row));
  }

  public Stream<LayoutRow> layouts() {
    return rows("select * from layout order by document, problem", (row, _) -> LayoutRow.of(row));
  }

  public Stream<PieceRow> pieces() {
    return rows("select * from piece order by id", (row, _) -> PieceRow.of(row));
  }

  private <T> Stream<T> rows(String sql, RowMapper<T> mapper) {
    return db.createQuery(sql).setFetchSize(AT_ONCE).map(mapper).stream();
  }
}
