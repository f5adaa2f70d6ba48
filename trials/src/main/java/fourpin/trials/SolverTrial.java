package fourpin.trials;

import fourpin.cutting.Layout;
import fourpin.cutting.SheetProblem;
import fourpin.cutting.StripCutter;
import fourpin.cutting.VirtualSaw;
import fourpin.cutting.Watch;
import fourpin.measure.Length;
import fourpin.trials.PublishedRun.Task;
import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/**
 * How the cutters compare with a general-purpose solver that is given the same problem and time.
 */
@Command(
    name = "solver",
    mixinStandardHelpOptions = true,
    description = "Cuts some published problems, and has an open constraint solver cut them too.")
final class SolverTrial implements Callable<Integer> {

  private static final long NANOS_PER_SECOND = 1_000_000_000;

  /** Parts may not be turned; from five parts up, every published value known. */
  private static final List<String> SUBSET =
      List.of(
          "sheets-lit30/",
          "boards-1d/falkenauer-T/t60_0",
          "boards-1d/falkenauer-U/u250_0",
          "boards-1d/hard28/hBPP7");

  @Option(
      names = "--seconds",
      defaultValue = "5",
      description = "Seconds of the clock for each, at most (default: ${DEFAULT-VALUE}).")
  private int seconds;

  @Option(
      names = "--variant",
      defaultValue = "",
      description = "Only what has this in its name; writes no file.")
  private String variant = "";

  @Override
  public Integer call() throws IOException {
    SolverReport report = new SolverReport(seconds);
    for (PublishedSets.Pair pair :
        PublishedSets.read(Trials.root().resolve("trials/data"), Length.ZERO)) {
      PublishedRun run = pair.plain();
      boolean taken = SUBSET.stream().anyMatch(run.name()::startsWith);
      if (taken && !run.name().endsWith("turned") && run.name().contains(variant)) {
        System.out.println(report.add(row(run)));
      }
    }
    if (variant.isEmpty()) {
      Files.writeString(Trials.root().resolve("docs/cutting-solver.md"), report.document());
    }
    return 0;
  }

  private SolverReport.Row row(PublishedRun run) {
    SheetProblem problem =
        switch (run.task()) {
          case Task.Sheets(var sheets) -> sheets;
          case Task.Boards(var boards) -> boards.asSheets();
        };
    Layout quick = new StripCutter().cut(problem);
    long start = System.nanoTime();
    Layout layout = layout(run.task());
    double taken = (System.nanoTime() - start) / (double) NANOS_PER_SECOND;
    if (!VirtualSaw.check(problem, layout).isEmpty() || !layout.unplaced().isEmpty()) {
      throw new IllegalStateException("the layout of " + run.name() + " can't be sawn");
    }
    Solver.Answer solver = Solver.solve(run.task(), problem, quick, seconds);
    return new SolverReport.Row(
        run.name(),
        run.best(),
        new Solver.Answer(layout.sheets(), layout.bound().sheets(), taken),
        solver);
  }

  private Layout layout(Task task) {
    long end = System.nanoTime() + seconds * NANOS_PER_SECOND;
    return CuttingTrial.layout(task, seconds, Watch.until(() -> System.nanoTime() - end > 0));
  }
}
