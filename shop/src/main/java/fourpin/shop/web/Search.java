package fourpin.shop.web;

import fourpin.cutting.Layout;
import fourpin.cutting.ThoroughCutter;
import fourpin.cutting.Watch;
import fourpin.cutting.WrittenLayout;
import fourpin.job.Job;
import fourpin.plan.CutMaterial;
import fourpin.plan.CutPlan;
import fourpin.plan.CutPlanner;
import fourpin.plan.CutWatch;
import fourpin.plan.HowNear;
import fourpin.plan.LayoutFigures;
import fourpin.plan.MaterialPlan.StockLayout;
import fourpin.shop.store.KeptLayout;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.LongSupplier;

/**
 * A longer search for the layouts of a job, beside the pages: it ends after its time, or when
 * somebody says that the best so far will do. What it found is kept where it is better than what
 * the plan has.
 */
final class Search implements CutWatch {

  /** The rest of the time is for laying the sheets out anew. */
  private static final double SEARCHED = 0.9;

  /**
   * How far one lot of parts is.
   *
   * @param near how near its best layout so far is to the least
   */
  record Lot(String name, HowNear near) {}

  /** What is known of a search. */
  sealed interface Progress {

    /** Others go before. */
    record Waiting() implements Progress {}

    /** It goes on. @param gone how long already */
    record Going(List<Lot> lots, Duration gone, Course course) implements Progress {}

    /**
     * It has ended.
     *
     * @param gone how long it took
     * @param course whether that was before its time
     */
    record Done(List<Lot> lots, CutPlan plan, Duration gone, Course course) implements Progress {}

    /** It broke off by a fault of ours. */
    record Failed() implements Progress {}
  }

  /** Whether it goes its way to the end. */
  enum Course {
    WHOLE,
    STOPPED
  }

  private final State state;
  private final Duration time;
  private final LongSupplier nanos;
  private final Consumer<List<KeptLayout>> keeper;
  private volatile Course course = Course.WHOLE;
  private final Map<String, Lot> lots = new LinkedHashMap<>();
  private Optional<Long> start = Optional.empty();
  private Optional<Progress> end = Optional.empty();

  /**
   * @param nanos a clock
   * @param keeper takes what is to be kept
   */
  Search(State state, Duration time, LongSupplier nanos, Consumer<List<KeptLayout>> keeper) {
    this.state = state;
    this.time = time;
    this.nanos = nanos;
    this.keeper = keeper;
  }

  /** The state of the job that it searches for. */
  State state() {
    return state;
  }

  /** Searches, in the thread that asks. */
  void run() {
    begin();
    try {
      CutPlan plan =
          CutPlanner.plan(
              state.plan().job(),
              CutPlanner.wanted(state.plan()),
              ThoroughCutter.Limit.WATCH,
              this);
      keeper.accept(toKeep(plan));
      end(new Progress.Done(lots(), plan, gone(), course));
    } catch (RuntimeException failure) {
      end(new Progress.Failed());
      throw failure;
    }
  }

  private synchronized void begin() {
    start = Optional.of(nanos.getAsLong());
  }

  private List<KeptLayout> toKeep(CutPlan found) {
    List<KeptLayout> kept = new ArrayList<>();
    for (int i = 0; i < found.materials().size(); i++) {
      List<StockLayout> planned = state.plan().materials().get(i).layouts();
      CutMaterial material = found.materials().get(i);
      Job job = state.plan().job();
      if (CutPlanner.isBetter(job, material.layouts(), planned)) {
        material.layouts().stream()
            .filter(layout -> layout.layout().unplaced().isEmpty())
            .forEach(layout -> kept.add(kept(material.material(), layout)));
      }
    }
    return kept;
  }

  private KeptLayout kept(String material, StockLayout layout) {
    return new KeptLayout(
        WrittenLayout.digest(layout.problem()),
        material,
        state.revision().number(),
        WrittenLayout.of(layout.problem(), layout.layout()));
  }

  private synchronized void end(Progress progress) {
    end = Optional.of(progress);
  }

  private synchronized List<Lot> lots() {
    return new ArrayList<>(lots.values());
  }

  private synchronized void better(LayoutFigures lot, Layout layout) {
    lots.put(lot.what(), new Lot(lot.what(), lot.of(layout)));
  }

  synchronized Progress progress() {
    return end.orElseGet(
        () ->
            start.isEmpty() ? new Progress.Waiting() : new Progress.Going(lots(), gone(), course));
  }

  /** Whether it has not ended yet. */
  boolean isGoing() {
    return progress() instanceof Progress.Going || progress() instanceof Progress.Waiting;
  }

  /** The best so far will do, for this lot and all others; from any thread. */
  synchronized void enough() {
    if (end.isEmpty()) {
      course = Course.STOPPED;
    }
  }

  private synchronized Duration gone() {
    return start.map(s -> Duration.ofNanos(nanos.getAsLong() - s)).orElse(Duration.ZERO);
  }

  @Override
  public long nanos() {
    return nanos.getAsLong();
  }

  @Override
  public Watch begin(LayoutFigures lot) {
    Duration until = Duration.ofNanos((long) (time.toNanos() * SEARCHED));
    return new Watch() {
      @Override
      public void better(Layout layout) {
        Search.this.better(lot, layout);
      }

      @Override
      public boolean enough() {
        return course == Course.STOPPED || gone().compareTo(until) >= 0;
      }
    };
  }
}
