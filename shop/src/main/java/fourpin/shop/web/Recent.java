package fourpin.shop.web;

import java.lang.ref.SoftReference;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;

/**
 * The last few answers to questions that take a while, as long as there is memory for them. May be
 * used by many threads at once.
 */
final class Recent<K, V> {

  /** The newest of each of 20 jobs that are worked on, and what some of their pages still show. */
  static final int MOST = 32;

  /**
   * Softly, because a plan takes 2.3 MB for a case of three bays, and more once it is looked into.
   */
  private final Map<K, SoftReference<V>> kept =
      new LinkedHashMap<>(MOST, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<K, SoftReference<V>> eldest) {
          return size() > MOST;
        }
      };

  private final Map<K, CompletableFuture<V>> underWay = new ConcurrentHashMap<>();

  /**
   * Who asks what is being worked out already waits for that; if it fails, they work it out
   * themselves.
   */
  V get(K key, Supplier<V> work) {
    return found(key).orElseGet(() -> awaited(key, work));
  }

  private V awaited(K key, Supplier<V> work) {
    CompletableFuture<V> mine = new CompletableFuture<>();
    CompletableFuture<V> first = underWay.computeIfAbsent(key, _ -> mine);
    if (first.equals(mine)) {
      return worked(key, work, mine);
    }
    try {
      return first.join();
    } catch (CancellationException e) {
      return work.get();
    }
  }

  private V worked(K key, Supplier<V> work, CompletableFuture<V> awaited) {
    try {
      V made = work.get();
      put(key, made);
      awaited.complete(made);
      return made;
    } finally {
      awaited.cancel(false);
      underWay.remove(key);
    }
  }

  private Optional<V> found(K key) {
    synchronized (kept) {
      return Optional.ofNullable(kept.get(key)).map(SoftReference::get);
    }
  }

  void put(K key, V value) {
    synchronized (kept) {
      kept.put(key, new SoftReference<>(value));
    }
  }
}
