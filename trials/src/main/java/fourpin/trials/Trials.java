package fourpin.trials;

import java.nio.file.Path;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The trials by name. */
@Command(
    name = "trials/run",
    mixinStandardHelpOptions = true,
    description = "Measures the program; passes and fails nothing.",
    subcommands = {
      PlanTrial.class,
      FuzzTrial.class,
      CuttingTrial.class,
      CasesTrial.class,
      SolverTrial.class,
      BoringTrial.class,
      BenchTrial.class,
      StoreTrial.class,
      EditorsTrial.class,
      StrengthTrial.class,
      WebTrial.class
    })
public final class Trials implements Runnable {

  private static final int CANNOT_MEASURE = 3;

  @Spec CommandSpec spec;

  /** picocli sets {@link #spec} before the command runs. */
  @SuppressWarnings("NullAway.Init")
  private Trials() {}

  @Override
  public void run() {
    throw new ParameterException(spec.commandLine(), "Which trial?");
  }

  /** The checkout, as {@code trials/run} names it. */
  static Path root() {
    return Path.of(System.getProperty("fourpin.root", "."));
  }

  public static void main(String[] args) {
    System.exit(
        new CommandLine(new Trials())
            .setExecutionExceptionHandler((failure, at, parsed) -> tell(failure))
            .execute(args));
  }

  private static int tell(Exception failure) {
    System.err.println("trials: " + failure.getMessage());
    return CANNOT_MEASURE;
  }
}
