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
import fourpin.measure.Length;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Common practice: narrow strips fall off outside the blade, wide pieces are not crosscut on it.
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

  @Test
  void the_fence_of_a_narrow_strip_stands_at_what_remains() {
    Length narrow = Length.inches(5, 16);
    SawStep wide = strip(narrow, Length.inches(7, 4));
    SawStep last = strip(narrow, Length.inches(21, 16));
    SetUp setUp = rip(narrow, wide, last);
    assertThat(care.fence(setUp, wide)).isEqualTo(new SawCare.Fence.AtRest(Length.inches(7, 4)));
    assertThat(care.fence(setUp, last)).isEqualTo(new SawCare.Fence.Nowhere());
    assertThat(care.isTooNarrow(setUp)).isTrue();
    assertThat(care.isTooNarrow(rip(narrow, wide))).isFalse();
    assertThat(care.cautions(List.of(setUp))).containsExactly(Cautions.NARROW_RIP);
  }

  @Test
  void what_is_as_wide_as_guard_and_push_block_lies_at_the_fence() {
    Length least = Length.inches(3, 2);
    SawStep step = strip(least, in("1"));
    SetUp setUp = rip(least, step);
    assertThat(care.fence(setUp, step)).isEqualTo(new SawCare.Fence.AtSetting());
    assertThat(care.cautions(List.of(setUp))).isEmpty();
  }

  @Test
  void a_whole_sheet_is_not_crosscut_or_trimmed_at_its_ends_without_a_caution() {
    SawStep trimmed =
        new SawStep(piece(in("96"), in("48")), piece(in("1"), in("48")), Optional.empty());
    SetUp end = new SetUp.TrimEdge(Edge.NEAR_END, in("1"), List.of(trimmed));
    assertThat(care.isLarge(end)).isTrue();
    SetUp edge = new SetUp.TrimEdge(Edge.NEAR_EDGE, in("1"), List.of(trimmed));
    assertThat(care.isLarge(edge)).isFalse();
    assertThat(care.isLarge(crosscut(in("24")))).isFalse();
    assertThat(care.isLarge(crosscut(in("25")))).isTrue();
    assertThat(care.cautions(List.of(crosscut(in("25")))))
        .singleElement()
        .satisfies(c -> assertThat(c.text()).contains("24 in", "common practice", "helper"));
  }
}
