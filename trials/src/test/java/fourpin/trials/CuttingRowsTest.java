package fourpin.trials;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.cutting.BoardProblem;
import fourpin.measure.Length;
import fourpin.trials.CuttingRows.Cut;
import fourpin.trials.CuttingRows.Sawn;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the cutting trial notes, and what it says of it. */
class CuttingRowsTest {

  @TempDir private Path folder;

  @Test
  void onlyWhatIsProvenInFewerSecondsStandsForMore() throws IOException {
    CuttingRows rows = CuttingRows.read(folder.resolve("rows.csv"));
    rows.put(run("proven"), Sawn.PLAIN, cut(1, 7, 7));
    rows.put(run("open"), Sawn.PLAIN, cut(1, 7, 6));
    CuttingRows read = CuttingRows.read(folder.resolve("rows.csv"));
    assertThat(read.of(run("proven"), Sawn.PLAIN, 10)).contains(cut(1, 7, 7));
    assertThat(read.of(run("open"), Sawn.PLAIN, 10)).isEmpty();
    assertThat(read.of(run("open"), Sawn.PLAIN, 1)).contains(cut(1, 7, 6));
    assertThat(read.of(run("proven"), Sawn.WITH_KERF, 10)).isEmpty();
  }

  @Test
  void aSumAboveItsGoalIsSaidToBeShort() throws IOException {
    CuttingRows rows = CuttingRows.read(folder.resolve("rows.csv"));
    for (Sawn sawn : Sawn.values()) {
      rows.put(run("a"), sawn, cut(10, 100, 99));
      rows.put(run("b"), sawn, cut(10, 101, 99));
    }
    assertThat(new CuttingReport(List.of(run("a")), rows).document())
        .contains("| boards; min boards | 1 | 100 | 100 | +0.00 | 0.0 |")
        .doesNotContain("SHORT |");
    assertThat(new CuttingReport(List.of(run("b")), rows).document())
        .contains("| boards; min boards | 1 | 101 | 100 | +1.00 | 0.0 SHORT |");
  }

  private static Cut cut(int limit, long found, long lower) {
    return new Cut(limit, found, lower, 0.5, 1, 0);
  }

  private static PublishedRun run(String name) {
    return new PublishedRun(
        "boards",
        name,
        "min boards",
        PublishedRun.Counts.SHEETS,
        OptionalLong.of(100),
        OptionalLong.empty(),
        new PublishedRun.Task.Boards(
            new BoardProblem(List.of(), List.of(), Length.inches(1), Length.ZERO, Length.ZERO)));
  }
}
