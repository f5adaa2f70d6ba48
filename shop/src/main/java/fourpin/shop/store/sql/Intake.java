package fourpin.shop.store.sql;

import java.util.List;
import org.jdbi.v3.core.Handle;

/** Takes rows into a store, documents first, then their revisions and ticks. */
public final class Intake {

  private final Handle db;

  Intake(Handle db) {
    this.db = db;
  }

  public void put(DocumentRow row) {
    row.insert(db);
  }

  public void put(RevisionRow row) {
    row.insert(db);
  }

  public void put(TickRow row) {
    row.merge(db);
  }

  public void put(LayoutRow row) {
    row.put(db);
  }

  public void put(PieceRow row) {
    row.insert(db);
  }

  /** Devices stay: they are paired with this shop, whatever it keeps. */
  void clear() {
    List.of("tick", "layout", "revision", "document", "piece")
        .forEach(table -> db.execute("delete from " + table));
  }

  /** Documents of which a revision is missing, or one too many is there. */
  List<String> incomplete() {
    return db.createQuery(
            """
            select d.id from document d left join revision r on r.document = d.id
            group by d.id, d.newest having count(r.id) <> d.newest or max(r.number) <> d.newest
            order by d.id
            """)
        .mapTo(String.class)
        .list();
  }
}
