package fourpin.trials;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** How long a plan takes: as a whole process, and in core alone. */
@Command(
    name = "plan",
    mixinStandardHelpOptions = true,
    description = "Times plan and check as whole processes, and core alone by the number of cases.")
final class PlanTrial implements Callable<Integer> {

  private static final long KIB_PER_MIB = 1024;

  @Option(
      names = "--runs",
      defaultValue = "9",
      description = "Whole-process runs that count; 0 for core alone (default: ${DEFAULT-VALUE}).")
  private int runs;

  private final PrintStream out = System.out;

  @Override
  public Integer call() throws IOException, InterruptedException {
    out.println(Machine.inWords());
    Path example = Trials.root().resolve("examples/reading-room.yaml");
    if (runs > 0) {
      wholeProcesses(example.toString());
    }
    new CoreAlone(out).measure(example);
    return 0;
  }

  private void wholeProcesses(String job) throws IOException, InterruptedException {
    String launcher = Trials.root().resolve("fourpin").toString();
    out.printf(Locale.ROOT, "%nWhole processes, %d runs each, example reading-room%n", runs);
    String packet = Aside.folder().resolve("packet").toString();
    line("--version", "", List.of(launcher, "--version"));
    line("plan", "under 3 s, 512 MB", List.of(launcher, "plan", job, "--out", packet));
    line("check", "under 1 s", List.of(launcher, "check", job));
  }

  private void line(String name, String aim, List<String> command)
      throws IOException, InterruptedException {
    WholeProcess measured = WholeProcess.of(runs, command);
    out.printf(
        Locale.ROOT,
        "  %-10s median %5.2f s (%.2f to %.2f), peak memory %s MiB  %s%n",
        name,
        measured.seconds().median(),
        measured.seconds().least(),
        measured.seconds().most(),
        measured.peakKibibytes().isPresent()
            ? Long.toString(measured.peakKibibytes().getAsLong() / KIB_PER_MIB)
            : "?",
        aim.isEmpty() ? "" : "aim: " + aim);
  }
}
