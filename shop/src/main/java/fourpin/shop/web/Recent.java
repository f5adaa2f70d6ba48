package fourpin.shop.web;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;

/** The last few answers to questions that take a while. May be used by many threads at once. */
final class Recent<K, V> {

  /** Two revisions of each of some jobs that are worked on; a large plan takes a few megabytes. */
  private static final int MOST = 24;

  private final Map<K, V> kept =
      new LinkedHashMap<>(MOST, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
          return size() > MOST;
        }
      };

  /** Two threads that ask the same at once may both work it out. */
  V get(K key, Supplier<V> work) {
    synchronized (kept) {
      V found = kept.get(key);
      if (found != null) {
        return found;
      }
    }
    V made = work.get();
    put(key, made);
    return made;
  }

  void put(K key, V value) {
    synchronized (kept) {
      kept.put(key, value);
    }
  }
}
