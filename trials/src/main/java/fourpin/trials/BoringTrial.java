package fourpin.trials;

import com.sun.management.OperatingSystemMXBean;
import fourpin.boring.tolerance.ErrorModel;
import fourpin.boring.tolerance.Simulation;
import fourpin.boring.tolerance.Tally;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** How long simulated cases take, and how that grows with their holes. */
@Command(
    name = "boring",
    mixinStandardHelpOptions = true,
    description = "Times the simulation of shelves that rock, by the number of holes.")
final class BoringTrial implements Callable<Integer> {

  private static final int FULL = 40;
  private static final List<Integer> LEVELS = List.of(5, 10, 20, FULL, 80, 160);
  private static final double FEEL_LIMIT = 0.8;
  private static final long SEED = 1;
  private static final int WARM_RUNS = 2;
  private static final double NANOS = 1e9;

  @Option(
      names = "--cases",
      defaultValue = "100000",
      description = "Simulated cases (default: ${DEFAULT-VALUE}).")
  private int cases;

  @Option(
      names = "--runs",
      defaultValue = "5",
      description = "Runs that count, of which the middle one (default: ${DEFAULT-VALUE}).")
  private int runs;

  private final OperatingSystemMXBean system =
      (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();

  /** Seconds by the clock, and of all processors together. */
  private record Seconds(Sample clock, Sample processors) {}

  @Override
  public Integer call() {
    System.out.println(Machine.inWords());
    System.out.printf(
        Locale.ROOT,
        "%n%,d simulated cases of a bookcase of %d bays; medians of %d runs, in seconds, by the clock"
            + " and of all processors together%n  %-8s %8s %8s %8s %12s %14s  %s%n",
        cases,
        Bookcase.BAYS,
        runs,
        "levels",
        "holes",
        "clock",
        "least",
        "processors",
        "ns per hole",
        "odds that a shelf rocks somewhere");
    LEVELS.forEach(this::row);
    System.out.printf(
        Locale.ROOT,
        "  Aim: %d levels under 1 s by the clock on two processors; processor time per hole does not"
            + " grow.%n",
        FULL);
    return 0;
  }

  private void row(int levels) {
    ErrorModel model = Bookcase.of(levels);
    for (int i = 0; i < WARM_RUNS; i++) {
      simulate(model);
    }
    Seconds seconds = measure(model);
    int holes = Bookcase.BAYS * levels * Bookcase.CORNERS;
    System.out.printf(
        Locale.ROOT,
        "  %-8d %8d %8.3f %8.3f %12.3f %14.2f  %.4f%n",
        levels,
        holes,
        seconds.clock().median(),
        seconds.clock().least(),
        seconds.processors().median(),
        seconds.processors().median() * NANOS / ((double) cases * holes),
        simulate(model).oddsOfAny());
  }

  private Tally simulate(ErrorModel model) {
    return Simulation.run(model, FEEL_LIMIT, cases, SEED);
  }

  private Seconds measure(ErrorModel model) {
    List<Double> clock = new ArrayList<>();
    List<Double> processors = new ArrayList<>();
    for (int i = 0; i < runs; i++) {
      long busy = system.getProcessCpuTime();
      long start = System.nanoTime();
      simulate(model);
      clock.add((System.nanoTime() - start) / NANOS);
      processors.add((system.getProcessCpuTime() - busy) / NANOS);
    }
    return new Seconds(new Sample(clock), new Sample(processors));
  }
}
