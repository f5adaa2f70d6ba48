package fourpin.shop.line;

import fourpin.job.Job;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What all commands on a job share: they read it, and no failure shows a maker its entrails. */
abstract class Task implements Callable<Integer> {

  static final int GOOD = 0;
  static final int PLAN_HAS_ERRORS = 1;
  static final int INPUT_WRONG = 2;
  static final int OUR_FAILURE = 3;

  @Spec CommandSpec spec;

  @Parameters(index = "0", paramLabel = "JOB", description = "The job file.")
  private Path job;

  @Option(
      names = "--log",
      paramLabel = "FILE",
      description = "Where to keep the details, should the program itself fail.")
  private Optional<Path> log = Optional.empty();

  /** picocli sets the fields before the command runs. */
  @SuppressWarnings("NullAway.Init")
  Task() {}

  abstract int work(Job job) throws IOException;

  @Override
  public final Integer call() {
    try {
      return switch (new JobSource(job).read()) {
        case JobSource.Outcome.Good(Job good) -> work(good);
        case JobSource.Outcome.Refused(var messages) -> {
          messages.forEach(err()::println);
          yield INPUT_WRONG;
        }
      };
    } catch (Exception | StackOverflowError | OutOfMemoryError failure) {
      return tell(failure);
    }
  }

  private int tell(Throwable failure) {
    err()
        .println(
            "fourpin: the program itself failed ("
                + failure.getClass().getSimpleName()
                + "); nothing was written.");
    err()
        .println(
            log.map(file -> keep(failure, file))
                .orElse("Run it again with --log FILE to keep the details."));
    return OUR_FAILURE;
  }

  private static String keep(Throwable failure, Path file) {
    try (PrintWriter out = new PrintWriter(Files.newBufferedWriter(file))) {
      failure.printStackTrace(out);
      return "The details are in " + file + ".";
    } catch (IOException e) {
      return "The details could not be written to " + file + ".";
    }
  }

  Path job() {
    return job;
  }

  PrintWriter out() {
    return spec.commandLine().getOut();
  }

  PrintWriter err() {
    return spec.commandLine().getErr();
  }

  /** Colours on a terminal, unless NO_COLOR says otherwise. */
  static Ink.Terminal terminal() {
    return Ansi.AUTO.enabled() ? Ink.Terminal.COLOURS : Ink.Terminal.NONE;
  }
}
