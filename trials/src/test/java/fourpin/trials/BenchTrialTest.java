package fourpin.trials;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class BenchTrialTest {

  /** Job after job gives what all give together, in whatever order they are run. */
  @Test
  void addsUpJobs() {
    BenchTrial.Tally all = BenchTrial.run(1, 12);
    BenchTrial.Tally sum = BenchTrial.Tally.NONE;
    for (long seed = 1; seed <= 12; seed++) {
      sum = sum.plus(BenchTrial.run(seed, 1));
    }
    assertThat(all).isEqualTo(sum);
    assertThat(all.jobs()).isEqualTo(12);
    assertThat(all.faults()).isEmpty();
    assertThat(all.programs()).isGreaterThan(all.jobs());
    assertThat(all.holes()).isGreaterThan(all.programs());
  }
}
