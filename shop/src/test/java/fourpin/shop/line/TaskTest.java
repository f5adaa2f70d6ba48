package fourpin.shop.line;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.job.Job;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import picocli.CommandLine.Command;

class TaskTest {

  private static final String JOB = Path.of("..", "examples", "reading-room.yaml").toString();

  @TempDir private Path shop;

  @Command(name = "broken")
  static final class Broken extends Task {
    @Override
    int work(Job job) {
      throw new IllegalStateException("the entrails");
    }
  }

  @Test
  void tellsAFailureOfTheProgramInOneLineAndKeepsTheRestForTheLog() throws IOException {
    Path log = shop.resolve("fourpin.log");

    assertThat(run(JOB))
        .isEqualTo(
            "3 fourpin: the program itself failed (IllegalStateException); nothing was written.\n"
                + "Run it again with --log FILE to keep the details.\n");
    assertThat(run(JOB, "--log", log.toString()))
        .isEqualTo(
            "3 fourpin: the program itself failed (IllegalStateException); nothing was written.\n"
                + "The details are in "
                + log
                + ".\n");
    assertThat(Files.readString(log)).contains("the entrails").contains("TaskTest");
  }

  @Test
  void marksWordsOnlyOnATerminal() {
    assertThat(Ink.ERROR.on(Ink.Terminal.COLOURS, "error")).isEqualTo("\u001b[1;31merror\u001b[0m");
    assertThat(Ink.ERROR.on(Ink.Terminal.NONE, "error")).isEqualTo("error");
    assertThat(Ink.PLAIN.on(Ink.Terminal.COLOURS, "note")).isEqualTo("note");
  }

  private static String run(String... args) {
    StringWriter err = new StringWriter();
    int code = new CommandLine(new Broken()).setErr(new PrintWriter(err)).execute(args);
    return code + " " + err;
  }
}
