package fourpin.trials;

import fourpin.cutting.BoardCutter;
import fourpin.cutting.BoardPart;
import fourpin.cutting.BoardProblem;
import fourpin.cutting.Layout;
import fourpin.cutting.PatternCutter;
import fourpin.cutting.SheetProblem;
import fourpin.cutting.VirtualSaw;
import fourpin.cutting.Watch;
import fourpin.measure.Length;
import fourpin.trials.PublishedRun.Task;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** How near the cutters come to the best layouts published. */
@Command(
    name = "cutting",
    mixinStandardHelpOptions = true,
    description =
        "Cuts the published problems, without and with kerf, and holds them to their values.")
final class CuttingTrial implements Callable<Integer> {
  private static final Length KERF = Length.inches(1, 8);

  /** Work that takes about a second on a machine of 2025. */
  private static final long STEPS_PER_SECOND = 20_000_000;

  private static final long NANOS_PER_SECOND = 1_000_000_000;

  @Option(names = "--data", description = "Folder of families (default: trials/data).")
  private Optional<Path> data = Optional.empty();

  @Option(
      names = "--seconds",
      defaultValue = "10",
      description = "Seconds for each layout, about (default: ${DEFAULT-VALUE}).")
  private int seconds;

  @Option(
      names = "--variant",
      defaultValue = "",
      description =
          "Only what has this in its name (family/instance/straight or turned or boards); writes no file.")
  private String variant = "";

  @Override
  public Integer call() throws IOException {
    Path folder = data.orElse(Trials.root().resolve("trials/data"));
    List<PublishedRun> plain = runs(folder, Length.ZERO);
    List<PublishedRun> sawn = runs(folder, KERF);
    CuttingReport report = new CuttingReport(seconds);
    for (int i = 0; i < plain.size(); i++) {
      System.out.println(report.add(plain.get(i), List.of(cut(plain.get(i)), cut(sawn.get(i)))));
    }
    System.out.print(report.sums());
    if (variant.isEmpty()) {
      Files.writeString(Trials.root().resolve("docs/cutting-results.md"), report.document());
    }
    return 0;
  }

  private List<PublishedRun> runs(Path folder, Length kerf) throws IOException {
    List<PublishedRun> runs = new ArrayList<>(new PublishedSets(kerf).read(folder));
    runs.removeIf(run -> !run.name().contains(variant));
    return runs;
  }

  private CuttingReport.Cut cut(PublishedRun run) {
    long start = System.nanoTime();
    Layout layout = layout(run.task());
    double taken = (System.nanoTime() - start) / 1e9;
    SheetProblem problem =
        switch (run.task()) {
          case Task.Sheets(var sheets) -> sheets;
          case Task.Boards(var boards) -> boards.asSheets();
        };
    int faults = VirtualSaw.check(problem, layout).size() + layout.unplaced().size();
    return new CuttingReport.Cut(run.found(layout), run.lower(layout), taken, faults);
  }

  private Layout layout(Task task) {
    return switch (task) {
      case Task.Sheets(var problem) ->
          new PatternCutter(seconds * STEPS_PER_SECOND, deadline()).cut(problem);
      case Task.Boards(var problem) ->
          new BoardCutter(seconds * STEPS_PER_SECOND / parts(problem), deadline()).cut(problem);
    };
  }

  private static long parts(BoardProblem problem) {
    return problem.parts().stream().mapToLong(BoardPart::count).sum();
  }

  /** By the clock, should the work take longer than it does on other machines. */
  private Watch deadline() {
    long end = System.nanoTime() + seconds * NANOS_PER_SECOND;
    return Watch.until(() -> System.nanoTime() - end > 0);
  }
}
