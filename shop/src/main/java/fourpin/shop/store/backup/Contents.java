package fourpin.shop.store.backup;

import fourpin.shop.store.DocumentId;
import fourpin.shop.store.Revision;
import fourpin.shop.store.sql.RevisionRow;
import fourpin.shop.store.sql.Snapshot;
import fourpin.shop.store.sql.SqlStore;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * What a store or a backup holds, for who has to choose between them.
 *
 * @param documents jobs and the shop file
 * @param pieces lines of the rack
 * @param ticks last words of devices on steps
 */
public record Contents(List<Document> documents, long pieces, long ticks) {

  public Contents {
    documents = List.copyOf(documents);
  }

  /**
   * A job, or the shop file.
   *
   * @param name as the newest revision has it
   * @param changes how many revisions there are
   * @param last when the newest was saved
   */
  public record Document(DocumentId id, String name, long changes, Instant last) {

    private static Document of(Revision newest) {
      return new Document(newest.document(), newest.name(), newest.number(), newest.when());
    }
  }

  /** What a store holds, and which state of it that is. */
  public record Seen(Contents contents, Fingerprint fingerprint) {}

  /** Of a store, as it stands at one moment. */
  public static Seen of(SqlStore store) {
    return store.snapshot(now -> new Seen(of(now), Fingerprint.of(now)));
  }

  private static Contents of(Snapshot now) {
    try (Stream<RevisionRow> revisions = now.revisions();
        var pieces = now.pieces();
        var ticks = now.ticks()) {
      return new Contents(
          documents(revisions.map(RevisionRow::revision)), pieces.count(), ticks.count());
    }
  }

  /** Each by its newest revision. */
  static List<Document> documents(Stream<Revision> revisions) {
    Map<DocumentId, Revision> newest = new LinkedHashMap<>();
    revisions.forEach(
        r -> newest.merge(r.document(), r, (a, b) -> a.number() > b.number() ? a : b));
    return newest.values().stream().map(Document::of).toList();
  }
}
