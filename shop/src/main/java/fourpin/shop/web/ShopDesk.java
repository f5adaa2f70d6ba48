package fourpin.shop.web;

import fourpin.shop.edit.Differences;
import fourpin.shop.edit.Edited;
import fourpin.shop.edit.JobText;
import fourpin.shop.file.ShopReader;
import fourpin.shop.store.DocumentId;
import fourpin.shop.store.Documents;
import fourpin.shop.store.Edit;
import fourpin.shop.store.Revision;
import fourpin.shop.store.RevisionId;
import fourpin.shop.store.Saving;
import fourpin.shop.store.Stepping;
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

    /** What comes of a whole file as well. */
    sealed interface OfFile extends Outcome {}

    /** It is kept, or was so already. */
    record Done() implements OfFile {}

    /** It cannot be. @param problems at least one */
    record Wrong(List<Problem> problems) implements OfFile {
      public Wrong {
        problems = List.copyOf(problems);
      }
    }

    /**
     * @param reason as a sentence
     */
    record Refused(String reason) implements OfFile {}

    /** Somebody else changed the same thing first. @param theirs what stands there now */
    record Taken(String by, String theirs) implements Outcome {}
  }

  /** What came of a file that was brought. */
  sealed interface Bringing {
    record Heard(Outcome.OfFile outcome) implements Bringing {}

    /** It states less than the shop does. @param what at least one, by the way to it */
    record Lacking(List<String> what) implements Bringing {
      public Lacking {
        what = List.copyOf(what);
      }
    }
  }

  private final Documents documents;

  ShopDesk(Documents documents) {
    this.documents = documents;
  }

  Optional<Kept> newest() {
    return documents.newest(DocumentId.SHOP).map(Kept::of);
  }

  /** As a page showed it. */
  Optional<Kept> at(String revision) {
    return documents.revision(DocumentId.SHOP, new RevisionId(revision)).map(Kept::of);
  }

  /** Keeps a whole file, in place of the one that was seen. @param seen empty for none */
  Outcome.OfFile put(String text, String seen, String by, String why) {
    List<Problem> problems = ShopReader.problems(text);
    return problems.isEmpty() ? saved(text, seen, by, why) : new Outcome.Wrong(problems);
  }

  /**
   * Keeps a file that was brought, in place of the one that was edited in it, unless it lacks what
   * stands there.
   *
   * @param shown what the page showed, for a file that does not say what it was; empty for none
   */
  Bringing bring(Leaf leaf, String shown, String by) {
    List<Problem> problems = ShopReader.problems(leaf.text());
    List<String> lacks = problems.isEmpty() ? lacks(leaf, edited(leaf, shown)) : List.of();
    return lacks.isEmpty()
        ? new Bringing.Heard(bringNonetheless(leaf, shown, by))
        : new Bringing.Lacking(lacks);
  }

  private List<String> lacks(Leaf leaf, String edited) {
    return newest()
        .filter(kept -> kept.revision().id().value().equals(edited))
        .map(kept -> Differences.missing(kept.text().value(), JobText.of(leaf.text()).value()))
        .orElse(List.of());
  }

  private String edited(Leaf leaf, String shown) {
    return leaf.left()
        .filter(left -> documents.revision(DocumentId.SHOP, left).isPresent())
        .map(RevisionId::value)
        .orElse(shown);
  }

  /** The same, whatever the file lacks. */
  Outcome.OfFile bringNonetheless(Leaf leaf, String shown, String by) {
    return newest().filter(kept -> Leaf.isSame(kept.text().text(), leaf.text())).isPresent()
        ? new Outcome.Done()
        : put(leaf.text(), edited(leaf, shown), by, "brought in as a file");
  }

  private Outcome.OfFile saved(String text, String seen, String by, String why) {
    return switch (saving(text, seen, by, why)) {
      case Saving.Saved _ -> new Outcome.Done();
      case Saving.Overtaken(Written newest) -> overtaken(newest);
    };
  }

  private Saving saving(String text, String seen, String by, String why) {
    Edit edit = new Edit(name(text), text, by, why);
    return seen.isEmpty()
        ? documents.createShop(edit)
        : documents.save(DocumentId.SHOP, new RevisionId(seen), edit);
  }

  private static Outcome.OfFile overtaken(Written newest) {
    return new Outcome.Refused(
        newest.revision().by() + " has changed the shop since. Look at it, and try again.");
  }

  private static String name(String text) {
    return JobText.of(text).word(fourpin.shop.edit.Route.of("shop")).orElse("");
  }

  /** Makes all of the edits, or none, on what others have kept since they were begun. */
  Outcome change(List<fourpin.shop.edit.Edit> edits, String by, String why) {
    for (int tries = 0; tries < Desk.MOST_TRIES; tries++) {
      Optional<Outcome> outcome = onto(newest().orElseThrow(), edits, by, why);
      if (outcome.isPresent()) {
        return outcome.get();
      }
    }
    return new Outcome.Refused("Too many people are changing the shop at once. Try again.");
  }

  /** Nothing if somebody else was faster. */
  private Optional<Outcome> onto(
      Kept newest, List<fourpin.shop.edit.Edit> edits, String by, String why) {
    JobText made = newest.text();
    for (fourpin.shop.edit.Edit edit : edits) {
      switch (made.with(edit)) {
        case Edited.Done(JobText next, _) -> made = next;
        case Edited.Conflict conflict when conflict.isMade() -> {}
        case Edited.Conflict conflict -> {
          return Optional.of(new Outcome.Taken(newest.revision().by(), conflict.words()));
        }
        case Edited.Refused(_, String reason) -> {
          return Optional.of(new Outcome.Refused("It was not changed: " + reason + "."));
        }
      }
    }
    String text = made.text();
    if (text.equals(newest.text().text())) {
      return Optional.of(new Outcome.Done());
    }
    List<Problem> problems = ShopReader.problems(text);
    return problems.isEmpty()
        ? kept(saving(text, newest.revision().id().value(), by, why))
        : Optional.of(new Outcome.Wrong(problems));
  }

  private static Optional<Outcome> kept(Saving saving) {
    return switch (saving) {
      case Saving.Saved _ -> Optional.of(new Outcome.Done());
      case Saving.Overtaken _ -> Optional.empty();
    };
  }

  Outcome.OfFile undo(String seen, String by) {
    Stepping stepping = documents.undo(DocumentId.SHOP, new RevisionId(seen), by);
    return stepped(stepping, "There is nothing to take back.");
  }

  Outcome.OfFile redo(String seen, String by) {
    Stepping stepping = documents.redo(DocumentId.SHOP, new RevisionId(seen), by);
    return stepped(stepping, "There is nothing to bring back.");
  }

  private static Outcome.OfFile stepped(Stepping stepping, String end) {
    return switch (stepping) {
      case Saving.Saved _ -> new Outcome.Done();
      case Saving.Overtaken(Written newest) -> overtaken(newest);
      case Stepping.NoFurther _ -> new Outcome.Refused(end);
    };
  }
}
