package fourpin.shop;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** What a maker sees on the command line, whole. */
class MainTest {

  private static final Path EXAMPLES = Path.of("..", "examples");

  @TempDir private Path shop;

  private record Run(int code, String out, String err) {}

  private static Run run(Object... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    String[] words = Stream.of(args).map(Object::toString).toArray(String[]::new);
    CommandLine line =
        Main.line(words)
            .setOut(new PrintWriter(out))
            .setErr(new PrintWriter(err))
            .setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF));
    int code = line.execute(words);
    return new Run(code, out.toString(), err.toString());
  }

  @Test
  void tellsItsCommands() {
    Run run = run("--help");

    assertThat(run.code()).isZero();
    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .isEqualTo(
            """
            Usage: fourpin [-hV] [COMMAND]
            Plans cases with adjustable shelves and carries the plan to the bench.
              -h, --help      Show this help message and exit.
              -V, --version   Print version information and exit.
            Commands:
              plan     Plans a job and writes the packet for the bench.
              check    Reads and plans a job and says what is wrong or doubtful; writes
                         nothing.
              explain  Shows where a figure of the plan comes from; without FIGURE, lists
                         them.
              cut      Lays parts out on sheets and boards, from two tables or a job, and
                         writes the layouts.
              backup   Writes all jobs, ticks, stock and tools that the shop keeps into one
                         file.
              restore  Puts all that a backup holds into the shop's data, whole or not at
                         all.
              serve    Opens Fourpin to browsers on this machine; stop it with Ctrl-C.

            Exit codes:
              0   good
              1   the plan has errors
              2   the input or the usage is wrong
              3   a failure of the program itself
            """);
  }

  @Test
  void tellsEveryFaultOfAJobAndWritesNothing() throws IOException {
    Path job =
        write(
            "title: Box\n"
                + "unit: inch\n"
                + "materials: {ply: {kind: sheet, of: ply, thickness: thin}}\n"
                + "case: {}\n");

    Run run = run("plan", job);

    assertThat(run.code()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err())
        .isEqualTo(
            """
            JOB:3:36: error: materials.ply.of 'ply': the reference tables do not list it. Choose from the list in the documents.
            JOB:3:52: error: materials.ply.thickness 'thin': this is not a length. Write it like 31 1/2 in, 7' 2 1/4", 800 mm or 1.2 m.
            JOB:4:1: error: case: there is no such key in a job. Did you mean 'cases'?
            """
                .replace("JOB", job.toString()));
    assertThat(shop.toFile().list()).containsExactly("job.yaml");
  }

  @Test
  void tellsTheFirstFiftyFaultsOfMany() throws IOException {
    StringBuilder many = new StringBuilder();
    for (int i = 0; i < 70; i++) {
      many.append("zz").append(i).append(": 1\n");
    }
    Path job = write(many.toString());

    Run run = run("check", job);

    assertThat(run.err().lines()).hasSize(51);
    assertThat(run.err()).endsWith(job + ": and 24 more errors\n");
  }

  @Test
  void suggestsTheFileThatWasMeant() {
    Path wrong = EXAMPLES.resolve("reading-rom.yaml");

    Run run = run("check", wrong);

    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err())
        .isEqualTo(wrong + ": error: there is no such file. Did you mean 'reading-room.yaml'?\n");
  }

  @Test
  void takesNoFolderForAJob() {
    Run run = run("check", shop);

    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err())
        .isEqualTo(shop + ": error: it is not a file. Name the job file itself.\n");
  }

  @Test
  void asksForTheJob() {
    Run run = run("check");

    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err())
        .startsWith("Missing required parameter: 'JOB'\nUsage: fourpin check [-hV]");
  }

  @Test
  void writesThePacketBesideTheJobAndSaysWhere() throws IOException {
    Path job = write(Files.readString(EXAMPLES.resolve("reading-room.yaml")));

    Run run = run("plan", job);

    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isZero();
    assertThat(run.out())
        .startsWith(
            "Reading room bookcases, revision A\n"
                + "  case        2 x bookcase, 80 x 84 x 11 3/4 in outside, 3 bays, ")
        .endsWith("\nThe packet is in " + shop.resolve("job.packet") + ".\n")
        .doesNotContain("\u001b");
    assertThat(shop.resolve("job.packet/packet.pdf")).isNotEmptyFile();
  }

  /** A partition whose rows meet: the plan has an error, the packet shows it, the code says it. */
  @Test
  void tellsWhatIsWrongWithThePlan() throws IOException {
    Run run = run("plan", EXAMPLES.resolve("music-library.yaml"), "--out", shop.resolve("music"));

    assertThat(run.code()).isEqualTo(1);
    assertThat(run.out()).contains("\n1 error").contains("  error rows-meet, cabinet, P1: ");
    assertThat(shop.resolve("music/packet.pdf")).isNotEmptyFile();
  }

  @Test
  void writesNoPacketOfACaseThatCannotBeBuilt() throws IOException {
    String wide =
        Files.readString(EXAMPLES.resolve("reading-room.yaml")).replace("recess: 2", "recess: 7");
    Path job = write(wide.replace("depth: 11 3/4", "depth: 3"));

    Run run = run("plan", job);

    assertThat(run.code()).isEqualTo(1);
    assertThat(run.out())
        .contains("  refusal ", "; cost: ")
        .doesNotContain("  holes ", "  to buy ", "  price ")
        .endsWith("No packet was written: not every case can be built as stated.\n");
    assertThat(shop.resolve("job.packet")).doesNotExist();
  }

  @Test
  void leavesAFolderOfTheMakersAlone() throws IOException {
    Path folder = Files.createDirectory(shop.resolve("photos"));
    Files.writeString(folder.resolve("stove.jpg"), "x");

    Run run = run("plan", EXAMPLES.resolve("reading-room.yaml"), "--out", folder);

    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err())
        .isEqualTo(
            "fourpin: "
                + folder
                + " holds files and is no packet. Name another folder with --out.\n");
    assertThat(folder.toFile().list()).containsExactly("stove.jpg");
  }

  @Test
  void tellsWhereAPacketCannotBeWritten() throws IOException {
    Path file = Files.writeString(shop.resolve("file"), "x");

    Run run = run("plan", EXAMPLES.resolve("reading-room.yaml"), "--out", file.resolve("packet"));

    assertThat(run.code()).isEqualTo(3);
    assertThat(run.err())
        .startsWith("fourpin: the packet could not be written to " + file.resolve("packet") + " (");
  }

  @Test
  void listsFiguresAndShowsTheirWorking() {
    Path job = EXAMPLES.resolve("reading-room.yaml");

    assertThat(run("explain", job).out())
        .contains("job/holes = ")
        .contains("  holes to bore for supports\n");
    assertThat(run("explain", job, "job/boring-time").out())
        .startsWith("time to bore and groove for supports, by the ways taken: ")
        .contains("\n  id      job/boring-time\n  formula t1 + t2 + ...\n  t1 = ")
        .contains("  bookcase, plunge router with a bushing");
  }

  /** As the sheets print it, and what the formula gives can be added up from what stands below. */
  @Test
  void explainsLengthsInTheFractionsOfTheSheets() {
    Path job = EXAMPLES.resolve("reading-room.yaml");

    assertThat(run("explain", job, "bookcase/bay-1/levels/3/height").out())
        .startsWith("level 3 above the foot of the case: 12 15/32 in\n")
        .contains("\n  f = 10 15/32 in (265.90625 mm)  level 1; ", "\n  p = 1 in (25.4 mm)  ");
  }

  @Test
  void suggestsTheFigureThatWasMeant() {
    Run run = run("explain", EXAMPLES.resolve("reading-room.yaml"), "job/hoels");

    assertThat(run.code()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err())
        .isEqualTo("fourpin: the plan has no figure 'job/hoels'. Did you mean 'job/holes'?\n");
  }

  /** A maker asks for "sag", not for the whole id. */
  @Test
  void listsTheFiguresThatHoldTheWord() {
    Run run = run("explain", EXAMPLES.resolve("reading-room.yaml"), "sag");

    assertThat(run.code()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err())
        .startsWith("fourpin: the plan has no figure 'sag'. Figures with that word: bookcase/")
        .contains("/sag")
        .containsPattern(" and \\d+ more\n$");
  }

  private Path write(String text) throws IOException {
    return Files.writeString(shop.resolve("job.yaml"), text);
  }
}
