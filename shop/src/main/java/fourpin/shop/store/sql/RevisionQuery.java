package fourpin.shop.store.sql;

import fourpin.shop.store.Revision;
import fourpin.shop.store.Written;
import java.util.Map;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Query;

/** Looks revisions up. */
final class RevisionQuery {

  private static final String REVISIONS =
      """
      select r.id, r.document, r.number, r.kind, r.shows, r.name, r.saved_at, r.saved_by, r.why,
        r.variant, s.body
      from revision r join revision s on s.id = r.shows
      """;

  private static final String NEWEST =
      REVISIONS + "join document d on d.id = r.document and d.newest = r.number ";

  private final Query query;

  private RevisionQuery(Handle db, String sql, Map<String, ?> values) {
    query = db.createQuery(sql).bindMap(values);
  }

  /**
   * @param rest from "where" on; r is the revision, s the edit that it shows
   */
  static RevisionQuery all(Handle db, String rest, Map<String, ?> values) {
    return new RevisionQuery(db, REVISIONS + rest, values);
  }

  /** Newest revisions only. @param rest from "where" on; d is the document besides */
  static RevisionQuery newest(Handle db, String rest, Map<String, ?> values) {
    return new RevisionQuery(db, NEWEST + rest, values);
  }

  Stream<Revision> revisions() {
    return query.map((row, _) -> RevisionRow.revision(row)).stream();
  }

  Stream<Written> written() {
    return query
        .map((row, _) -> new Written(RevisionRow.revision(row), row.getString("body")))
        .stream();
  }
}
