package fourpin.trials;

import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.lang.management.ThreadMXBean;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;

/** What a piece of work of this thread takes. */
final class Processor {
  private static final double NANOS_PER_SECOND = 1e9;
  private static final long BYTES_PER_MIB = 1 << 20;

  private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();

  /**
   * What was taken.
   *
   * @param clock seconds on the wall
   * @param processor seconds that this thread had a processor for
   * @param heap most that lay on the heap at once, rubbish and all, in MiB
   */
  record Taken(double clock, double processor, long heap) {}

  Taken measure(Runnable work) {
    System.gc();
    heap().forEach(MemoryPoolMXBean::resetPeakUsage);
    double clock = System.nanoTime();
    double processor = nanos();
    work.run();
    double clockTaken = System.nanoTime() - clock;
    double processorTaken = nanos() - processor;
    long peak = heap().mapToLong(pool -> pool.getPeakUsage().getUsed()).sum();
    return new Taken(
        clockTaken / NANOS_PER_SECOND, processorTaken / NANOS_PER_SECOND, peak / BYTES_PER_MIB);
  }

  /** Time of a processor that this thread has had. */
  private long nanos() {
    return threads.getCurrentThreadCpuTime();
  }

  /**
   * True once this thread has had a processor for so long from now on. To ask for that time takes
   * long, and a search asks at every step; it passes no faster than the clock, so it is asked for
   * when the clock says that it may have passed.
   */
  BooleanSupplier spent(long nanos) {
    return new Allowance(nanos() + nanos);
  }

  private final class Allowance implements BooleanSupplier {
    private final long end;
    private long next;
    private boolean spent;

    Allowance(long end) {
      this.end = end;
      ask();
    }

    private void ask() {
      long left = end - nanos();
      spent = left <= 0;
      next = System.nanoTime() + left;
    }

    @Override
    public boolean getAsBoolean() {
      if (!spent && System.nanoTime() - next >= 0) {
        ask();
      }
      return spent;
    }
  }

  private static Stream<MemoryPoolMXBean> heap() {
    return ManagementFactory.getMemoryPoolMXBeans().stream()
        .filter(pool -> pool.getType() == MemoryType.HEAP);
  }
}
