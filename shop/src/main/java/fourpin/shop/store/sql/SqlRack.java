package fourpin.shop.store.sql;

import fourpin.measure.Length;
import fourpin.shop.store.Piece;
import fourpin.shop.store.Rack;
import fourpin.shop.store.Racked;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** The rack: each change counts the version of its piece up. */
final class SqlRack implements Rack {

  private static final Comparator<Piece> ORDER =
      Comparator.comparing(Piece::material)
          .thenComparing(Piece::form)
          .thenComparing(Piece::length, Comparator.<Length>reverseOrder())
          .thenComparing(Piece::width, Comparator.<Length>reverseOrder());

  private final Database database;
  private final Ids ids;

  SqlRack(Database database, Ids ids) {
    this.database = database;
    this.ids = ids;
  }

  @Override
  public List<Racked> all() {
    return database
        .inTransaction(
            db -> db.createQuery("select * from piece").map((row, _) -> PieceRow.of(row)).list())
        .stream()
        .map(PieceRow::racked)
        .sorted(Comparator.comparing(Racked::piece, ORDER).thenComparing(Racked::id))
        .toList();
  }

  @Override
  public Racked add(Piece piece) {
    Racked racked = new Racked(ids.next(), 1, piece);
    return database.inTransaction(
        db -> {
          new PieceRow(racked).insert(db);
          return racked;
        });
  }

  @Override
  public Change change(Racked seen, Piece piece) {
    Racked changed = new Racked(seen.id(), seen.version() + 1, piece);
    return database.inTransaction(
        db ->
            new PieceRow(changed).replace(db, seen.version()) > 0
                ? new Change.Made(Optional.of(changed))
                : new Change.Overtaken(find(db, seen.id())));
  }

  @Override
  public Change remove(Racked seen) {
    return database.inTransaction(
        db ->
            removed(db, seen)
                ? new Change.Made(Optional.empty())
                : new Change.Overtaken(find(db, seen.id())));
  }

  private static boolean removed(Handle db, Racked seen) {
    return db.createUpdate("delete from piece where id = :id and version = :version")
            .bind("id", seen.id())
            .bind("version", seen.version())
            .execute()
        > 0;
  }

  private static Optional<Racked> find(Handle db, String id) {
    return db.createQuery("select * from piece where id = :id")
        .bind("id", id)
        .map((row, _) -> PieceRow.of(row).racked())
        .findFirst();
  }
}
