package fourpin.shop.store.sql;

import fourpin.shop.store.DocumentId;
import fourpin.shop.store.KeptLayout;
import java.sql.ResultSet;
import java.sql.SQLException;
import org.jdbi.v3.core.Handle;

/** A layout as its table holds it. */
public record LayoutRow(DocumentId document, KeptLayout layout) {

  void put(Handle db) {
    db.createUpdate(
            """
            insert into layout (document, problem, material, change, body)
            values (:document, :problem, :material, :change, :body)
            on conflict (document, problem) do update set
              material = excluded.material, change = excluded.change, body = excluded.body
            """)
        .bind("document", document.value())
        .bind("problem", layout.problem())
        .bind("material", layout.material())
        .bind("change", layout.change())
        .bind("body", layout.body())
        .execute();
  }

  static LayoutRow of(ResultSet row) throws SQLException {
    return new LayoutRow(
        new DocumentId(row.getString("document")),
        new KeptLayout(
            row.getString("problem"),
            row.getString("material"),
            row.getLong("change"),
            row.getString("body")));
  }
}
