package fourpin.trials;

import fourpin.shop.store.DocumentId;
import fourpin.shop.store.Documents;
import fourpin.shop.store.HeldTick;
import fourpin.shop.store.Racked;
import fourpin.shop.store.RevisionId;
import fourpin.shop.store.Store;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Something that a store has said is saved. */
sealed interface Acknowledged {

  /** Ends each line, so that half a line is not taken for a whole one. */
  String END = "|.";

  /** In one line. */
  String line();

  /** Whether it is kept. */
  boolean isIn(Kept kept);

  /**
   * What is found afterwards, with lists read once.
   *
   * @param documents by which revisions are found
   * @param steps of the job that are ticked
   * @param pieces of the rack by their ids
   */
  record Kept(Documents documents, Set<String> steps, Set<String> pieces) {
    static Kept of(Store store, DocumentId job) {
      return new Kept(
          store.documents(),
          store.ticks().of(job, "plan").stream().map(HeldTick::step).collect(Collectors.toSet()),
          store.rack().all().stream().map(Racked::id).collect(Collectors.toSet()));
    }
  }

  /** A revision with its text. */
  record Text(DocumentId job, RevisionId revision, String text) implements Acknowledged {
    @Override
    public String line() {
      return "text|" + job.value() + "|" + revision.value() + "|" + text + END;
    }

    @Override
    public boolean isIn(Kept kept) {
      return kept.documents()
          .revision(job, revision)
          .filter(w -> w.text().equals(text))
          .isPresent();
    }
  }

  /** A tick of a step. */
  record Ticked(DocumentId job, String step) implements Acknowledged {
    @Override
    public String line() {
      return "tick|" + job.value() + "|" + step + END;
    }

    @Override
    public boolean isIn(Kept kept) {
      return kept.steps().contains(step);
    }
  }

  /** A piece of the rack. */
  record Stored(String id) implements Acknowledged {
    @Override
    public String line() {
      return "piece|" + id + END;
    }

    @Override
    public boolean isIn(Kept kept) {
      return kept.pieces().contains(id);
    }
  }

  /** Reads a line; nothing if it is none, or half of one. */
  static Optional<Acknowledged> read(String line) {
    if (!line.endsWith(END)) {
      return Optional.empty();
    }
    String[] parts = line.substring(0, line.length() - END.length()).split("\\|", -1);
    return switch (parts[0]) {
      case "text" ->
          Optional.of(new Text(new DocumentId(parts[1]), new RevisionId(parts[2]), parts[3]));
      case "tick" -> Optional.of(new Ticked(new DocumentId(parts[1]), parts[2]));
      case "piece" -> Optional.of(new Stored(parts[1]));
      default -> Optional.empty();
    };
  }
}
