package fourpin.sheets.packet;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.boring.way.CaseBoring;
import fourpin.job.RandomJobs;
import fourpin.job.Way;
import fourpin.plan.Plan;
import fourpin.plan.Planner;
import fourpin.sheets.SampleBorings;
import fourpin.sheets.drawings.Drafter;
import java.util.List;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever the job and the way of boring, there is a packet, and its drawings fit their pages. */
class RandomPacketsTest {

  static LongStream seeds() {
    return LongStream.range(0, 40);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void everyWayThatIsPossibleHasItsSheets(long seed) {
    Plan plan = Planner.plan(RandomJobs.of(seed));
    Drafter page = new Words(plan.job()).fullPage();
    List<Way> ways =
        Stream.of(Way.values())
            .filter(way -> plan.borings().stream().anyMatch(b -> isPossible(way, b)))
            .toList();
    for (Way way : ways) {
      Plan bored = by(way, plan);
      Packet packet = Packet.compose(bored);
      assertThat(packet.drawings())
          .as(way.key())
          .isNotEmpty()
          .allMatch(drawing -> drawing.fits(page.width(), page.height()));
      assertThat(StepNumbers.in(packet.booklet()))
          .as("each step is printed once, " + way.key())
          .containsExactlyInAnyOrderElementsOf(StepNumbers.of(bored));
    }
    assertThat(PdfPacket.write(Packet.compose(plan))).isNotEmpty();
  }

  private static boolean isPossible(Way way, CaseBoring boring) {
    return boring.answer(way).method().isPresent();
  }

  private static Plan by(Way way, Plan plan) {
    return SampleBorings.plan(plan, plan.borings().stream().map(b -> by(way, b)).toList());
  }

  private static CaseBoring by(Way way, CaseBoring boring) {
    return isPossible(way, boring) ? boring.by(way, "this test asks for it") : boring;
  }
}
