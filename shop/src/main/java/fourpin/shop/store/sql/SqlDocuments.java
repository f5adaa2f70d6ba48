package fourpin.shop.store.sql;

import fourpin.shop.store.DocumentId;
import fourpin.shop.store.Documents;
import fourpin.shop.store.Edit;
import fourpin.shop.store.Revision;
import fourpin.shop.store.RevisionId;
import fourpin.shop.store.Saving;
import fourpin.shop.store.Stepping;
import fourpin.shop.store.Written;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** Documents: each change takes the next number of its document, if nobody else has. */
final class SqlDocuments implements Documents {

  private final Database database;
  private final Ids ids;
  private final InstantSource clock;

  SqlDocuments(Database database, Ids ids, InstantSource clock) {
    this.database = database;
    this.ids = ids;
    this.clock = clock;
  }

  @Override
  public List<Revision> jobs(Place place) {
    return database.inTransaction(
        db ->
            RevisionQuery.newest(
                    db,
                    """
                    where d.place = :place and d.id <> :shop
                    order by r.saved_at desc, r.id desc
                    """,
                    Map.of("place", place.name(), "shop", DocumentId.SHOP.value()))
                .revisions()
                .toList());
  }

  @Override
  public Optional<Written> newest(DocumentId id) {
    return database.inTransaction(db -> newest(db, id));
  }

  private static Optional<Written> newest(Handle db, DocumentId id) {
    return RevisionQuery.newest(db, "where d.id = :document", Map.of("document", id.value()))
        .written()
        .findFirst();
  }

  private static Written present(Handle db, DocumentId id) {
    return newest(db, id).orElseThrow(() -> missing(id));
  }

  /**
   * @throws NoSuchElementException if there is no such document
   */
  static void require(Handle db, DocumentId id) {
    var found =
        db.createQuery("select id from document where id = :id")
            .bind("id", id.value())
            .mapTo(String.class)
            .findFirst();
    if (found.isEmpty()) {
      throw missing(id);
    }
  }

  private static NoSuchElementException missing(DocumentId id) {
    return new NoSuchElementException("there is no document " + id.value());
  }

  @Override
  public Optional<Written> revision(DocumentId id, RevisionId revision) {
    return database.inTransaction(
        db ->
            RevisionQuery.all(
                    db,
                    "where r.document = :document and r.id = :id",
                    Map.of("document", id.value(), "id", revision.value()))
                .written()
                .findFirst());
  }

  @Override
  public List<Revision> history(DocumentId id, long below, int most) {
    return database.inTransaction(
        db ->
            RevisionQuery.all(
                    db,
                    """
                    where r.document = :document and r.number < :below
                    order by r.number desc limit :most
                    """,
                    Map.of("document", id.value(), "below", below, "most", most))
                .revisions()
                .toList());
  }

  @Override
  public List<Revision> variants(DocumentId id) {
    return database.inTransaction(
        db ->
            RevisionQuery.all(
                    db,
                    """
                    where r.document = :document and r.number in
                      (select max(v.number) from revision v
                       where v.document = :document and v.variant is not null group by v.variant)
                    order by r.number desc
                    """,
                    Map.of("document", id.value()))
                .revisions()
                .toList());
  }

  @Override
  public Revision create(Edit edit) {
    return switch (first(new DocumentId(ids.next()), edit)) {
      case Saving.Saved(Revision revision) -> revision;
      case Saving.Overtaken _ -> throw new IllegalStateException("an id was made twice");
    };
  }

  @Override
  public Saving createShop(Edit edit) {
    return first(DocumentId.SHOP, edit);
  }

  private Saving first(DocumentId id, Edit edit) {
    return database.inTransaction(
        db ->
            new DocumentRow(id, Place.AT_HAND, 1).insert(db) > 0
                ? insert(db, edit(id, 1, Optional.empty(), edit))
                : new Saving.Overtaken(present(db, id)));
  }

  @Override
  public Saving save(DocumentId id, RevisionId madeOn, Edit edit) {
    return database.inTransaction(
        db -> {
          Written newest = locked(db, id);
          return newest.revision().id().equals(madeOn)
              ? insert(db, edit(id, next(newest), Optional.of(newest.revision().shows()), edit))
              : new Saving.Overtaken(newest);
        });
  }

  @Override
  public Stepping undo(DocumentId id, RevisionId seen, String by) {
    return step(id, seen, Step.UNDO, by);
  }

  @Override
  public Stepping redo(DocumentId id, RevisionId seen, String by) {
    return step(id, seen, Step.REDO, by);
  }

  private Stepping step(DocumentId id, RevisionId seen, Step step, String by) {
    return database.inTransaction(
        db -> {
          Written newest = locked(db, id);
          return newest.revision().id().equals(seen)
              ? step.from(db, newest.revision())
                  .<Stepping>map(to -> insert(db, stepped(newest, to, by)))
                  .orElseGet(Stepping.NoFurther::new)
              : new Saving.Overtaken(newest);
        });
  }

  /** The newest revision, which nobody else can follow until this transaction has ended. */
  private static Written locked(Handle db, DocumentId id) {
    db.createUpdate("update document set newest = newest where id = :id")
        .bind("id", id.value())
        .execute();
    return present(db, id);
  }

  private RevisionRow edit(DocumentId id, long number, Optional<RevisionId> madeOn, Edit edit) {
    RevisionId itself = fresh();
    return new RevisionRow(
        new Revision(
            itself,
            id,
            number,
            Revision.Kind.EDIT,
            itself,
            edit.name(),
            Instant.ofEpochMilli(clock.millis()),
            edit.by(),
            edit.why(),
            edit.variant()),
        madeOn,
        Optional.of(edit.text()));
  }

  private RevisionRow stepped(Written newest, Step.Destination to, String by) {
    return new RevisionRow(
        new Revision(
            fresh(),
            newest.revision().document(),
            next(newest),
            to.kind(),
            to.edit().id(),
            to.edit().name(),
            Instant.ofEpochMilli(clock.millis()),
            by,
            to.why(),
            Optional.empty()),
        Optional.empty(),
        Optional.empty());
  }

  private RevisionId fresh() {
    return new RevisionId(ids.next());
  }

  private static long next(Written newest) {
    return newest.revision().number() + 1;
  }

  private static Saving.Saved insert(Handle db, RevisionRow row) {
    row.insert(db);
    db.createUpdate("update document set newest = :number where id = :id")
        .bind("number", row.revision().number())
        .bind("id", row.revision().document().value())
        .execute();
    return new Saving.Saved(row.revision());
  }

  @Override
  public void put(DocumentId job, Place place) {
    int found =
        database.inTransaction(
            db ->
                db.createUpdate("update document set place = :place where id = :id and id <> :shop")
                    .bind("place", place.name())
                    .bind("id", job.value())
                    .bind("shop", DocumentId.SHOP.value())
                    .execute());
    if (found == 0) {
      throw missing(job);
    }
  }
}
