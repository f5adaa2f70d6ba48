package fourpin.shop;

import fourpin.shop.line.BackupCommand;
import fourpin.shop.line.CheckCommand;
import fourpin.shop.line.CutCommand;
import fourpin.shop.line.ExplainCommand;
import fourpin.shop.line.PlanCommand;
import fourpin.shop.line.RestoreCommand;
import fourpin.shop.line.ServeCommand;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/**
 * The command line. Exit codes: 0 good, 1 the plan has errors, 2 input or usage wrong, 3 our
 * failure.
 */
@Command(
    name = "fourpin",
    mixinStandardHelpOptions = true,
    versionProvider = Main.Version.class,
    description = "Plans cases with adjustable shelves and carries the plan to the bench.",
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:good",
      "1:the plan has errors",
      "2:the input or the usage is wrong",
      "3:a failure of the program itself"
    },
    exitCodeOnExecutionException = 3)
public final class Main implements Runnable {

  private static final List<Class<?>> COMMANDS =
      List.of(
          PlanCommand.class,
          CheckCommand.class,
          ExplainCommand.class,
          CutCommand.class,
          BackupCommand.class,
          RestoreCommand.class,
          ServeCommand.class);

  @Spec CommandSpec spec;

  /** picocli sets {@link #spec} before the command runs. */
  @SuppressWarnings("NullAway.Init")
  private Main() {}

  @Override
  public void run() {
    throw new ParameterException(spec.commandLine(), "Missing command.");
  }

  public static void main(String[] args) {
    System.exit(line(args).execute(args));
  }

  /**
   * The command line that reads these arguments: with the command that they begin with, else with
   * every one. To look into all takes a tenth of the start of the server.
   */
  static CommandLine line(String... args) {
    List<Class<?>> named =
        COMMANDS.stream()
            .filter(command -> args.length > 0 && name(command).equals(args[0]))
            .toList();
    CommandLine line = new CommandLine(new Main());
    (named.isEmpty() ? COMMANDS : named).forEach(line::addSubcommand);
    return line;
  }

  private static String name(Class<?> command) {
    return command.getAnnotation(Command.class).name();
  }

  static final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() {
      return new String[] {"fourpin " + ofJar().orElse("(unpackaged)")};
    }

    private static Optional<String> ofJar() {
      return Optional.ofNullable(Main.class.getPackage().getImplementationVersion());
    }
  }
}
