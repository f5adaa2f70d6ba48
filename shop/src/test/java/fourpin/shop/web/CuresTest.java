package fourpin.shop.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

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
                    + "  oak:\n    kind: board");
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
}
