package fourpin.plan;

import static fourpin.job.SampleJobs.bay;
import static fourpin.job.SampleJobs.job;
import static org.assertj.core.api.Assertions.assertThat;

import fourpin.boring.Borer;
import fourpin.boring.Boring;
import fourpin.boring.way.CaseBoring;
import fourpin.boring.way.Ways;
import fourpin.casework.CaseworkBuilder;
import fourpin.job.Bay;
import fourpin.job.CaseDraft;
import fourpin.job.Job;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Shop;
import fourpin.plan.MistakeReport.Outcome;
import fourpin.plan.MistakeReport.Rescue;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Lines squared across both uprights of a bay of the bookcase of {@link MistakesTest}: sides from 0
 * to 84 in, holes from 10 7/32 to 77 7/32 in; a partition from 3 25/32 to 83 1/2 in.
 */
class TogetherTest {

  private static List<MistakeReport> reports(String gang, Bay... bays) {
    CaseDraft draft = new CaseDraft();
    draft.bays = List.of(bays);
    draft.settings = draft.settings.with(Setting.GANG, new SettingValue.OfChoice(gang));
    Job job = job(draft.order()).with(new Shop("bare", List.of()));
    Boring boring = Borer.bore(job, CaseworkBuilder.build(job));
    List<CaseBoring> borings = Ways.of(job, boring).borings();
    return Mistakes.of(job, boring, BenchProgram.of(job, boring, borings), borings);
  }

  private static MistakeReport of(List<MistakeReport> reports, Mistake mistake) {
    return reports.stream().filter(r -> r.mistake() == mistake).findFirst().orElseThrow();
  }

  private static List<String> alike(MistakeReport report) {
    return ((Outcome.Spoilt) report.outcome()).alike();
  }

  /**
   * From 84 in down the highest line is that of 10 7/32, at 73 25/32 in. Lines have their heights
   * in both uprights, so that the rows of bay 1 meet, and those of bay 2 are as planned.
   */
  @ParameterizedTest
  @CsvSource({"1, R", "2, P1"})
  void should_turn_the_stick_beside_both(int bays, String other) {
    MistakeReport report =
        of(
            bays == 1 ? reports("pairs", bay(2)) : reports("pairs", bay(2), bay(2)),
            Mistake.END_FOR_END);
    assertThat(report.what())
        .isEqualTo(
            "The stick lies along the joint of L and " + other + " with its zero at the far end.");
    assertThat(alike(report)).containsExactly(other);
    assertThat(report.shows())
        .contains("136 of 136 holes are wrong, in " + other + " alike.")
        .endsWith("its holes on both hands are 3 7/16 in too low; it lies level, only lower.");
    assertThat(report.test()).contains("77 7/32 in, not 73 25/32 in (3 7/16 in less).");
    assertThat(report.rescue()).isEqualTo(Rescue.USE);
    assertThat(report.how()).contains("at least 1 3/8 in clear");
  }

  /** Both rows of both uprights lack the hole of the lowest shelf. */
  @Test
  void should_leave_a_line_out_of_both() {
    MistakeReport report = of(reports("pairs", bay(2)), Mistake.HOLE_SKIPPED);
    assertThat(report.what()).startsWith("The line of hole 21 across L and R is left out;");
    assertThat(alike(report)).containsExactly("R");
    assertThat(report.shows())
        .startsWith("2 of 136 holes are missing, in R alike.")
        .endsWith("its holes on both hands are 1 in too high; it lies level, only higher.");
    assertThat(report.how()).isEqualTo("Nothing is spoilt: bore what is missing. In R likewise.");
  }

  /** One panel of the pair the wrong way round is marked so alone, and panels marked singly are. */
  @Test
  void should_spoil_no_other_by_what_is_done_to_one() {
    assertThat(alike(of(reports("pairs", bay(2)), Mistake.PANEL_TURNED))).isEmpty();
    assertThat(alike(of(reports("pairs", bay(2)), Mistake.SECOND_LEFT))).isEmpty();
    assertThat(alike(of(reports("pairs", bay(2)), Mistake.WRONG_EDGE))).isEmpty();
    assertThat(alike(of(reports("single", bay(2)), Mistake.END_FOR_END))).isEmpty();
    assertThat(of(reports("single", bay(2)), Mistake.END_FOR_END).shows()).endsWith("it slopes.");
  }
}
