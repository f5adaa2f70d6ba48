package fourpin.plan;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.boring.Borer;
import fourpin.boring.Boring;
import fourpin.boring.way.CaseBoring;
import fourpin.boring.way.Ways;
import fourpin.casework.CaseworkBuilder;
import fourpin.job.Job;
import fourpin.job.RandomJobs;
import fourpin.job.Way;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever way is taken, the steps make the case on the virtual bench. */
class EveryWayTest {

  static LongStream seeds() {
    return LongStream.range(0, 60);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void should_make_the_same_case_by_every_way_that_is_possible(long seed) {
    Job job = RandomJobs.of(seed);
    Boring boring = Borer.bore(job, CaseworkBuilder.build(job));
    List<CaseBoring> borings = Ways.of(job, boring).borings();
    for (Way way : Way.values()) {
      List<CaseBoring> taken = borings.stream().map(b -> by(way, b)).toList();
      BenchProgram program = BenchProgram.of(job, boring, taken);
      assertThat(ProgramCheck.of(boring.cases(), program)).as(way.key()).isEmpty();
    }
  }

  private static CaseBoring by(Way way, CaseBoring boring) {
    return boring.answer(way).method().isEmpty() ? boring : boring.by(way, "this test asks for it");
  }
}
