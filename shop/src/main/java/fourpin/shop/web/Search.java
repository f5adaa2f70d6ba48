package fourpin.shop.web;

import fourpin.cutting.Layout;
import fourpin.cutting.ThoroughCutter;
import fourpin.cutting.Watch;
import fourpin.plan.CutPlan;
import fourpin.plan.CutPlanner;
import fourpin.plan.CutWatch;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.LongSupplier;

/**
 * A longer search for the layouts of a job, beside the pages: it ends after its time, or when
 * somebody says that the best so far will do.
 */
final class Search implements CutWatch {

  /** The rest of the time is for laying the sheets out anew. */
  private static final double SEARCHED = 0.9;

  /**
   * How far one lot of parts is.
   *
   * @param sheets of the best layout so far
   * @param fewest that any layout needs
   */
  record Lot(String name, long sheets, long fewest) {}

  /** What is known of a search. */
  sealed interface Progress {

    /** It goes on. @param gone how long already */
    record Going(List<Lot> lots, Duration gone) implements Progress {}

    record Done(List<Lot> lots, CutPlan plan) implements Progress {}

    /** It broke off by a fault of ours. */
    record Failed() implements Progress {}
  }

  private final State state;
  private final Duration time;
  private final LongSupplier nanos;
  private final long start;
  private final AtomicBoolean enough = new AtomicBoolean();
  private final Map<String, Lot> lots = new LinkedHashMap<>();
  private Optional<Progress> end = Optional.empty();

  /**
   * @param nanos a clock
   */
  Search(State state, Duration time, LongSupplier nanos) {
    this.state = state;
    this.time = time;
    this.nanos = nanos;
    this.start = nanos.getAsLong();
  }

  /** The state of the job that it searches for. */
  State state() {
    return state;
  }

  /** Searches, in the thread that asks. */
  void run() {
    try {
      CutPlan plan =
          CutPlanner.plan(
              state.plan().job(),
              CutPlanner.wanted(state.plan()),
              ThoroughCutter.Limit.WATCH,
              this);
      end(new Progress.Done(lots(), plan));
    } catch (RuntimeException failure) {
      end(new Progress.Failed());
      throw failure;
    }
  }

  private synchronized void end(Progress progress) {
    end = Optional.of(progress);
  }

  private synchronized List<Lot> lots() {
    return new ArrayList<>(lots.values());
  }

  private synchronized void better(String lot, Layout layout) {
    lots.put(lot, new Lot(lot, layout.sheets(), layout.bound().sheets()));
  }

  synchronized Progress progress() {
    return end.orElseGet(() -> new Progress.Going(lots(), gone()));
  }

  boolean isGoing() {
    return progress() instanceof Progress.Going;
  }

  /** The best so far will do, for this lot and all others; from any thread. */
  void enough() {
    enough.set(true);
  }

  private Duration gone() {
    return Duration.ofNanos(nanos.getAsLong() - start);
  }

  /** What time one lot leaves goes to the next ones. */
  @Override
  public Watch begin(String lot, int later) {
    double left = time.toNanos() * SEARCHED - gone().toNanos();
    Duration until = gone().plusNanos((long) (left / (later + 1)));
    return new Watch() {
      @Override
      public void better(Layout layout) {
        Search.this.better(lot, layout);
      }

      @Override
      public boolean enough() {
        return enough.get() || gone().compareTo(until) >= 0;
      }
    };
  }
}
