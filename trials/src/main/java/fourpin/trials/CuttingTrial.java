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
import fourpin.trials.CuttingRows.Sawn;
import fourpin.trials.PublishedRun.Task;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/**
 * How near the cutters come to the best layouts published.
 *
 * <p>Each layout has so many seconds of the processor, not of the clock, so that other programs on
 * the machine take nothing from it. Each is noted at once, and a trial that was stopped goes on
 * where it was.
 */
@Command(
    name = "cutting",
    mixinStandardHelpOptions = true,
    description =
        "Cuts the published problems, without and with kerf, and holds them to their values.")
final class CuttingTrial implements Callable<Integer> {
  private static final Length KERF = Length.inches(1, 8);

  /** Work that takes about a second on a machine of 2025, or a little more. */
  private static final long STEPS_PER_SECOND = 60_000_000;

  private static final long BOARD_STEPS_PER_SECOND = 60_000_000;

  private static final long NANOS_PER_SECOND = 1_000_000_000;

  @Option(
      names = "--data",
      description = "Folder of families, or one family (default: trials/data).")
  private Optional<Path> data = Optional.empty();

  @Option(
      names = "--seconds",
      defaultValue = "10",
      description =
          "Seconds of the processor for each layout, at most (default: ${DEFAULT-VALUE}).")
  private int seconds;

  @Option(
      names = "--variant",
      defaultValue = "",
      description =
          "Only what has this in its name (family/instance/straight or turned or boards).")
  private String variant = "";

  @Option(
      names = "--go-on",
      description = "Leave out what is noted with as many seconds, or proven with fewer.")
  private boolean goOn;

  @Option(
      names = "--notes",
      description = "Where each layout is noted (default: docs/cutting-results.csv).")
  private Optional<Path> notes = Optional.empty();

  private final Processor processor = new Processor();

  @Override
  public Integer call() throws IOException {
    Path all = Trials.root().resolve("trials/data");
    Path docs = Trials.root().resolve("docs");
    CuttingRows rows = CuttingRows.read(notes.orElse(docs.resolve("cutting-results.csv")));
    for (PublishedSets.Pair pair : PublishedSets.read(data.orElse(all), KERF)) {
      if (pair.plain().name().contains(variant)) {
        measure(pair.plain(), Sawn.PLAIN, rows);
        measure(pair.sawn(), Sawn.WITH_KERF, rows);
        CuttingReport.row(pair.plain(), rows, seconds).ifPresent(System.out::println);
      }
    }
    if (notes.isEmpty()) {
      List<PublishedRun> runs =
          PublishedSets.read(all, KERF).stream().map(PublishedSets.Pair::plain).toList();
      CuttingReport report = new CuttingReport(runs, rows);
      Files.writeString(docs.resolve("cutting-results.md"), report.document());
    }
    return 0;
  }

  private void measure(PublishedRun run, Sawn sawn, CuttingRows rows) throws IOException {
    if (!goOn || rows.of(run, sawn, seconds).isEmpty()) {
      rows.put(run, sawn, cut(run));
    }
  }

  private CuttingRows.Cut cut(PublishedRun run) {
    Measured measured = new Measured(run.task());
    Processor.Taken taken = processor.measure(measured);
    Layout layout = measured.layout.orElseThrow();
    SheetProblem problem =
        switch (run.task()) {
          case Task.Sheets(var sheets) -> sheets;
          case Task.Boards(var boards) -> boards.asSheets();
        };
    int faults = VirtualSaw.check(problem, layout).size() + layout.unplaced().size();
    return new CuttingRows.Cut(
        seconds, run.found(layout), run.lower(layout), taken.processor(), taken.clock(), faults);
  }

  /** One layout to be made. */
  private final class Measured implements Runnable {
    private final Task task;
    private Optional<Layout> layout = Optional.empty();

    Measured(Task task) {
      this.task = task;
    }

    @Override
    public void run() {
      layout = Optional.of(layout(task, seconds, deadline()));
    }
  }

  /** With work for so many seconds on a machine of 2025, and no longer than the watch says. */
  static Layout layout(Task task, int seconds, Watch watch) {
    return switch (task) {
      case Task.Sheets(var problem) ->
          new PatternCutter(seconds * STEPS_PER_SECOND, watch).cut(problem);
      case Task.Boards(var problem) ->
          new BoardCutter(seconds * BOARD_STEPS_PER_SECOND / parts(problem), watch).cut(problem);
    };
  }

  private static long parts(BoardProblem problem) {
    return problem.parts().stream().mapToLong(BoardPart::count).sum();
  }

  /** Should the work take longer than it does on other machines. */
  private Watch deadline() {
    return Watch.until(processor.spent(seconds * NANOS_PER_SECOND));
  }
}
