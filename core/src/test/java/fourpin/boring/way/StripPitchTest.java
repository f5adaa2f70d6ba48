package fourpin.boring.way;

import static fourpin.boring.way.ToolKit.bit;
import static fourpin.boring.way.ToolKit.draft;
import static fourpin.boring.way.ToolKit.drill;
import static fourpin.boring.way.ToolKit.measured;
import static fourpin.boring.way.ToolKit.strap;
import static fourpin.boring.way.ToolKit.strip;
import static fourpin.job.SampleJobs.in;
import static fourpin.job.SampleJobs.job;
import static org.assertj.core.api.Assertions.assertThat;

import fourpin.casework.Finding;
import fourpin.casework.Finding.Severity;
import fourpin.job.CaseDraft;
import fourpin.job.Job;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Shop;
import fourpin.job.Tool;
import fourpin.job.Tool.PerforatedStrip;
import fourpin.job.Way;
import fourpin.measure.Length;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A pitch of 1 in is wished, and strips give what they have holes for. */
class StripPitchTest {

  @ParameterizedTest
  @CsvSource({
    "3/4, 1, 3/4",
    "3/4, 1 1/4, 1 1/2",
    "1/2, 1, 1",
    "1, 3/4, 1",
    "1, 1 7/16, 1",
    // Half way between 3/4 and 1 1/2: the wider.
    "3/4, 1 1/8, 1 1/2",
    // 8 mm, the least pitch, is more than two spaces of 1/8 in.
    "1/8, 3/8, 3/8",
    "1/8, 5/16, 3/8",
    // 200 mm, the most, is less than 16 spaces of 1/2 in.
    "1/2, 8, 7 1/2"
  })
  void should_come_as_near_as_whole_spaces_of_the_strip_come(
      String spacing, String wished, String given) {
    PerforatedStrip strip = (PerforatedStrip) strip("1/4", spacing);
    assertThat(StripPitch.nearest(strip, in(wished))).isEqualTo(in(given));
  }

  private static Job asking(String way, Tool... tools) {
    CaseDraft draft = draft();
    draft.settings = draft.settings.with(Setting.WAY, new SettingValue.OfChoice(way));
    return job(draft.order()).with(new Shop("shop", List.of(tools)));
  }

  private static Length pitch(Job job) {
    return StripPitch.taken(job).cases().getFirst().settings().length(Setting.PITCH);
  }

  @Test
  void should_take_the_pitch_of_a_strip_that_the_job_asks_for() {
    Job job = asking("hardboard-strip", drill(), bit(), strip("1/4", "3/4"));
    assertThat(pitch(job)).isEqualTo(in("3/4"));
    Finding note = StripPitch.notes(job).getFirst();
    assertThat(note.severity()).isEqualTo(Severity.NOTE);
    assertThat(note.kind()).isEqualTo("pitch-of-strip");
    // 67 in of levels 1 in apart; 66 3/4 in of levels 3/4 in apart.
    assertThat(note.what()).isEqualTo("The strip gives 3/4 in, not 1 in: 90 levels instead of 68.");
    assertThat(note.remedies())
        .containsExactly(new Finding.Remedy("set pitch to 3/4 in", "nothing more than now"));
    Ways ways = WaysTest.ways(StripPitch.taken(job));
    assertThat(ways.findings()).isEmpty();
    assertThat(ways.borings().getFirst().chosen()).isEqualTo(Way.HARDBOARD_STRIP);
  }

  @ParameterizedTest
  @CsvSource({"best", "drill-press", "story-stick", "steel-strap"})
  void should_leave_the_pitch_where_no_such_strip_is_asked_for(String way) {
    Job job = asking(way, drill(), bit(), strip("1/4", "3/4"));
    assertThat(StripPitch.taken(job)).isEqualTo(job);
    assertThat(StripPitch.notes(job)).isEmpty();
  }

  @Test
  void should_leave_a_pitch_that_is_a_whole_number_of_spaces() {
    Job job = asking("hardboard-strip", drill(), bit(), strip("1/4", "1/2"));
    assertThat(StripPitch.taken(job)).isEqualTo(job);
    assertThat(StripPitch.notes(job)).isEmpty();
  }

  /** The bit does not go through the strip, so the strip's pitch would be lost for nothing. */
  @Test
  void should_leave_the_pitch_where_the_strip_can_not_be_bored_through_anyway() {
    Job job = asking("hardboard-strip", drill(), bit(), strip("3/16", "3/4"));
    assertThat(StripPitch.taken(job)).isEqualTo(job);
    assertThat(StripPitch.notes(job)).isEmpty();
    assertThat(WaysTest.ways(job).findings())
        .extracting(Finding::what)
        .containsExactly(
            "The job asks for hardboard-strip, which can't be done: bit 1/4 in does not go through"
                + " the strip's holes of 3/16 in. The plan takes story-stick.");
  }

  /** 3/4 in is nearer to 1 in than 5/8 in, but its holes are too narrow for the bit. */
  @Test
  void should_take_the_nearest_pitch_of_the_strips_that_serve() {
    Job job = asking("hardboard-strip", drill(), bit(), strip("3/16", "3/4"), strip("1/4", "5/8"));
    assertThat(pitch(job)).isEqualTo(in("1 1/4"));
    Job both = asking("hardboard-strip", drill(), bit(), strip("1/4", "3/4"), strap("1"));
    assertThat(pitch(both)).isEqualTo(in("3/4"));
  }

  /** What a strip is off by in 24 spaces is told, though 64ths don't show it. */
  @ParameterizedTest
  @CsvSource({
    // 1/384 in, of which 66 are 0.172 in; the 68th level finds no room any more.
    "24 1/16, '≈ 1.003 in', '67 levels instead of 68, the highest of a row of 67 lies ≈ 0.172 in'",
    // 1/1536 in is 0.00065 in.
    "24 1/64, '≈ 1.001 in', 'as many levels, 68, the highest of a row of 68 lies ≈ 0.044 in'",
    // 1/6144 in is 0.00016 in.
    "24 1/256, '≈ 1.0002 in', 'as many levels, 68, the highest of a row of 68 lies ≈ 0.011 in'"
  })
  void should_tell_a_pitch_from_one_that_is_nearly_the_same(
      String over, String given, String rise) {
    Tool strip = measured("1/4", over);
    Finding note = StripPitch.notes(asking("hardboard-strip", drill(), bit(), strip)).getFirst();
    assertThat(note.what())
        .isEqualTo(
            "The strip gives " + given + ", not 1 in: " + rise + " further from the lowest.");
  }

  /** 383/384 in can't be written in 64ths: the plan takes it from the strip. */
  @Test
  void should_not_ask_for_a_pitch_that_can_not_be_written() {
    Tool odd = measured("1/4", "23 15/16");
    Finding note = StripPitch.notes(asking("hardboard-strip", drill(), bit(), odd)).getFirst();
    // 67 spaces of 1/384 in.
    assertThat(note.what())
        .isEqualTo(
            "The strip gives ≈ 0.997 in, not 1 in: as many levels, 68, the highest of a row of 68 lies ≈"
                + " 0.174 in nearer to the lowest.");
    assertThat(note.remedies())
        .extracting(Finding.Remedy::what)
        .containsExactly("leave way: hardboard-strip stated: the plan follows the strip's pitch");
    Job best = asking("best", drill(), bit(), odd);
    assertThat(WaysTest.ways(best).borings().getFirst().answers())
        .flatExtracting(WayAnswer::reasons)
        .extracting(WayAnswer.Reason::remedy)
        .contains("state way: hardboard-strip, and the plan follows the strip's pitch");
  }
}
