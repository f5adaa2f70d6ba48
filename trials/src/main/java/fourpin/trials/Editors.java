package fourpin.trials;

import fourpin.shop.store.DocumentId;
import fourpin.shop.store.Edit;
import fourpin.shop.store.Saving;
import fourpin.shop.store.Store;
import fourpin.shop.store.Written;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * Many editors at once, each adding lines of its own to jobs that all of them edit.
 *
 * @param goesOn whether an editor that has made so many changes makes another
 */
record Editors(Store store, int editors, int jobs, long seed, IntPredicate goesOn) {

  /**
   * What came of it.
   *
   * @param overtaken saves that had to be made anew on the text of another
   * @param lost lines that were acknowledged and are not in their job once
   */
  record Tally(int saved, int overtaken, List<String> lost) {}

  private record Line(DocumentId job, String text) {}

  private record Work(List<Line> lines, int overtaken) {}

  Tally run() throws InterruptedException, ExecutionException {
    List<DocumentId> ids =
        IntStream.range(0, jobs)
            .mapToObj(j -> store.documents().create(new Edit("Job " + j, "", "trial", "new")))
            .map(r -> r.document())
            .toList();
    List<Work> work = all(ids);
    List<Line> lines = work.stream().flatMap(w -> w.lines().stream()).toList();
    return new Tally(lines.size(), work.stream().mapToInt(Work::overtaken).sum(), lost(ids, lines));
  }

  /** An editor that fails fails the run. */
  private List<Work> all(List<DocumentId> ids) throws InterruptedException, ExecutionException {
    try (ExecutorService desks = Executors.newFixedThreadPool(editors)) {
      List<Future<Work>> begun =
          IntStream.range(0, editors).mapToObj(e -> desks.submit(() -> edit(e, ids))).toList();
      List<Work> done = new ArrayList<>();
      for (Future<Work> one : begun) {
        done.add(one.get());
      }
      return done;
    }
  }

  private Work edit(int editor, List<DocumentId> ids) {
    Random random = new Random(seed + editor);
    List<Line> lines = new ArrayList<>();
    int overtaken = 0;
    for (int i = 0; goesOn.test(i); i++) {
      Line line =
          new Line(ids.get(random.nextInt(ids.size())), "editor " + editor + " change " + i + "\n");
      overtaken += add(line);
      lines.add(line);
    }
    return new Work(lines, overtaken);
  }

  /** Adds a line, as often as it takes. @return how often it was overtaken */
  private int add(Line line) {
    Written seen = store.documents().newest(line.job()).orElseThrow();
    for (int overtaken = 0; ; overtaken++) {
      switch (store.documents().save(line.job(), seen.revision().id(), edit(seen, line))) {
        case Saving.Saved _ -> {
          return overtaken;
        }
        case Saving.Overtaken(Written newest) -> seen = newest;
      }
    }
  }

  private static Edit edit(Written seen, Line line) {
    return new Edit("Job", seen.text() + line.text(), "trial", "a line");
  }

  private List<String> lost(List<DocumentId> ids, List<Line> lines) {
    List<String> lost = new ArrayList<>();
    for (DocumentId id : ids) {
      Written newest = store.documents().newest(id).orElseThrow();
      List<String> wanted =
          lines.stream()
              .filter(l -> l.job().equals(id))
              .map(l -> l.text().strip())
              .sorted()
              .toList();
      if (!newest.text().lines().sorted().toList().equals(wanted)) {
        lost.add("lines of " + id);
      }
      if (newest.revision().number() != wanted.size() + 1) {
        lost.add("revisions of " + id);
      }
    }
    return lost;
  }
}
