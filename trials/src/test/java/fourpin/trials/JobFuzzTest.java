package fourpin.trials;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class JobFuzzTest {

  private static final int INPUTS = 20_000;

  /** Some are still good, most are not, and none breaks the reader. */
  @Test
  void spoiltFilesAreReadOrRefusedWithPlaceRuleAndRemedy() throws IOException {
    JobFuzz fuzz = FuzzTrial.fuzz(Path.of("../examples"));

    JobFuzz.Tally tally = fuzz.run(7, INPUTS);

    assertThat(tally.good()).isGreaterThan(INPUTS / 100);
    assertThat(tally.refused()).isGreaterThan(INPUTS / 2);
  }
}
