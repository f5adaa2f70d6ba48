package fourpin.shop.store.sql;

import fourpin.shop.store.DocumentId;
import fourpin.shop.store.Revision;
import fourpin.shop.store.RevisionId;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/**
 * A revision as its table holds it.
 *
 * @param madeOn the edit whose text an edit was made on; nothing for the first, and for undo and
 *     redo
 * @param body the text of an edit; nothing for undo and redo
 */
public record RevisionRow(Revision revision, Optional<RevisionId> madeOn, Optional<String> body) {

  void insert(Handle db) {
    db.createUpdate(
            """
            insert into revision
              (id, document, number, kind, shows, made_on, name, body, saved_at, saved_by, why,
               variant)
            values
              (:id, :document, :number, :kind, :shows, :madeOn, :name, :body, :savedAt, :savedBy, :why,
               :variant)
            """)
        .bind("id", revision.id().value())
        .bind("document", revision.document().value())
        .bind("number", revision.number())
        .bind("kind", revision.kind().name())
        .bind("shows", revision.shows().value())
        .bind("madeOn", madeOn.map(RevisionId::value))
        .bind("name", revision.name())
        .bind("body", body)
        .bind("savedAt", revision.when().toEpochMilli())
        .bind("savedBy", revision.by())
        .bind("why", revision.why())
        .bind("variant", revision.variant())
        .execute();
  }

  static RevisionRow of(ResultSet row) throws SQLException {
    return new RevisionRow(
        revision(row),
        Optional.ofNullable(row.getString("made_on")).map(RevisionId::new),
        Optional.ofNullable(row.getString("body")));
  }

  static Revision revision(ResultSet row) throws SQLException {
    return new Revision(
        new RevisionId(row.getString("id")),
        new DocumentId(row.getString("document")),
        row.getLong("number"),
        Revision.Kind.valueOf(row.getString("kind")),
        new RevisionId(row.getString("shows")),
        row.getString("name"),
        Instant.ofEpochMilli(row.getLong("saved_at")),
        row.getString("saved_by"),
        row.getString("why"),
        Optional.ofNullable(row.getString("variant")));
  }
}
