package fourpin.plan;

import static fourpin.job.SampleJobs.in;
import static fourpin.job.SampleJobs.job;
import static org.assertj.core.api.Assertions.assertThat;

import fourpin.cutting.Direction;
import fourpin.cutting.Edge;
import fourpin.cutting.Piece;
import fourpin.cutting.SawStep;
import fourpin.cutting.SetUp;
import fourpin.job.CaseDraft;
import fourpin.job.Job;
import fourpin.job.JobDraft;
import fourpin.job.Setting;
import fourpin.job.SettingReader;
import fourpin.measure.Length;
import fourpin.measure.Unit;
import fourpin.plan.SawCare.Held;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Common practice: narrow strips fall off outside the blade, whichever way the grain runs; what is
 * shorter along the cut than across it does not go to the rip fence.
 */
class SawCareTest {

  private final SawCare care = new SawCare(job(new CaseDraft().order()));

  private static Piece piece(Length length, Length width) {
    return new Piece("S1", new Piece.Content.ToCut(), length, width);
  }

  private static SawStep strip(Length strip, Length rest) {
    Length length = in("96");
    Length from = strip.plus(Length.inches(1, 8)).plus(rest);
    return new SawStep(piece(length, from), piece(length, strip), Optional.of(piece(length, rest)));
  }

  private static SetUp rip(Length fence, SawStep... steps) {
    return new SetUp.CutTo(Direction.RIP, fence, List.of(steps));
  }

  private static SetUp crosscut(Length width) {
    SawStep step = new SawStep(piece(in("96"), width), piece(in("78"), width), Optional.empty());
    return new SetUp.CutTo(Direction.CROSSCUT, in("78"), List.of(step));
  }

  private static SetUp cut(Direction way, Length fence, Length length, Length width) {
    SawStep step = new SawStep(piece(length, width), piece(length, width), Optional.empty());
    return new SetUp.CutTo(way, fence, List.of(step));
  }

  private Held held(SetUp setUp) {
    return care.held(setUp, setUp.steps().getFirst());
  }

  @Test
  void the_fence_of_a_narrow_strip_stands_at_what_remains() {
    Length narrow = Length.inches(5, 16);
    SawStep wide = strip(narrow, Length.inches(7, 4));
    SawStep last = strip(narrow, Length.inches(21, 16));
    SetUp setUp = rip(narrow, wide, last);
    assertThat(care.held(setUp, wide)).isEqualTo(new Held.FenceAtRest(Length.inches(7, 4)));
    assertThat(care.held(setUp, last)).isEqualTo(new Held.BandSaw());
    assertThat(care.cautions(List.of(setUp))).containsExactly(Cautions.NARROW_RIP);
  }

  @Test
  void what_is_as_wide_as_guard_and_push_block_lies_at_the_fence() {
    Length least = Length.inches(3, 2);
    SawStep step = strip(least, in("1"));
    SetUp setUp = rip(least, step);
    assertThat(care.held(setUp, step)).isEqualTo(new Held.Fence());
    assertThat(care.cautions(List.of(setUp))).isEmpty();
  }

  /** Strips of 1 in across the grain, off a piece 36 in wide: at the fence as if ripped. */
  @Test
  void narrow_strips_across_the_grain_fall_off_outside_too() {
    SawStep step =
        new SawStep(
            piece(in("6"), in("36")),
            piece(in("1"), in("36")),
            Optional.of(piece(Length.inches(39, 8), in("36"))));
    SawStep last =
        new SawStep(
            piece(Length.inches(17, 8), in("36")),
            piece(in("1"), in("36")),
            Optional.of(piece(in("1"), in("36"))));
    SetUp setUp = new SetUp.CutTo(Direction.CROSSCUT, in("1"), List.of(step, last));
    assertThat(care.held(setUp, step)).isEqualTo(new Held.FenceAtRest(Length.inches(39, 8)));
    assertThat(care.held(setUp, last)).isEqualTo(new Held.BandSaw());
    assertThat(care.cautions(List.of(setUp))).containsExactly(Cautions.NARROW_RIP);
  }

  /** Along the cut it is shorter than across: 1 by 48 in, ripped at 36, is cut to length. */
  @Test
  void what_would_turn_at_the_fence_is_held_by_a_mitre_gauge() {
    SetUp slip = cut(Direction.RIP, in("36"), in("1"), in("48"));
    assertThat(held(slip)).isEqualTo(new Held.Gauge());
    assertThat(care.cautions(List.of(slip))).containsExactly(Cautions.TURNING);
    SetUp square = cut(Direction.RIP, in("12"), in("36"), in("36"));
    assertThat(held(square)).isEqualTo(new Held.Fence());
    assertThat(care.cautions(List.of(square))).isEmpty();
    SetUp board = cut(Direction.CROSSCUT, in("36"), in("96"), in("6"));
    assertThat(held(board)).isEqualTo(new Held.Gauge());
    assertThat(care.cautions(List.of(board))).isEmpty();
  }

  @Test
  void what_neither_fence_nor_mitre_gauge_leads_is_cut_along_a_straightedge() {
    SetUp rip = cut(Direction.RIP, in("12"), in("30"), in("48"));
    assertThat(held(rip)).isEqualTo(new Held.Straightedge());
    assertThat(held(cut(Direction.RIP, in("12"), in("24"), in("48")))).isEqualTo(new Held.Gauge());
    assertThat(care.cautions(List.of(rip)))
        .singleElement()
        .satisfies(c -> assertThat(c.text()).contains("24 in", "common practice", "helper"));
  }

  @Test
  void a_whole_sheet_is_not_crosscut_or_trimmed_at_its_ends_on_a_table_saw() {
    SawStep trimmed =
        new SawStep(piece(in("96"), in("48")), piece(in("1"), in("48")), Optional.empty());
    SetUp end = new SetUp.TrimEdge(Edge.NEAR_END, in("1"), List.of(trimmed));
    assertThat(held(end)).isEqualTo(new Held.Straightedge());
    SetUp edge = new SetUp.TrimEdge(Edge.NEAR_EDGE, in("1"), List.of(trimmed));
    assertThat(held(edge)).isEqualTo(new Held.Fence());
    assertThat(held(crosscut(in("24")))).isEqualTo(new Held.Gauge());
    assertThat(held(crosscut(in("25")))).isEqualTo(new Held.Straightedge());
  }

  /** A sheet longer than the saw can rip is trimmed all the same. */
  @Test
  void what_is_longer_than_the_saw_rips_is_trimmed_along_a_straightedge() {
    Job job = job(new CaseDraft().order());
    Job limited =
        JobDraft.changed(
            job,
            draft ->
                draft.settings =
                    job.settings()
                        .with(
                            Setting.LONGEST_RIP,
                            SettingReader.read(Setting.LONGEST_RIP, "80", Unit.INCH).orThrow()));
    SawCare reaching = new SawCare(limited);
    SawStep trimmed =
        new SawStep(piece(in("96"), in("48")), piece(in("96"), in("1")), Optional.empty());
    SetUp edge = new SetUp.TrimEdge(Edge.NEAR_EDGE, in("1"), List.of(trimmed));
    assertThat(reaching.held(edge, trimmed)).isEqualTo(new Held.Straightedge());
    assertThat(reaching.cautions(List.of(edge)))
        .singleElement()
        .satisfies(c -> assertThat(c.text()).contains("80 in (longest-rip)"));
  }
}
