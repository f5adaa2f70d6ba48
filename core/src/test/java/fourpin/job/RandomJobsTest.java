package fourpin.job;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.boring.BayGrid;
import fourpin.boring.Borer;
import fourpin.casework.CaseworkBuilder;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class RandomJobsTest {

  private static IntStream rows() {
    return IntStream.range(0, 100)
        .mapToObj(RandomJobs::of)
        .filter(job -> job.cases().getFirst().sizes().depth().mm() < 400)
        .flatMap(job -> Borer.bore(job, CaseworkBuilder.build(job)).grids().stream())
        .map(BayGrid::rows)
        .mapToInt(rows -> rows.size());
  }

  /** Third rows come with deep shelves, and now and then with shallow ones. */
  @Test
  void shallowShelvesRarelyHaveAThirdRow() {
    long third = rows().filter(count -> count == 3).count();
    assertThat(third).isPositive().isLessThan(rows().count() / 4);
  }
}
