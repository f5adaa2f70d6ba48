package fourpin.trials;

import fourpin.casework.Saws;
import fourpin.cutting.Layout;
import fourpin.cutting.Merit;
import fourpin.cutting.Part;
import fourpin.cutting.Reusable;
import fourpin.cutting.SheetProblem;
import fourpin.cutting.ThoroughCutter;
import fourpin.cutting.VirtualSaw;
import fourpin.job.CaseOrder;
import fourpin.job.Job;
import fourpin.job.Setting;
import fourpin.job.Settings;
import fourpin.job.Sizes;
import fourpin.measure.Length;
import fourpin.plan.Plan;
import fourpin.plan.Planner;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.IntStream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** How the cutting of whole jobs grows with their cases. */
@Command(
    name = "cases",
    mixinStandardHelpOptions = true,
    description =
        "Lays out the parts of 1 to 200 cases, and says how near the least cost they are.")
final class CasesTrial implements Callable<Integer> {

  private static final List<Length> WIDTHS = inches(80, 72, 66, 60, 54, 48, 42);
  private static final List<Length> HEIGHTS = inches(84, 78, 72, 66, 60);
  private static final List<Length> DEPTHS =
      List.of(Length.inches(47, 4), Length.inches(55, 4), Length.inches(39, 4));

  @Option(
      names = "--cases",
      split = ",",
      defaultValue = "1,10,30,100,200",
      description = "Numbers of cases (default: ${DEFAULT-VALUE}); others write no file.")
  private List<Integer> counts = List.of();

  private static final List<Integer> PUBLISHED = List.of(1, 10, 30, 100, 200);

  /** Which cases a job has. */
  private enum Mixture {
    ALIKE("all cases alike"),
    DIFFERENT("every case of another size");

    private final String words;

    Mixture(String words) {
      this.words = words;
    }
  }

  private final Processor processor = new Processor();

  @Override
  public Integer call() throws IOException {
    Job job = Examples.job("reading-room.yaml");
    CasesReport report = new CasesReport();
    for (int count : counts) {
      for (Mixture mixture : Mixture.values()) {
        System.out.println(report.add(row(job, count, mixture)));
      }
    }
    if (counts.equals(PUBLISHED)) {
      Path written = Trials.root().resolve("docs/cutting-growth.md");
      Files.writeString(written, report.document());
    }
    return 0;
  }

  private CasesReport.Row row(Job example, int count, Mixture mixture) {
    Plan plan = Planner.plan(of(example, count, mixture));
    List<SheetProblem> problems =
        plan.materials().stream().flatMap(m -> m.layouts().stream()).map(l -> l.problem()).toList();
    ThoroughCutter cutter = new ThoroughCutter(aims(example.settings()));
    List<Layout> layouts = new ArrayList<>();
    Processor.Taken taken =
        processor.measure(() -> problems.forEach(problem -> layouts.add(cutter.cut(problem))));
    long faults = 0;
    for (int i = 0; i < problems.size(); i++) {
      faults += VirtualSaw.check(problems.get(i), layouts.get(i)).size();
      faults += layouts.get(i).unplaced().size();
    }
    return new CasesReport.Row(
        count,
        mixture.words,
        problems.stream().mapToLong(CasesTrial::parts).sum(),
        problems.stream().mapToLong(problem -> problem.parts().size()).sum(),
        layouts.stream().mapToLong(Layout::sheets).sum(),
        layouts.stream().mapToLong(Layout::price).sum(),
        layouts.stream().mapToLong(layout -> layout.bound().price()).sum(),
        taken,
        faults);
  }

  private static long parts(SheetProblem problem) {
    return problem.parts().stream().mapToLong(Part::count).sum();
  }

  private static Merit.Aims aims(Settings settings) {
    Reusable kept =
        new Reusable(settings.length(Setting.OFFCUT_LENGTH), settings.length(Setting.OFFCUT_WIDTH));
    return new Merit.Aims(kept, settings.length(Setting.SMALL_PIECE), new Saws(settings).holds());
  }

  private static Job of(Job job, int count, Mixture mixture) {
    CaseOrder first = job.cases().getFirst();
    return job.with(
        switch (mixture) {
          case ALIKE -> List.of(made(first, "", count, first.sizes()));
          case DIFFERENT ->
              IntStream.range(0, count)
                  .mapToObj(n -> made(first, " " + (n + 1), 1, sizes(first, n)))
                  .toList();
        });
  }

  /** The numbers of widths, heights and depths have no common divisor: 105 cases, all different. */
  private static Sizes sizes(CaseOrder order, int n) {
    return new Sizes(
        order.sizes().measured(),
        WIDTHS.get(n % WIDTHS.size()),
        HEIGHTS.get(n % HEIGHTS.size()),
        DEPTHS.get(n % DEPTHS.size()));
  }

  private static CaseOrder made(CaseOrder order, String number, int quantity, Sizes sizes) {
    return new CaseOrder(
        order.name() + number,
        quantity,
        sizes,
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

  private static List<Length> inches(int... whole) {
    return IntStream.of(whole).mapToObj(n -> Length.inches(n, 1)).toList();
  }
}
