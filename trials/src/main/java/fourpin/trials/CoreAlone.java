package fourpin.trials;

import fourpin.job.CaseOrder;
import fourpin.job.Job;
import fourpin.plan.Planner;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/**
 * From the job to the plan in this process, warm: the example as it is, then more and more cases.
 */
final class CoreAlone {

  private static final List<Integer> CASES = List.of(1, 3, 10, 30, 100);

  private final PrintStream out;
  private final Warm warm = new Warm();

  CoreAlone(PrintStream out) {
    this.out = out;
  }

  void measure(Path example) throws IOException {
    Job job = Examples.read(example);
    double baseline = warm.baseline().processor().median();
    out.printf(
        Locale.ROOT,
        "%nCore alone, from job to plan, warm; medians in milliseconds, by the clock and by the"
            + " processor%nBaseline: sorting 200,000 seeded numbers, %.2f ms of the processor%n"
            + "  %-10s %12s %12s %12s %12s%n",
        baseline,
        "cases",
        "clock",
        "processor",
        "per case",
        "x baseline");
    row("example", job, baseline);
    for (int cases : CASES) {
      row(Integer.toString(cases), ofCases(job, cases), baseline);
    }
    out.printf(
        Locale.ROOT,
        "  Cases in the example: %d; aim for it: under 20 ms. Aim for more: time per case does not grow.%n",
        job.cases().size());
  }

  private void row(String name, Job job, double baseline) {
    Warm.Milliseconds taken = warm.milliseconds(() -> Planner.plan(job));
    double processor = taken.processor().median();
    out.printf(
        Locale.ROOT,
        "  %-10s %12.2f %12.2f %12.3f %12.2f%n",
        name,
        taken.clock().median(),
        processor,
        processor / job.cases().size(),
        processor / baseline);
  }

  /** The first case of the job, over and over under new names. */
  private static Job ofCases(Job job, int count) {
    List<CaseOrder> cases =
        IntStream.rangeClosed(1, count).mapToObj(n -> named(job.cases().getFirst(), n)).toList();
    return job.with(cases);
  }

  private static CaseOrder named(CaseOrder order, int number) {
    return new CaseOrder(
        order.name() + " " + number,
        order.quantity(),
        order.sizes(),
        order.material(),
        order.bays(),
        order.topJoint(),
        order.bottomJoint(),
        order.partitionJoint(),
        order.fixedShelfJoint(),
        order.back(),
        order.kick(),
        order.faceFrame(),
        order.doors(),
        order.edging(),
        order.load(),
        order.settings());
  }
}
