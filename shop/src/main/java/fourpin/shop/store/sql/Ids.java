package fourpin.shop.store.sql;

import java.security.SecureRandom;
import java.time.InstantSource;
import java.util.UUID;

/**
 * Ids that sort by the time they were made: UUIDs of version 7 (RFC 9562, section 5.7), with the
 * twelve bits after the milliseconds as a counter (section 6.2, method 1).
 */
final class Ids {

  private static final int COUNTER_BITS = 12;
  private static final long VERSION = 0x7000L;
  private static final long VARIANT = 0x8000_0000_0000_0000L;
  private static final long RANDOM_BITS = 0x3FFF_FFFF_FFFF_FFFFL;

  private final SecureRandom random = new SecureRandom();
  private final InstantSource clock;
  private long last;

  Ids(InstantSource clock) {
    this.clock = clock;
  }

  String next() {
    long moment = moment();
    long high = ((moment >>> COUNTER_BITS) << 16) | VERSION | (moment & ((1L << COUNTER_BITS) - 1));
    return new UUID(high, VARIANT | (random.nextLong() & RANDOM_BITS)).toString();
  }

  /** Milliseconds and counter in one number, always larger than the one before. */
  private synchronized long moment() {
    last = Math.max(last + 1, clock.millis() << COUNTER_BITS);
    return last;
  }
}
