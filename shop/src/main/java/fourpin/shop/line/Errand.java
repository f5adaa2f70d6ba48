package fourpin.shop.line;

import fourpin.shop.packet.PacketFile;
import fourpin.shop.packet.PacketFolder;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** What all commands share: no failure shows a maker its entrails. */
abstract class Errand implements Callable<Integer> {

  static final int GOOD = 0;
  static final int PLAN_HAS_ERRORS = 1;
  static final int INPUT_WRONG = 2;
  static final int OUR_FAILURE = 3;

  @Spec CommandSpec spec;

  @Option(
      names = "--log",
      paramLabel = "FILE",
      description = "Where to keep the details, should the program itself fail.")
  private Optional<Path> log = Optional.empty();

  /** picocli sets the fields before the command runs. */
  @SuppressWarnings("NullAway.Init")
  Errand() {}

  /** The exit code. */
  abstract int run() throws IOException;

  @Override
  public final Integer call() {
    try {
      return run();
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
    err().println(details(failure));
    return OUR_FAILURE;
  }

  /** Keeps the details where told to, and says where they are. */
  final String details(Throwable failure) {
    return log.map(file -> keep(failure, file))
        .orElse("Run it again with --log FILE to keep the details.");
  }

  /** After what is there: of several failures the first often is the cause of the others. */
  private static String keep(Throwable failure, Path file) {
    try (PrintWriter out =
        new PrintWriter(
            Files.newBufferedWriter(file, StandardOpenOption.CREATE, StandardOpenOption.APPEND))) {
      failure.printStackTrace(out);
      return "The details are in " + file + ".";
    } catch (IOException e) {
      return "The details could not be written to " + file + ".";
    }
  }

  /**
   * Puts files into a folder of their own, whole or not at all.
   *
   * @param what they are: "packet"
   * @param code where they could be written
   */
  int write(String what, Path folder, List<PacketFile> files, int code) {
    try {
      new PacketFolder(folder).replace(files);
    } catch (PacketFolder.RefusedException e) {
      err().println("fourpin: " + e.getMessage());
      return INPUT_WRONG;
    } catch (IOException e) {
      err()
          .println(
              "fourpin: the "
                  + what
                  + " could not be written to "
                  + folder
                  + " ("
                  + reason(e)
                  + "). A former "
                  + what
                  + " is as it was.");
      return OUR_FAILURE;
    }
    out().println("The " + what + " is in " + folder + ".");
    return code;
  }

  /** Why files can't be put into a folder, as far as it is known beforehand. */
  static Optional<String> refused(Path folder) {
    try {
      new PacketFolder(folder).check();
      return Optional.empty();
    } catch (PacketFolder.RefusedException e) {
      return Optional.of("fourpin: " + e.getMessage());
    } catch (IOException e) {
      return Optional.of("fourpin: " + folder + " can't be read (" + reason(e) + ").");
    }
  }

  private static String reason(IOException e) {
    return Optional.ofNullable(e.getMessage()).orElse("") + ", " + e.getClass().getSimpleName();
  }

  /** A folder beside a file, named after it. */
  static Path beside(Path file, String ending) {
    String name = file.getFileName().toString().replaceFirst("\\.[^.]*$", "");
    return file.resolveSibling(name + ending);
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
