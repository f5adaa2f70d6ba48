package fourpin.shop.store.sql;

import fourpin.shop.store.Revision;
import fourpin.shop.store.RevisionId;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** One step back or forward among the edits of a document, which hang together as a tree. */
enum Step {
  UNDO {
    @Override
    Optional<Destination> from(Handle db, Revision newest) {
      Revision undone = edit(db, "where r.id = :id", newest.shows()).orElseThrow();
      return edit(
              db,
              "where r.id = (select e.made_on from revision e where e.id = :id)",
              newest.shows())
          .map(before -> new Destination(Revision.Kind.UNDO, before, undone.why()));
    }
  },
  REDO {
    @Override
    Optional<Destination> from(Handle db, Revision newest) {
      return edit(db, "where r.made_on = :id order by r.number desc limit 1", newest.shows())
          .map(after -> new Destination(Revision.Kind.REDO, after, after.why()));
    }
  };

  /**
   * Where a step leads.
   *
   * @param edit whose text is shown then
   * @param why what was changed by the edit that is undone or done again
   */
  record Destination(Revision.Kind kind, Revision edit, String why) {}

  /** Where the step from a revision leads; nothing if there is no further. */
  abstract Optional<Destination> from(Handle db, Revision newest);

  private static Optional<Revision> edit(Handle db, String rest, RevisionId id) {
    return RevisionQuery.all(db, rest, Map.of("id", id.value())).revisions().findFirst();
  }
}
