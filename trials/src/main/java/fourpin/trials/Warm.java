package fourpin.trials;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.Supplier;

/** Measures pieces of work inside this process, after they have been run warm. */
final class Warm {

  private static final int LEAST_WARM_RUNS = 10;
  private static final double WARM_MS = 3_000;
  private static final int LEAST_RUNS = 15;
  private static final double MEASURED_MS = 2_000;
  private static final double NANOS_PER_MS = 1e6;

  private static final int BASELINE_NUMBERS = 200_000;
  private static final long BASELINE_SEED = 20_260_101;

  private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();

  /** Holds the last result, so that the compiler cannot leave the work out. */
  Optional<Object> kept = Optional.empty();

  /**
   * Milliseconds of each run.
   *
   * @param clock as it passed on the wall
   * @param processor that this thread had a processor for; close to {@code clock} on a quiet
   *     machine, and of use on a busy one
   */
  record Milliseconds(Sample clock, Sample processor) {}

  Milliseconds milliseconds(Supplier<? extends Object> work) {
    repeat(work, LEAST_WARM_RUNS, WARM_MS);
    List<Run> runs = repeat(work, LEAST_RUNS, MEASURED_MS);
    return new Milliseconds(
        new Sample(runs.stream().map(Run::clock).toList()),
        new Sample(runs.stream().map(Run::processor).toList()));
  }

  /** Sorts 200,000 seeded numbers: work of a fixed size to compare machines and moments by. */
  Milliseconds baseline() {
    double[] numbers = new Random(BASELINE_SEED).doubles(BASELINE_NUMBERS).toArray();
    return milliseconds(
        () -> {
          double[] sorted = numbers.clone();
          Arrays.sort(sorted);
          return sorted[sorted.length / 2];
        });
  }

  /** By the processor's time: on a busy machine the clock runs on while nothing gets warm. */
  private List<Run> repeat(Supplier<? extends Object> work, int leastRuns, double leastMs) {
    List<Run> runs = new ArrayList<>();
    double total = 0;
    while (runs.size() < leastRuns || total < leastMs) {
      Run run = once(work);
      runs.add(run);
      total += run.processor();
    }
    return runs;
  }

  private Run once(Supplier<? extends Object> work) {
    long processor = threads.getCurrentThreadCpuTime();
    long clock = System.nanoTime();
    kept = Optional.of(work.get());
    return new Run(
        (System.nanoTime() - clock) / NANOS_PER_MS,
        (threads.getCurrentThreadCpuTime() - processor) / NANOS_PER_MS);
  }

  private record Run(double clock, double processor) {}
}
