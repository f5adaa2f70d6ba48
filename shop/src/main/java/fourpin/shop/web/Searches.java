package fourpin.shop.web;

import fourpin.shop.store.DocumentId;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Searches under way and the last of each job; at most one is under way at a time. */
final class Searches implements AutoCloseable {

  /** Finished ones that are still shown. */
  private static final int MOST = 8;

  private final Map<DocumentId, Search> byJob =
      new LinkedHashMap<>() {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<DocumentId, Search> eldest) {
          return size() > MOST && !eldest.getValue().isGoing();
        }
      };

  /** Begins one; nothing if another is under way, since each takes all that a processor gives. */
  synchronized Optional<Search> begin(State state, Duration time) {
    if (byJob.values().stream().anyMatch(Search::isGoing)) {
      return Optional.empty();
    }
    Search search = new Search(state, time, System::nanoTime);
    byJob.remove(state.revision().document());
    byJob.put(state.revision().document(), search);
    Thread.ofPlatform().daemon().name("search").start(search::run);
    return Optional.of(search);
  }

  synchronized Optional<Search> of(DocumentId job) {
    return Optional.ofNullable(byJob.get(job));
  }

  @Override
  public synchronized void close() {
    byJob.values().forEach(Search::enough);
  }
}
