package fourpin.plan;

import static fourpin.job.SampleJobs.bay;
import static fourpin.job.SampleJobs.in;
import static fourpin.job.SampleJobs.job;
import static org.assertj.core.api.Assertions.assertThat;

import fourpin.boring.Borer;
import fourpin.boring.Boring;
import fourpin.boring.way.CaseBoring;
import fourpin.casework.CaseworkBuilder;
import fourpin.job.CaseDraft;
import fourpin.job.Job;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.plan.MistakeReport.Rescue;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Tape and spacers forgotten on the bookcase of {@link MistakesTest}; worked out by hand. */
class GuideMistakesTest {

  private static CaseDraft bookcase() {
    CaseDraft draft = new CaseDraft();
    draft.bays = List.of(bay(2));
    return draft;
  }

  private static MistakeReport of(CaseDraft draft, Mistake mistake) {
    Job job = job(draft.order());
    Boring boring = Borer.bore(job, CaseworkBuilder.build(job));
    List<CaseBoring> borings = List.of(GuidedBookcase.boring(boring));
    return Mistakes.of(job, boring, BenchProgram.of(job, boring, borings), borings).stream()
        .filter(r -> r.mistake() == mistake)
        .findFirst()
        .orElseThrow();
  }

  /** Hole 1 of the guide, 9 7/32 in from zero, is masked: 1 in below the first level. */
  @Test
  void should_bore_through_a_hole_that_is_taped_over() {
    MistakeReport report = of(bookcase(), Mistake.MASKED_HOLE);
    assertThat(report.what())
        .isEqualTo("Hole 1 of the guide is not taped over, and bored through into L.");
    assertThat(report.shows())
        .startsWith("137 holes are bored for 136. At every shelf alike, lowest shelf")
        .endsWith("counted from below, its front left hole is 1 in too low; it rocks.");
    assertThat(report.test())
        .isEqualTo(
            "Count the front row, bay 1: 68 holes, the back row as many."
                + " From the index end (bottom) to the lowest hole of the"
                + " front row, bay 1: 10 7/32 in, not 9 7/32 in (1 in less).");
    assertThat(report.rescue()).isEqualTo(Rescue.PLUG);
    assertThat(report.how())
        .isEqualTo(
            "Glue a dowel into the hole that is too many and trim it flush, before pins are counted by"
                + " it. 3/4 in of wood lies to the next.");
  }

  /**
   * A strip of 5/32 in keeps the guide off the back edge: without it the back row lies as much
   * nearer to that edge, 10 in from the front edge instead of 9 27/32, and still under shelves that
   * reach 1 1/2 in behind the right row.
   */
  @Test
  void should_forget_a_spacer() {
    MistakeReport report = of(bookcase(), Mistake.SPACER_FORGOTTEN);
    assertThat(report.what())
        .isEqualTo(
            "For the back row, bay 1 of L the guide is laid on without its spacer G S1 (5/32 in).");
    assertThat(report.shows())
        .startsWith("68 of 136 holes are wrong.")
        .endsWith("its back left hole is 5/32 in further from the index edge.");
    assertThat(report.test())
        .isEqualTo(
            "From the index edge (front) to the back row, bay 1: 9 27/32 in, not 10 in (5/32 in more).");
    assertThat(report.rescue()).isEqualTo(Rescue.USE);
    assertThat(report.how()).contains("only 5/32 in nearer to one edge");
  }

  /**
   * The shelf reaches to 9 27/32 + 1 1/2 = 11 11/32 in: with 1 1/4 in of wood behind its rim, the
   * hole at 10 in would have to be covered to 11 3/8.
   */
  @Test
  void should_not_use_a_row_that_shelves_hardly_cover() {
    CaseDraft draft = bookcase();
    draft.settings =
        draft.settings.with(Setting.LEAST_EDGE, new SettingValue.OfLength(in("1 1/4")));
    MistakeReport report = of(draft, Mistake.SPACER_FORGOTTEN);
    assertThat(report.rescue()).isEqualTo(Rescue.PLUG);
    assertThat(report.how()).contains("meet by 3/32 in. Glue");
  }
}
