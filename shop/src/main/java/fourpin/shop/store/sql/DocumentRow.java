package fourpin.shop.store.sql;

import fourpin.shop.store.DocumentId;
import fourpin.shop.store.Documents.Place;
import java.sql.ResultSet;
import java.sql.SQLException;
import org.jdbi.v3.core.Handle;

/**
 * A document as its table holds it.
 *
 * @param newest number of the newest revision, and so how many there are
 */
public record DocumentRow(DocumentId id, Place place, long newest) {

  /** Unless it is there already. @return how many documents were added: none, or one */
  int insert(Handle db) {
    return db.createUpdate(
            """
            insert into document (id, place, newest) values (:id, :place, :newest)
            on conflict (id) do nothing
            """)
        .bind("id", id.value())
        .bind("place", place.name())
        .bind("newest", newest)
        .execute();
  }

  static DocumentRow of(ResultSet row) throws SQLException {
    return new DocumentRow(
        new DocumentId(row.getString("id")),
        Place.valueOf(row.getString("place")),
        row.getLong("newest"));
  }
}
