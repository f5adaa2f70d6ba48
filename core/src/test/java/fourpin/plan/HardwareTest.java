package fourpin.plan;

import static fourpin.job.SampleJobs.in;
import static fourpin.job.SampleJobs.job;
import static org.assertj.core.api.Assertions.assertThat;

import fourpin.job.Bay;
import fourpin.job.CaseDraft;
import fourpin.job.SampleJobs;
import fourpin.job.Support;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is bought by the piece, counted by hand. */
class HardwareTest {

  private static Support standards(String soldIn) {
    return new Support.Standards(
        Support.Mounting.LET_IN,
        in("5/8"),
        in("3/16"),
        in("1/2"),
        in("1/4"),
        in("1/16"),
        in("1/8"),
        in(soldIn));
  }

  private static Plan plan(Support support) {
    CaseDraft draft = new CaseDraft();
    draft.bays =
        List.of(
            new Bay(
                Optional.empty(),
                List.of(in("40")),
                Optional.of(SampleJobs.shelves(2)),
                Optional.of(support),
                Optional.empty()));
    return Planner.plan(job(draft.order()));
  }

  private static long needed(Plan plan, String name) {
    return plan.hardware().stream()
        .filter(h -> h.name().equals(name))
        .mapToLong(h -> ((HardwareItem.Amount.Pieces) h.amount()).needed())
        .sum();
  }

  /**
   * Openings of 35 1/16 in and 43 9/32 in, four standards in each, cut 1/16 in shorter: 35 in and
   * 43 7/32 in. With another after it a piece takes 35 1/2 in and 43 1/2 in of a standard, so that
   * both come out of 78 1/2 in and not of less.
   */
  @ParameterizedTest
  @CsvSource({"78 1/2, 4", "78 31/64, 6", "80, 4", "72, 6", "70 1/2, 6", "70 31/64, 8", "48, 8"})
  void should_buy_no_more_standards_than_the_pieces_take(String soldIn, long count) {
    assertThat(needed(plan(standards(soldIn)), "standard, let in as sold")).isEqualTo(count);
  }

  /** Six inches apart at most: 35 1/16 takes 7 screws, 43 9/32 takes 9; four of each. */
  @Test
  void should_count_the_screws_of_standards_and_strips() {
    assertThat(needed(plan(standards("72")), "screw for standards and strips"))
        .isEqualTo(4 * (7 + 9));
    Support cleats =
        new Support.Cleats("oak", in("1 1/2"), in("3/4"), in("3/4"), in("3/4"), in("3/4"));
    assertThat(needed(plan(cleats), "screw for standards and strips")).isEqualTo(4 * (7 + 9));
    assertThat(needed(plan(SampleJobs.pins()), "screw for standards and strips")).isZero();
  }
}
