package fourpin.shop.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Cures that are one change of the job are done by one press, and the finding is gone by it. */
class CuresTest {

  @TempDir static Path folder;

  private static Caller caller;

  @BeforeAll
  static void start() {
    caller = Caller.at(folder);
  }

  @AfterAll
  static void stop() {
    caller.close();
  }

  /** Every press of the worst kind of finding on a job of its own. @return the files that came */
  private static List<String> pressed(String text) {
    String page = caller.get(caller.bring(text)).body();
    String first = Caller.first(page, "name=\"cure\" value=\"([^\"-]*)-[^\"]*\"");
    List<String> files = new ArrayList<>();
    for (String press : Caller.all(page, "name=\"cure\" value=\"(" + first + "-[^\"]*)\"")) {
      String job = caller.bring(text);
      HttpResponse<String> answer =
          caller.post(job + "/cure", "seen", caller.seen(job), "case", "bookcase", "cure", press);
      assertThat(answer.statusCode()).as(press).isEqualTo(200);
      assertThat(answer.body()).contains("Done: ");
      files.add(caller.file(job));
    }
    return files;
  }

  /**
   * Shelves of 38 in without strips sag; the example has no thicker sheet. Points of 1/8 in would
   * meet in the partition.
   */
  @Test
  void aShelfThatSagsGetsAStripThickerWoodOrPartitions() throws IOException {
    String plain =
        Caller.readingRoom()
            .replace("    bays: 3\n", "    bays: 2\n")
            .replace("hole-depth: 5/16\n", "hole-depth: 5/16\n      bit-point: 0\n")
            .replaceFirst("(?s)      edging:\n        strip: oak\n.*?height: 1 1/4\n", "")
            .replace(
                "  oak:\n    kind: board",
                "  thick-ply: {kind: sheet, of: 'plywood, veneer core', thickness: 1 1/4}\n"
                    + "  oak:\n    kind: board")
            .replace(
                "  sheets:\n", "  sheets:\n    - {material: thick-ply, length: 96, width: 48}\n");
    List<String> files = pressed(plain);
    assertThat(files)
        .anySatisfy(
            f ->
                assertThat(f)
                    .containsPattern(
                        "        strip: oak\n.*\n        height: .*\n        edges: \\[front]"))
        .anySatisfy(f -> assertThat(f).contains("edges: [front, back]"))
        .anySatisfy(f -> assertThat(f).contains("      material: thick-ply\n"))
        .anySatisfy(
            f ->
                assertThat(f)
                    .contains("      material: oak-ply-doubled\n")
                    .containsPattern("  oak-ply-doubled:\n    kind: sheet\n")
                    .containsPattern("(?s)cut-from: oak-ply\\b.*cut-from: oak-ply\\b"))
        .anySatisfy(f -> assertThat(f).containsPattern("bays:\n( +- (\\{width.*|\\{\\})\n){3}"));
  }

  /** Holes of 7/16 in from both sides go through 23/32 in. */
  @Test
  void rowsThatMeetGoBackOrUpInEverySecondBay() throws IOException {
    List<String> files =
        pressed(Caller.readingRoom().replace("hole-depth: 5/16", "hole-depth: 7/16"));
    assertThat(files)
        .anySatisfy(
            f ->
                assertThat(f)
                    .containsPattern("bays:\n      - \\{\\}\n      - \\{rows-back: .*\\}\n"))
        .anySatisfy(f -> assertThat(f).containsPattern("levels-up: 1/2 in"));
  }

  private static final String SHALLOWER = "set hole-depth to 5.1 mm";

  private static String musicLibrary() throws IOException {
    return Files.readString(Path.of("..", "examples", "music-library.yaml"));
  }

  private static HttpResponse<String> cure(String job, String press) {
    return caller.post(job + "/cure", "seen", caller.seen(job), "case", "cabinet", "cure", press);
  }

  /** Supports would crush the wood round holes so shallow: the maker decides. */
  @Test
  void whatACureWouldBringIsSaidAndAskedFirst() throws IOException {
    String job = caller.bring(musicLibrary());
    HttpResponse<String> asks = cure(job, press(job, SHALLOWER));
    assertThat(asks.statusCode()).isEqualTo(409);
    assertThat(asks.body())
        .contains("Not done yet", "It would cure F1, and bring what would spoil the work:")
        .contains("may crush the wood of its hole", "Leave it as it is");
    assertThat(caller.file(job)).isEqualTo(musicLibrary());
    HttpResponse<String> done =
        cure(job, Caller.first(asks.body(), "value=\"([^\"]*-nonetheless)\""));
    assertThat(done.statusCode()).isEqualTo(200);
    assertThat(done.body()).contains("Done: " + SHALLOWER, "It has brought what would spoil");
    assertThat(caller.file(job)).contains("hole-depth: 5.1 mm");
  }

  /** Somebody else was faster, by another cure. */
  @Test
  void whatOthersHaveCuredMeanwhileIsNotCuredAgain() throws IOException {
    String job = caller.bring(musicLibrary());
    String press = press(job, SHALLOWER) + "-nonetheless";
    String seen = caller.seen(job);
    assertThat(cure(job, press(job, "state rows-back")).statusCode()).isEqualTo(200);
    String kept = caller.file(job);
    HttpResponse<String> late =
        caller.post(job + "/cure", "seen", seen, "case", "cabinet", "cure", press);
    assertThat(late.statusCode()).isEqualTo(409);
    assertThat(late.body()).contains("others have changed since you looked has cured that");
    assertThat(caller.file(job)).isEqualTo(kept);
  }

  /** Without scripts the whole page asks. */
  @Test
  void withoutScriptsItAsksTheSame() throws IOException {
    String job = caller.bring(musicLibrary());
    HttpResponse<String> asks =
        caller.submit(
            job + "/cure",
            "seen",
            caller.seen(job),
            "case",
            "cabinet",
            "cure",
            press(job, SHALLOWER));
    assertThat(asks.statusCode()).isEqualTo(409);
    assertThat(asks.body()).startsWith("<!DOCTYPE html>").contains("Do it nonetheless");
  }

  private static String press(String job, String words) {
    return Caller.first(
        caller.get(job).body(),
        "name=\"cure\" value=\"([^\"]*)\">\\s*<button class=\"press\" aria-label=\"Do this: "
            + words);
  }

  /** How doors hang is stated for each bay there: those of the halves are a pair. */
  @Test
  void aPartitionBringsDoorsAndHolesWithIt() throws IOException {
    String job = caller.bring(musicLibrary());
    HttpResponse<String> done = cure(job, press(job, "put a partition in the middle"));
    assertThat(done.statusCode()).isEqualTo(200);
    assertThat(caller.file(job))
        .contains("hangs: [left, left, right]")
        .containsPattern("levels-up: 16 mm");
  }

  @Test
  void aStripAsLowAsTheShelfFollowsItsThickness() throws IOException {
    String job = caller.bring(musicLibrary());
    HttpResponse<String> done = cure(job, press(job, "glue two layers"));
    assertThat(done.statusCode()).isEqualTo(200);
    assertThat(caller.file(job)).contains("material: birch-doubled").doesNotContain("height: 25");
  }

  /** A shelf glued up from boards is nothing that a job file states. */
  @Test
  void boardsTooNarrowAreNamedWithoutAPress() throws IOException {
    String page = caller.get(caller.bring(musicLibrary())).body();
    assertThat(page).contains("glued up from narrower boards by hand");
    assertThat(page).doesNotContain("Do this: make it of &#39;lipping");
    assertThat(page).doesNotContain("Do this: make it of 'lipping");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "-",
        "",
        "0",
        "0-",
        "-0",
        "--",
        "0-0-0",
        "99-0",
        "0-99",
        "0-0-",
        "0--nonetheless",
        "-nonetheless",
        "00000-0",
        "99999999999-0",
        "0x-0",
        "٠-٠",
        "0-0 ",
        "-1-0",
        "0-0-NONETHELESS"
      })
  void whatIsNoPressIsNotFound(String press) throws IOException {
    String job = caller.bring(musicLibrary());
    assertThat(cure(job, press).statusCode()).isEqualTo(404);
    assertThat(caller.file(job)).isEqualTo(musicLibrary());
  }

  /** What was done reads as done, and what was taken back as that, wherever it is told. */
  @Test
  void aCureTakenBackIsNotReadAsIfItHeld() throws IOException {
    String job = caller.bring(musicLibrary());
    cure(job, press(job, "glue two layers"));
    caller.post(job + "/undo", "seen", caller.seen(job), "case", "");
    assertThat(Caller.element(caller.get(job).body(), "section", "head"))
        .contains("change 3: taken back: glue two layers");
    assertThat(caller.get(job + "/history").body()).contains("taken back: glue two layers");
  }
}
