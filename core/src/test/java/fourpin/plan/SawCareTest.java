package fourpin.plan;

import static fourpin.job.SampleJobs.in;
import static fourpin.job.SampleJobs.job;
import static org.assertj.core.api.Assertions.assertThat;

import fourpin.casework.Saws;
import fourpin.cutting.Direction;
import fourpin.cutting.Edge;
import fourpin.cutting.Hold;
import fourpin.cutting.HoldLimits;
import fourpin.cutting.SetUp;
import fourpin.job.CaseDraft;
import fourpin.job.Job;
import fourpin.job.JobDraft;
import fourpin.job.Setting;
import fourpin.job.SettingReader;
import fourpin.measure.Length;
import fourpin.measure.Unit;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Common practice: each way of holding a piece has its caution, and only that. */
class SawCareTest {

  private static final Job JOB = job(new CaseDraft().order());

  private final SawCare care = new SawCare(JOB);

  private static SetUp rip(Hold hold) {
    return new SetUp.CutTo(Direction.RIP, in("12"), hold, List.of());
  }

  private static SetUp crosscut(Hold hold) {
    return new SetUp.CutTo(Direction.CROSSCUT, in("12"), hold, List.of());
  }

  private static Job with(Setting setting, String value) {
    return JobDraft.changed(
        JOB,
        draft ->
            draft.settings =
                JOB.settings()
                    .with(setting, SettingReader.read(setting, value, Unit.INCH).orThrow()));
  }

  @Test
  void strips_that_do_not_lie_between_fence_and_blade_have_a_caution() {
    assertThat(care.cautions(List.of(rip(Hold.FENCE_AT_REST))))
        .containsExactly(Cautions.NARROW_RIP);
    assertThat(care.cautions(List.of(crosscut(Hold.BAND_SAW))))
        .containsExactly(Cautions.NARROW_RIP);
    assertThat(care.cautions(List.of(rip(Hold.FENCE)))).isEmpty();
  }

  /** The opposite edge is an ordinary rip: what lies between fence and blade is wide. */
  @Test
  void the_first_edge_has_a_caution_and_the_opposite_one_none() {
    SetUp first = new SetUp.TrimEdge(Edge.NEAR_EDGE, in("1/4"), Hold.FIRST_EDGE, List.of());
    SetUp opposite = new SetUp.TrimEdge(Edge.FAR_EDGE, in("1/4"), Hold.FENCE_AT_REST, List.of());
    SetUp slim = new SetUp.TrimEdge(Edge.FAR_EDGE, in("1/4"), Hold.BAND_SAW, List.of());
    assertThat(care.cautions(List.of(first, opposite))).containsExactly(Cautions.FIRST_EDGE);
    assertThat(care.cautions(List.of(slim))).containsExactly(Cautions.NARROW_RIP);
    assertThat(Cautions.FIRST_EDGE.essence()).contains("Never", "rip fence", "not straight");
    assertThat(Cautions.FIRST_EDGE.text()).contains("width that stays", "outside the blade");
  }

  @Test
  void what_would_turn_at_the_fence_has_a_caution() {
    assertThat(care.cautions(List.of(rip(Hold.GAUGE))))
        .containsExactly(Cautions.TURNING, Cautions.STOP);
    assertThat(care.cautions(List.of(rip(Hold.CLAMPED_GAUGE))))
        .containsExactly(Cautions.TURNING, Cautions.STOP);
  }

  /** A trim is measured by no stop. */
  @Test
  void every_stop_has_a_caution() {
    SetUp end = new SetUp.TrimEdge(Edge.NEAR_END, in("1"), Hold.GAUGE, List.of());
    assertThat(care.cautions(List.of(crosscut(Hold.GAUGE)))).containsExactly(Cautions.STOP);
    assertThat(care.cautions(List.of(end, crosscut(Hold.FENCE)))).isEmpty();
    assertThat(Cautions.STOP.essence()).contains("has left before it meets the blade");
  }

  @Test
  void what_neither_fence_nor_gauge_leads_has_a_caution_with_its_limits() {
    SetUp end = new SetUp.TrimEdge(Edge.NEAR_END, in("1"), Hold.STRAIGHTEDGE, List.of());
    assertThat(care.cautions(List.of(end, rip(Hold.STRAIGHTEDGE))))
        .singleElement()
        .satisfies(
            c ->
                assertThat(c.text())
                    .contains("24 in", "common practice", "30 in (fence-reach)", "helper"));
    assertThat(new SawCare(with(Setting.LONGEST_RIP, "80")).cautions(List.of(end)))
        .singleElement()
        .satisfies(c -> assertThat(c.text()).contains("80 in (longest-rip)"));
  }

  @Test
  void what_is_too_long_for_a_gauge_has_a_caution_with_its_limit() {
    assertThat(care.cautions(List.of(crosscut(Hold.MITRE_SAW))))
        .singleElement()
        .satisfies(
            c ->
                assertThat(c.text())
                    .contains("72 in (held-length, common practice)", "Support both ends"));
    assertThat(
            new SawCare(with(Setting.HELD_LENGTH, "60"))
                .cautions(List.of(crosscut(Hold.MITRE_SAW))))
        .singleElement()
        .satisfies(c -> assertThat(c.text()).contains("60 in (held-length"));
  }

  @Test
  void the_settings_say_what_can_be_held() {
    assertThat(new Saws(JOB.settings()).holds())
        .isEqualTo(
            new HoldLimits(
                in("12"),
                Length.inches(3, 2),
                Optional.of(in("30")),
                Optional.empty(),
                Optional.empty(),
                Optional.of(in("24")),
                Optional.of(in("72"))));
    assertThat(new Saws(with(Setting.WIDEST_CROSSCUT, "30").settings()).holds())
        .isEqualTo(
            new HoldLimits(
                in("12"),
                Length.inches(3, 2),
                Optional.of(in("30")),
                Optional.empty(),
                Optional.of(in("30")),
                Optional.of(in("30")),
                Optional.of(in("72"))));
    assertThat(new Saws(with(Setting.LONGEST_RIP, "80").settings()).holds().longestRip())
        .contains(in("80"));
  }
}
