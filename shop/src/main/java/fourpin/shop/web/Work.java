package fourpin.shop.web;

import fourpin.plan.FoundLayouts;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;

/**
 * A change whose plan somebody waits for: how far it is, and whether they have said stop. Until it
 * is saved nothing of it is kept, so that stopping it undoes nothing.
 */
final class Work {

  /** That of the thread; most have none. */
  static final ScopedValue<Work> NOW = ScopedValue.newInstance();

  /** Somebody has said stop. */
  static final class StoppedException extends RuntimeException {
    private static final long serialVersionUID = 1;
  }

  private enum Stage {
    GOING,
    STOPPED,
    KEPT
  }

  private final AtomicReference<Stage> stage = new AtomicReference<>(Stage.GOING);
  private final AtomicInteger lots = new AtomicInteger();

  /** The same layouts; looking for one tells how far the plan is, and is where it may stop. */
  static FoundLayouts watched(FoundLayouts found) {
    return problem -> {
      if (NOW.isBound()) {
        NOW.get().nextLot();
      }
      return found.of(problem);
    };
  }

  /** From here on it cannot be stopped. */
  static void keeps() {
    if (NOW.isBound()
        && NOW.get().stage.compareAndExchange(Stage.GOING, Stage.KEPT) == Stage.STOPPED) {
      throw new StoppedException();
    }
  }

  private void nextLot() {
    if (stage.get() == Stage.STOPPED) {
      throw new StoppedException();
    }
    lots.incrementAndGet();
  }

  /** Says stop. @return whether nothing of it is kept yet */
  boolean stop() {
    return stage.compareAndExchange(Stage.GOING, Stage.STOPPED) != Stage.KEPT;
  }

  /** How far it is, for a maker. */
  String words() {
    int lot = lots.get();
    return lot == 0 ? "Working it out." : "Laying out lot " + lot + " of sheets and boards.";
  }
}
