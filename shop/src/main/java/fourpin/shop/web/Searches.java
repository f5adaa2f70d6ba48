package fourpin.shop.web;

import fourpin.shop.store.DocumentId;
import fourpin.shop.store.Layouts;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/**
 * Searches under way, and the last of each job. Each takes all that a processor gives, so that one
 * processor is left to the pages where there are several; further searches wait their turn.
 */
final class Searches implements AutoCloseable {

  /** Finished ones that are still shown. */
  private static final int MOST = 8;

  private final Layouts layouts;

  private final ExecutorService turns =
      Executors.newFixedThreadPool(
          Math.max(1, Runtime.getRuntime().availableProcessors() - 1),
          Thread.ofPlatform().daemon().name("search").factory());

  private final Map<DocumentId, Search> byJob =
      new LinkedHashMap<>() {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<DocumentId, Search> eldest) {
          return size() > MOST && !eldest.getValue().isGoing();
        }
      };

  Searches(Layouts layouts) {
    this.layouts = layouts;
  }

  /** Begins one; nothing if one for this job has not ended yet. */
  synchronized Optional<Search> begin(State state, Duration time) {
    DocumentId job = state.revision().document();
    if (of(job).filter(Search::isGoing).isPresent()) {
      return Optional.empty();
    }
    Search search = new Search(state, time, System::nanoTime, kept -> layouts.keep(job, kept));
    byJob.remove(job);
    byJob.put(job, search);
    turns.execute(search::run);
    return Optional.of(search);
  }

  synchronized Optional<Search> of(DocumentId job) {
    return Optional.ofNullable(byJob.get(job));
  }

  @Override
  public synchronized void close() {
    byJob.values().forEach(Search::enough);
    turns.shutdown();
  }
}
