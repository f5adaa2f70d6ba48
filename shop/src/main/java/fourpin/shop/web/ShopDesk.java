package fourpin.shop.web;

import fourpin.shop.edit.Edited;
import fourpin.shop.edit.JobText;
import fourpin.shop.file.ShopReader;
import fourpin.shop.store.DocumentId;
import fourpin.shop.store.Documents;
import fourpin.shop.store.Edit;
import fourpin.shop.store.Revision;
import fourpin.shop.store.RevisionId;
import fourpin.shop.store.Saving;
import fourpin.shop.store.Written;
import fourpin.shop.yaml.Problem;
import java.util.List;
import java.util.Optional;

/** Changes the one shop file that is kept. Only texts that can be read are kept. */
final class ShopDesk {

  /** The file as one revision has it. */
  record Kept(Revision revision, JobText text) {

    static Kept of(Written written) {
      return new Kept(written.revision(), JobText.of(written.text()));
    }
  }

  /** What came of a change. */
  sealed interface Outcome {

    /** It is kept, or was so already. */
    record Done() implements Outcome {}

    /** It cannot be. @param problems at least one */
    record Wrong(List<Problem> problems) implements Outcome {}

    /**
     * @param reason as a sentence
     */
    record Refused(String reason) implements Outcome {}
  }

  private final Documents documents;

  ShopDesk(Documents documents) {
    this.documents = documents;
  }

  Optional<Kept> newest() {
    return documents.newest(DocumentId.SHOP).map(Kept::of);
  }

  /** As a page showed it; the newest if there is no such revision. */
  Optional<Kept> seen(String revision) {
    return documents
        .revision(DocumentId.SHOP, new RevisionId(revision))
        .map(Kept::of)
        .or(this::newest);
  }

  /** Keeps a whole file, in place of the one that was seen. @param seen empty for none */
  Outcome put(String text, String seen, String by, String why) {
    List<Problem> problems = ShopReader.problems(text);
    return problems.isEmpty() ? saved(text, seen, by, why) : new Outcome.Wrong(problems);
  }

  /**
   * Keeps a file that was brought, in place of the one that was edited in it.
   *
   * @param shown what the page showed, for a file that does not say what it was; empty for none
   */
  Outcome bring(Leaf leaf, String shown, String by) {
    String edited =
        leaf.left()
            .filter(left -> documents.revision(DocumentId.SHOP, left).isPresent())
            .map(RevisionId::value)
            .orElse(shown);
    return newest().filter(kept -> Leaf.isSame(kept.text().text(), leaf.text())).isPresent()
        ? new Outcome.Done()
        : put(leaf.text(), edited, by, "brought in as a file");
  }

  private Outcome saved(String text, String seen, String by, String why) {
    Edit edit = new Edit(name(text), text, by, why);
    Saving saving =
        seen.isEmpty()
            ? documents.createShop(edit)
            : documents.save(DocumentId.SHOP, new RevisionId(seen), edit);
    return switch (saving) {
      case Saving.Saved _ -> new Outcome.Done();
      case Saving.Overtaken(Written newest) ->
          new Outcome.Refused(
              newest.revision().by() + " has changed the shop since. Look at it, and try again.");
    };
  }

  private static String name(String text) {
    return JobText.of(text).word(fourpin.shop.edit.Route.of("shop")).orElse("");
  }

  /** Makes all of the edits, or none, on what others have kept since they were begun. */
  Outcome change(List<fourpin.shop.edit.Edit> edits, String by, String why) {
    Kept newest = newest().orElseThrow();
    JobText made = newest.text();
    for (fourpin.shop.edit.Edit edit : edits) {
      switch (made.with(edit)) {
        case Edited.Done(JobText next, _) -> made = next;
        case Edited.Conflict _ -> {
          return new Outcome.Refused(
              newest.revision().by() + " has changed this since you looked; look at it anew.");
        }
        case Edited.Refused(_, String reason) -> {
          return new Outcome.Refused("It was not changed: " + reason + ".");
        }
      }
    }
    return made.text().equals(newest.text().text())
        ? new Outcome.Done()
        : put(made.text(), newest.revision().id().value(), by, why);
  }
}
