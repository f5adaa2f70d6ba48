package fourpin.shop.store;

import java.time.Instant;
import java.time.InstantSource;

/** A clock that stands still until it is told. */
public final class TestClock implements InstantSource {

  private Instant now;

  public TestClock(Instant now) {
    this.now = now;
  }

  @Override
  public synchronized Instant instant() {
    return now;
  }

  public synchronized void pass(long millis) {
    now = now.plusMillis(millis);
  }
}
