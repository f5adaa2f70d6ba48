package fourpin.trials;

import fourpin.shop.store.DocumentId;
import fourpin.shop.store.Edit;
import fourpin.shop.store.Revision;
import fourpin.shop.store.sql.SqlStore;
import fourpin.shop.web.WebServer;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * Many people at once, each changing fields of jobs on the pages that a server shows, over
 * loopback.
 *
 * @param text of each job at first
 * @param longestPauseMs before a change
 * @param goesOn whether somebody who has made so many changes makes another
 */
record PageEditors(
    SqlStore store,
    String text,
    int editors,
    int jobs,
    long seed,
    int longestPauseMs,
    IntPredicate goesOn) {

  /** What is changed: lengths, of which each change takes one that no other takes. */
  private static final List<Sized> FIELDS =
      List.of(
          new Sized("outside_width", "SIZES", 70),
          new Sized("outside_height", "SIZES", 80),
          new Sized("outside_depth", "SIZES", 11),
          new Sized("settings_end-play", "HABITS", 0));

  /**
   * @param open which fields the page shows
   */
  private record Sized(String field, String open, int inches) {

    String value(int editor, int change) {
      return String.format(Locale.ROOT, "%d.1%02d%04d", inches, editor, change);
    }
  }

  /**
   * What came of it.
   *
   * @param saved changes that a page said were made
   * @param again changes that a page said somebody else was first with, and that were made anew
   * @param wrong answers that were neither, and what was said to be saved and is not there
   */
  record Tally(int saved, int again, List<String> wrong) {}

  /** What a page said is saved. */
  private record Change(DocumentId job, String value) {}

  private record Work(List<Change> changes, int again) {}

  Tally run() throws InterruptedException, ExecutionException {
    List<DocumentId> ids =
        IntStream.range(0, jobs)
            .mapToObj(j -> store.documents().create(new Edit("Job " + j, text, "trial", "new")))
            .map(Revision::document)
            .toList();
    List<String> wrong = Collections.synchronizedList(new ArrayList<>());
    try (WebServer server = WebServer.start(store, Throwable::printStackTrace, 0)) {
      List<Work> work = all(server.port(), ids, wrong);
      List<Change> saved = work.stream().flatMap(w -> w.changes().stream()).toList();
      ids.forEach(id -> wrong.addAll(lost(id, saved)));
      return new Tally(saved.size(), work.stream().mapToInt(Work::again).sum(), List.copyOf(wrong));
    }
  }

  private List<Work> all(int port, List<DocumentId> ids, List<String> wrong)
      throws InterruptedException, ExecutionException {
    try (ExecutorService people = Executors.newFixedThreadPool(editors)) {
      List<Future<Work>> begun =
          IntStream.range(0, editors)
              .mapToObj(e -> people.submit(() -> edit(e, new PageVisitor(port, e), ids, wrong)))
              .toList();
      List<Work> done = new ArrayList<>();
      for (Future<Work> one : begun) {
        done.add(one.get());
      }
      return done;
    }
  }

  private Work edit(int editor, PageVisitor visitor, List<DocumentId> ids, List<String> wrong) {
    Random random = new Random(seed + editor);
    List<Change> saved = new ArrayList<>();
    int again = 0;
    for (int i = 0; goesOn.test(i); i++) {
      DocumentId job = ids.get(random.nextInt(ids.size()));
      Sized sized = FIELDS.get(random.nextInt(FIELDS.size()));
      String value = sized.value(editor, i);
      pause(random);
      PageVisitor.Said said = visitor.change(job, sized.open(), sized.field(), value);
      for (; said == PageVisitor.Said.SOMEBODY_WAS_FIRST; again++) {
        said = visitor.change(job, sized.open(), sized.field(), value);
      }
      if (said == PageVisitor.Said.SAVED) {
        saved.add(new Change(job, value));
      } else {
        wrong.add("a change of " + sized.field() + " to " + value + " was answered otherwise");
      }
    }
    return new Work(saved, again);
  }

  /** As long as the quickest of people take from one change to the next. */
  private void pause(Random random) {
    try {
      Thread.sleep(longestPauseMs == 0 ? 0 : random.nextInt(longestPauseMs));
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /**
   * Each revision must be the one before it with one line changed, by a change that a page said is
   * saved, and each such change must be in one: then none was lost, nor taken back by another's.
   */
  private List<String> lost(DocumentId job, List<Change> saved) {
    Set<String> missing = new HashSet<>();
    saved.stream().filter(c -> c.job().equals(job)).forEach(c -> missing.add(c.value()));
    List<String> lost = new ArrayList<>();
    List<String> before = text.lines().toList();
    for (Revision revision : rising(job)) {
      List<String> now =
          store.documents().revision(job, revision.id()).orElseThrow().text().lines().toList();
      List<String> changed = new ArrayList<>(now);
      changed.removeAll(before);
      boolean one = changed.size() == 1 && now.size() - before.size() <= 1;
      if (!one || !missing.removeIf(v -> changed.getFirst().contains(v))) {
        lost.add("revision " + revision.number() + " of " + job + " holds more than its change");
      }
      before = now;
    }
    missing.forEach(value -> lost.add("the change to " + value + " of " + job));
    return lost;
  }

  /** Without the first. */
  private List<Revision> rising(DocumentId job) {
    List<Revision> all = store.documents().history(job, Long.MAX_VALUE, Integer.MAX_VALUE);
    return all.subList(0, all.size() - 1).reversed();
  }
}
