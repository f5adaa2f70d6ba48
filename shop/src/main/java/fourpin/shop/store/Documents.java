package fourpin.shop.store;

import java.util.List;
import java.util.Optional;

/** Job files and the shop file, each with all its revisions. */
public interface Documents {

  /** Whether a job is in the list of jobs. */
  enum Place {
    AT_HAND,
    /** Out of the way, with all its revisions; jobs are never deleted. */
    ASIDE
  }

  /** The newest revision of each job there, the last changed first. */
  List<Revision> jobs(Place place);

  /** The newest revision; nothing if there is no such document. */
  Optional<Written> newest(DocumentId id);

  /** Any revision; nothing if the document has no such revision. */
  Optional<Written> revision(DocumentId id, RevisionId revision);

  /**
   * Part of all revisions, the newest first.
   *
   * @param below only those with a smaller number; {@link Long#MAX_VALUE} starts at the newest
   * @param most so many at most
   */
  List<Revision> history(DocumentId id, long below, int most);

  /** The last revision that was kept under each name of a variant, the newest first. */
  List<Revision> variants(DocumentId id);

  /** Adds a job, at hand. */
  Revision create(Edit edit);

  /**
   * Saves the shop file for the first time; overtaken if there is one already.
   *
   * @param edit its name is that of the shop
   */
  Saving createShop(Edit edit);

  /**
   * Saves a text if what it was made on is still the newest.
   *
   * @param madeOn the newest revision when the change was begun
   * @throws java.util.NoSuchElementException if there is no such document
   */
  Saving save(DocumentId id, RevisionId madeOn, Edit edit);

  /**
   * Goes back to the text before the edit that the newest revision shows, as far back as the first.
   *
   * @param seen the newest revision as the maker saw it
   * @param by the name of the device
   * @throws java.util.NoSuchElementException if there is no such document
   */
  Stepping undo(DocumentId id, RevisionId seen, String by);

  /**
   * Goes forward to the edit that was undone; of several that were made on the same text, to the
   * last. An edit after an undo starts another way forward; the other remains in the history.
   *
   * @throws java.util.NoSuchElementException if there is no such document
   */
  Stepping redo(DocumentId id, RevisionId seen, String by);

  /**
   * Puts a job aside or back.
   *
   * @throws java.util.NoSuchElementException if there is no such job
   */
  void put(DocumentId job, Place place);
}
