package fourpin.shop.web;

import fourpin.job.Job;
import fourpin.plan.FoundLayouts;
import fourpin.plan.Plan;
import fourpin.plan.Planner;
import fourpin.shop.edit.Edited;
import fourpin.shop.edit.JobText;
import fourpin.shop.file.JobReader;
import fourpin.shop.store.DocumentId;
import fourpin.shop.store.Documents;
import fourpin.shop.store.Edit;
import fourpin.shop.store.Layouts;
import fourpin.shop.store.Revision;
import fourpin.shop.store.RevisionId;
import fourpin.shop.store.Saving;
import fourpin.shop.store.Stepping;
import fourpin.shop.store.StoreException;
import fourpin.shop.store.Written;
import fourpin.shop.yaml.Problem;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Semaphore;

/** Reads, plans and changes the jobs that are kept. May be used by many threads at once. */
final class Desk {

  /** How often a change is brought onto what others have saved in between before it gives up. */
  static final int MOST_TRIES = 20;

  private final Documents documents;
  private final Layouts layouts;
  private final KeptShop shop;
  private final Recent<String, Read> recent = new Recent<>();

  /** Plans made side by side beyond this only hold memory longer; others wait their turn. */
  private final Semaphore turns = new Semaphore(Runtime.getRuntime().availableProcessors(), true);

  Desk(Documents documents, Layouts layouts) {
    this.documents = documents;
    this.layouts = layouts;
    this.shop = new KeptShop(documents);
  }

  List<Revision> jobs() {
    return documents.jobs(Documents.Place.AT_HAND);
  }

  /**
   * Plans the job that was changed last before anybody asks for it: most who start Fourpin open
   * that next.
   */
  void lookAhead() {
    try {
      jobs().stream().findFirst().ifPresent(latest -> newest(latest.document()));
    } catch (StoreException | UnreadableException e) {
      // The store may be closed by now; what cannot be read is refused to who asks for it.
    }
  }

  /** As it is kept, whether it can be read or not. */
  Optional<Written> kept(DocumentId id) {
    return documents.newest(id);
  }

  Optional<State> newest(DocumentId id) {
    return documents.newest(id).map(this::state);
  }

  Optional<State> at(DocumentId id, RevisionId revision) {
    return documents.revision(id, revision).map(this::state);
  }

  /** Only texts that can be read are kept. */
  private State state(Written written) {
    FoundBefore found = found(written.revision().document());
    Read read =
        recent.get(
            key(written.text(), found),
            () ->
                switch (read(written.text())) {
                  case JobReader.Outcome.Good(Job job) ->
                      planned(JobText.of(written.text()), job, found, found);
                  case JobReader.Outcome.Refused refused ->
                      throw new UnreadableException(
                          written.revision().document(), problems(refused));
                });
    return read.in(written.revision());
  }

  private FoundBefore found(DocumentId id) {
    return new FoundBefore(layouts.of(id));
  }

  /** A text with what comes of it. */
  private record Read(JobText text, Job job, Plan plan, FoundBefore found) {

    static Read of(State state) {
      return new Read(state.text(), state.job(), state.plan(), state.found());
    }

    State in(Revision revision) {
      return new State(revision, text, job, plan, found);
    }
  }

  /** What comes of a text in place of another: much of that stays as it was. */
  private Read planned(JobText text, Job job, State former) {
    return planned(text, job, former.found(), former.found().andOf(former.plan(), job));
  }

  /**
   * @param spares layouts that need no search; {@code found} are among them
   */
  private Read planned(JobText text, Job job, FoundBefore found, FoundLayouts spares) {
    turns.acquireUninterruptibly();
    try {
      return new Read(text, job, Planner.plan(job, Work.watched(spares)), found);
    } finally {
      turns.release();
    }
  }

  /** The tools of the shop, and the layouts that were found, are part of a plan. */
  private String key(String text, FoundBefore found) {
    String tools =
        documents.newest(DocumentId.SHOP).map(w -> w.revision().id().value()).orElse("none");
    return String.join(" ", tools, found.key(), text);
  }

  private JobReader.Outcome read(String text) {
    return JobReader.read(text.getBytes(StandardCharsets.UTF_8), shop);
  }

  private static List<Problem> problems(JobReader.Outcome.Refused refused) {
    return refused.problems().isEmpty() ? refused.shop().problems() : refused.problems();
  }

  /** What came of a whole file. */
  sealed interface Taking {
    record Taken(Revision revision) implements Taking {}

    record Wrong(List<Problem> problems) implements Taking {}
  }

  /** Takes a job file in as a new job. */
  Taking create(String text, String by, String why) {
    return switch (read(text)) {
      case JobReader.Outcome.Good(Job job) ->
          new Taking.Taken(documents.create(new Edit(job.title(), text, by, why)));
      case JobReader.Outcome.Refused refused -> new Taking.Wrong(problems(refused));
    };
  }

  /**
   * Takes the first of several drafts in whose plan nothing is wrong, or else the one with the
   * least that is. Doubts do not count: most take a maker's care and not another case.
   */
  Taking createBest(List<String> drafts, String by, String why) {
    Optional<Read> best = Optional.empty();
    for (String draft : drafts) {
      switch (read(draft)) {
        case JobReader.Outcome.Refused refused -> {
          return new Taking.Wrong(problems(refused));
        }
        case JobReader.Outcome.Good(Job job) -> {
          FoundBefore none = new FoundBefore(List.of());
          Read next = planned(JobText.of(draft), job, none, none);
          if (best.isEmpty() || judged(next).isBetterThan(judged(best.get()))) {
            best = Optional.of(next);
          }
        }
      }
      if (judged(best.get()).bad() == 0) {
        break;
      }
    }
    return create(best.orElseThrow().text().text(), by, why);
  }

  private static Judgement judged(Read read) {
    return Judgement.of(read.plan());
  }

  /**
   * Puts a whole file in place of the text that was edited in it.
   *
   * @return refused if somebody else has changed it since
   */
  Answer replace(State seen, String text, String by) {
    State newest = newest(seen.revision().document()).orElseThrow();
    if (!newest.revision().id().equals(seen.revision().id())) {
      return new Answer.Refused(
          newest,
          "What was edited in this file is change "
              + seen.revision().number()
              + " of the job, which is at change "
              + newest.revision().number()
              + " by now (by "
              + newest.revision().by()
              + "). Take the file as a job of its own, or download the job again and bring your"
              + " changes in there.");
    }
    if (Leaf.isSame(text, newest.text().text())) {
      return new Answer.Same(newest);
    }
    return switch (read(text)) {
      case JobReader.Outcome.Refused refused -> new Answer.Wrong(newest, problems(refused));
      case JobReader.Outcome.Good(Job job) ->
          saved(newest, planned(JobText.of(text), job, newest), by, "file put in its place")
              .orElseGet(() -> replace(seen, text, by));
    };
  }

  /**
   * Makes any state of a job the newest; all that came after it stays in the history.
   *
   * @return refused if somebody else has changed the job since it was seen
   */
  Answer goBack(State seen, State wanted, String by, String why) {
    return goBack(seen, wanted, by, why, Optional.empty());
  }

  /**
   * Keeps a state that was seen under a name, as a variant.
   *
   * @return refused if somebody else has changed the job since it was seen
   */
  Answer keepAs(State seen, String by, String name) {
    return goBack(seen, seen, by, "kept as the variant “" + name + "”", Optional.of(name));
  }

  private Answer goBack(State seen, State wanted, String by, String why, Optional<String> variant) {
    State newest = newest(seen.revision().document()).orElseThrow();
    boolean stands = newest.revision().id().equals(seen.revision().id());
    return (stands
            ? saved(
                newest,
                Read.of(wanted),
                new Edit(wanted.job().title(), wanted.text().text(), by, why, variant))
            : Optional.<Answer>empty())
        .orElseGet(
            () ->
                new Answer.Refused(
                    newest,
                    newest.revision().by()
                        + " has changed this job since. Look at it, and press again."));
  }

  /**
   * Makes a change, on top of whatever others have saved since it was begun.
   *
   * @param edits in the terms of what was seen; all are made, or none
   * @param why in a few words, for the list of revisions
   */
  Answer change(DocumentId id, List<fourpin.shop.edit.Edit> edits, String by, String why) {
    return change(id, edits, by, why, (_, _) -> Optional.empty());
  }

  /** What may be said against a change. */
  @FunctionalInterface
  interface Objection {

    /**
     * @param newest as others have it by now, {@code then} what would come of it
     * @return a sentence; then nothing is saved
     */
    Optional<String> to(Plan newest, Plan then);
  }

  /** The same, unless something is said against it. */
  Answer change(
      DocumentId id,
      List<fourpin.shop.edit.Edit> edits,
      String by,
      String why,
      Objection objection) {
    for (int tries = 0; tries < MOST_TRIES; tries++) {
      State newest = newest(id).orElseThrow();
      Optional<Answer> answer = onto(newest, edits, by, why, objection);
      if (answer.isPresent()) {
        return answer.get();
      }
    }
    return new Answer.Refused(
        newest(id).orElseThrow(), "Too many people are changing this job at once. Try again.");
  }

  private Optional<Answer> onto(
      State newest,
      List<fourpin.shop.edit.Edit> edits,
      String by,
      String why,
      Objection objection) {
    return switch (tried(newest, edits)) {
      case Tried.Not(Answer answer) -> Optional.of(answer);
      case Tried.Would(State then) -> {
        Optional<String> against = objection.to(newest.plan(), then.plan());
        yield against.isPresent()
            ? Optional.of(new Answer.Refused(newest, against.get()))
            : saved(newest, Read.of(then), by, why);
      }
    };
  }

  /** What would come of edits. */
  sealed interface Tried {
    /**
     * @param then of the same revision as what it would be made of, since it is not kept
     */
    record Would(State then) implements Tried {}

    record Not(Answer answer) implements Tried {}
  }

  /** Makes edits and keeps nothing; what is changed by them afterwards is not planned again. */
  Tried tried(State on, List<fourpin.shop.edit.Edit> edits) {
    JobText made = on.text();
    for (fourpin.shop.edit.Edit edit : edits) {
      switch (made.with(edit)) {
        case Edited.Done(JobText next, _) -> made = next;
        case Edited.Conflict conflict when conflict.isMade() -> {}
        case Edited.Conflict conflict -> {
          return new Tried.Not(new Answer.Taken(on, on.revision().by(), conflict.words()));
        }
        case Edited.Refused(_, String reason) -> {
          return new Tried.Not(new Answer.Refused(on, "It was not changed: " + reason + "."));
        }
      }
    }
    return made.text().equals(on.text().text())
        ? new Tried.Not(new Answer.Same(on))
        : tried(on, made);
  }

  private Tried tried(State on, JobText made) {
    return switch (read(made.text())) {
      case JobReader.Outcome.Refused refused ->
          new Tried.Not(new Answer.Wrong(on, problems(refused)));
      case JobReader.Outcome.Good(Job job) ->
          new Tried.Would(
              recent
                  .get(key(made.text(), on.found()), () -> planned(made, job, on))
                  .in(on.revision()));
    };
  }

  /** Nothing if somebody else was faster. */
  private Optional<Answer> saved(State newest, Read would, String by, String why) {
    return saved(newest, would, new Edit(would.job().title(), would.text().text(), by, why));
  }

  private Optional<Answer> saved(State newest, Read would, Edit edit) {
    Work.keeps();
    Saving saving = documents.save(newest.revision().document(), newest.revision().id(), edit);
    return switch (saving) {
      case Saving.Saved(Revision revision) -> {
        recent.put(key(would.text().text(), would.found()), would);
        yield Optional.of(new Answer.Saved(would.in(revision)));
      }
      case Saving.Overtaken _ -> Optional.empty();
    };
  }

  Answer undo(DocumentId id, RevisionId seen, String by) {
    return stepped(id, documents.undo(id, seen, by), "There is nothing to take back.");
  }

  Answer redo(DocumentId id, RevisionId seen, String by) {
    return stepped(id, documents.redo(id, seen, by), "There is nothing to bring back.");
  }

  private Answer stepped(DocumentId id, Stepping stepping, String end) {
    State now = newest(id).orElseThrow();
    return switch (stepping) {
      case Saving.Saved _ -> new Answer.Saved(now);
      case Saving.Overtaken(Written newest) ->
          new Answer.Refused(
              now,
              newest.revision().by() + " has changed this job since. Look at it, and press again.");
      case Stepping.NoFurther _ -> new Answer.Refused(now, end);
    };
  }
}
