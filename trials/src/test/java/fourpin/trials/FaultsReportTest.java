package fourpin.trials;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page on which two trials write. */
class FaultsReportTest {

  @TempDir private Path root;

  @Test
  void eachTrialWritesItsOwnPartAnew() throws IOException {
    Path page = Files.createDirectory(root.resolve("docs")).resolve("faults.md");
    FaultsReport.write(root, FaultsReport.Part.EDITORS, "a bench", List.of("first run"));
    FaultsReport.write(root, FaultsReport.Part.KILLS, "a bench", List.of("kills"));
    String once = Files.readString(page);
    assertThat(once).startsWith("# Faults\n\n").contains("* first run\n");
    assertThat(once.indexOf("* kills")).isLessThan(once.indexOf("* first run"));
    FaultsReport.write(root, FaultsReport.Part.EDITORS, "a bench", List.of("second run"));
    assertThat(Files.readString(page)).isEqualTo(once.replace("first run", "second run"));
  }
}
