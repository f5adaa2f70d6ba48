package fourpin.shop.web.guard;

import java.net.InetAddress;
import java.time.Duration;
import java.time.InstantSource;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * How often each address asks: a bucket that fills evenly and from which each request takes one.
 */
final class Rates {

  private static final int MOST_ADDRESSES = 10_000;
  private static final long MILLIS_PER_MINUTE = 60_000;

  /** One household has this much of an address of version 6 (RFC 6177). */
  private static final int NETWORK_BYTES = 8;

  private final Limits limits;
  private final InstantSource clock;
  private final Map<String, Bucket> buckets =
      new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Bucket> eldest) {
          return size() > MOST_ADDRESSES;
        }
      };

  /**
   * @param full for how many requests there is room, in milliseconds of filling
   */
  private record Bucket(long full, long at) {}

  Rates(Limits limits, InstantSource clock) {
    this.limits = limits;
    this.clock = clock;
  }

  private long perRequest() {
    return MILLIS_PER_MINUTE / limits.requestsPerMinute();
  }

  /** Counts a request. @return how long to wait if it is one too many */
  synchronized Optional<Duration> count(InetAddress from) {
    long now = clock.millis();
    long most = perRequest() * limits.requestsAtOnce();
    Bucket old = buckets.getOrDefault(key(from), new Bucket(most, now));
    long full = Math.min(most, old.full() + Math.max(0, now - old.at()));
    boolean enough = full >= perRequest();
    buckets.put(key(from), new Bucket(enough ? full - perRequest() : full, now));
    return enough ? Optional.empty() : Optional.of(Duration.ofMillis(perRequest() - full));
  }

  private static String key(InetAddress from) {
    byte[] bytes = from.getAddress();
    return HexFormat.of()
        .formatHex(bytes.length > NETWORK_BYTES ? Arrays.copyOf(bytes, NETWORK_BYTES) : bytes);
  }
}
