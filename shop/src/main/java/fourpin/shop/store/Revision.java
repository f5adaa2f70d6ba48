package fourpin.shop.store;

import java.time.Instant;
import java.util.Optional;

/**
 * One state in the life of a document. Undo and redo add revisions, and so never lose one.
 *
 * @param number 1 for the first of its document, and so on without a gap
 * @param shows the edit whose text this revision has; an edit shows itself
 * @param name of the job, as it was then
 * @param when to the millisecond
 * @param by the name of the device
 * @param why what was changed, for the list of revisions
 * @param variant the name under which it was kept as a variant, if it was
 */
public record Revision(
    RevisionId id,
    DocumentId document,
    long number,
    Kind kind,
    RevisionId shows,
    String name,
    Instant when,
    String by,
    String why,
    Optional<String> variant) {

  /** How it came about. */
  public enum Kind {
    EDIT,
    UNDO,
    REDO
  }
}
