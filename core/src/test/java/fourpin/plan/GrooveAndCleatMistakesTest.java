package fourpin.plan;

import static fourpin.job.SampleJobs.bookcase;
import static fourpin.job.SampleJobs.in;
import static fourpin.job.SampleJobs.job;
import static fourpin.job.SampleJobs.shelves;
import static org.assertj.core.api.Assertions.assertThat;

import fourpin.boring.Borer;
import fourpin.boring.Boring;
import fourpin.boring.way.CaseBoring;
import fourpin.boring.way.Ways;
import fourpin.casework.CaseworkBuilder;
import fourpin.job.Bay;
import fourpin.job.CaseOrder;
import fourpin.job.Job;
import fourpin.job.SampleJobs;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Support;
import fourpin.job.Support.Mounting;
import fourpin.measure.Length;
import fourpin.plan.MistakeReport.Rescue;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Standards of 5/8 x 3/16 in with slots 1/2 in apart, and cleat strips of 1 1/2 x 3/4 in. */
class GrooveAndCleatMistakesTest {

  private static Support standards(Mounting mounting, String thickness, String soldIn) {
    return new Support.Standards(
        mounting,
        in("5/8"),
        in(thickness),
        in("1/2"),
        in("3/8"),
        in("1/16"),
        in("1/8"),
        in(soldIn));
  }

  private static Support cleats() {
    return new Support.Cleats("oak", in("1 1/2"), in("3/4"), in("1 1/2"), in("1 1/4"), in("5/8"));
  }

  private static List<MistakeReport> reports(Support support) {
    CaseOrder order =
        bookcase(
            new Bay(
                Optional.empty(),
                List.of(),
                Optional.of(shelves(2)),
                Optional.of(support),
                Optional.empty()));
    Job job =
        job(
            order.with(
                order
                    .settings()
                    .with(Setting.GROOVE_PLAY, new SettingValue.OfLength(Length.ZERO))));
    Boring boring = Borer.bore(job, CaseworkBuilder.build(job));
    List<CaseBoring> ways = Ways.of(job, boring).borings();
    return Mistakes.of(job, boring, BenchProgram.of(job, boring, ways), ways);
  }

  private static MistakeReport report(List<MistakeReport> reports, BenchMistake mistake) {
    return reports.stream().filter(r -> r.mistake() == mistake).findFirst().orElseThrow();
  }

  @Test
  void should_try_every_mistake_that_a_support_allows() {
    assertThat(reports(standards(Mounting.LET_IN, "3/16", "96")))
        .extracting(MistakeReport::mistake)
        .containsExactly(GrooveMistake.values());
    assertThat(reports(standards(Mounting.SURFACE, "3/16", "96")))
        .extracting(MistakeReport::mistake)
        .containsExactly(GrooveMistake.STANDARD_TURNED, GrooveMistake.CUT_AT_NUMBERED_END);
    assertThat(reports(cleats()))
        .extracting(MistakeReport::mistake)
        .containsExactly(CleatMistake.values());
    assertThat(reports(SampleJobs.pins()))
        .extracting(MistakeReport::mistake)
        .allMatch(m -> m instanceof Mistake)
        .isNotEmpty();
  }

  /**
   * A side of 12 in with the near wall of the front groove 1 3/16 in from the edge: from the other
   * edge the groove of 5/8 runs from 10 3/16 in, 1/32 in behind the back groove.
   */
  @Test
  void should_see_a_groove_from_the_wrong_edge() {
    MistakeReport report =
        report(reports(standards(Mounting.LET_IN, "3/16", "96")), GrooveMistake.WRONG_EDGE);
    assertThat(report.part()).isEqualTo("L");
    assertThat(report.shows())
        .startsWith("Its near wall lies 10 3/16 in from the index edge instead of 1 3/16 in");
    assertThat(report.test()).contains("1 3/16 in; 10 3/16 in would be this mistake");
    assertThat(report.rescue()).isEqualTo(Rescue.PLUG);
    assertThat(report.how()).endsWith("only 1/32 in of wood lies between it and the next cut.");
  }

  /**
   * 23/32 in of side, from both faces: 11/32 in stay between grooves of 3/16, 1/32 in between those
   * of 11/32.
   */
  @ParameterizedTest
  @CsvSource({"3/16, 11/32, BORE_AGAIN", "11/32, 1/32, PLUG"})
  void should_save_a_second_left_side_while_wood_stays(
      String thickness, String web, Rescue rescue) {
    MistakeReport report =
        report(reports(standards(Mounting.LET_IN, thickness, "96")), GrooveMistake.SECOND_LEFT);
    assertThat(report.part()).isEqualTo("R");
    assertThat(report.shows()).startsWith("All 2 grooves are cut into the reverse, none into");
    assertThat(report.rescue()).isEqualTo(rescue);
    assertThat(report.how().contains(web)).isEqualTo(rescue == Rescue.BORE_AGAIN);
  }

  /** The stop slips by 1/8 in: 23/32 less 5/16 leaves 13/32; 3/4 goes through. */
  @ParameterizedTest
  @CsvSource({
    "3/16, USE, 13/32 in of wood is left behind it",
    "5/8, LOST, make the panel anew",
  })
  void should_line_a_groove_that_is_too_deep(String thickness, Rescue rescue, String says) {
    MistakeReport report =
        report(reports(standards(Mounting.LET_IN, thickness, "96")), GrooveMistake.TOO_DEEP);
    assertThat(report.rescue()).isEqualTo(rescue);
    assertThat(report.how().replaceAll("\\s+", " ")).contains(says);
  }

  /** Passes of 1/4 in start at 1 9/16, 1 5/16 and 1 3/16: without the last 1/8 in is missing. */
  @Test
  void should_see_that_a_pass_is_missing() {
    MistakeReport report =
        report(reports(standards(Mounting.LET_IN, "3/16", "96")), GrooveMistake.PASS_LEFT_OUT);
    assertThat(report.shows()).startsWith("The groove is 1/8 in narrower than wanted.");
    assertThat(report.how())
        .isEqualTo("Nothing is spoilt: make the pass with the fence at 1 3/16 in.");
  }

  /**
   * Slots 1/2 in apart from 3/8 in above the numbered end, in a standard of 79 in of which the play
   * takes 1/16 and rounding the rest: turned, the lowest lies (length - 3/8) modulo 1/2 in up.
   */
  @Test
  void should_find_the_slots_of_a_standard_upside_down_off() {
    MistakeReport report =
        report(reports(standards(Mounting.LET_IN, "3/16", "96")), GrooveMistake.STANDARD_TURNED);
    assertThat(report.shows())
        .startsWith("Its lowest slot lies 1/8 in above the panel below instead of 3/8 in")
        .contains("1/4 in off", "at level 1 of bay 1");
    assertThat(report.rescue()).isEqualTo(Rescue.NOT_NEEDED);
  }

  /** What falls off decides: 17 in are whole pitches, 17 1/8 in are 1/8 in more. */
  @ParameterizedTest
  @CsvSource({
    "96, Its slots lie right; only their numbers do not., only its numbers differ",
    "96 1/8, Its lowest slot lies 1/4 in above, Saw 3/8 in more off its lower end",
  })
  void should_find_slots_off_by_what_is_cut_off(String soldIn, String shows, String how) {
    MistakeReport report =
        report(
            reports(standards(Mounting.LET_IN, "3/16", soldIn)), GrooveMistake.CUT_AT_NUMBERED_END);
    assertThat(report.shows()).startsWith(shows);
    assertThat(report.how()).contains(how);
    assertThat(report.rescue()).isEqualTo(Rescue.USE);
  }

  /** 79 1/16 in of strip, notches from 6 in by 1 in: from the other end 1/16 in higher. */
  @Test
  void should_turn_the_strips_of_a_blank_that_was_marked_from_its_other_end() {
    MistakeReport report = report(reports(cleats()), CleatMistake.END_FOR_END);
    assertThat(report.shows())
        .isEqualTo(
            "Of 68 notches of 1-LF 68 are not as wanted: the lowest of them, whose middle belongs 6 in"
                + " above the lower end, lies 6 1/16 in instead. It shows first at level 1 of bay 1,"
                + " for a shelf whose underside lies 10 23/32 in above the foot.");
    assertThat(report.rescue()).isEqualTo(Rescue.NOT_NEEDED);
    assertThat(report.how()).startsWith("Turn both strips over end for end, other face out");
  }

  @Test
  void should_see_a_blank_that_was_marked_one_hole_off() {
    MistakeReport report = report(reports(cleats()), CleatMistake.HOLE_SKIPPED);
    assertThat(report.shows()).startsWith("Of 68 notches of 1-LF 1 is not as wanted");
    assertThat(report.test()).endsWith("lies 6 in from the lower end; 7 in would be this mistake.");
  }

  @Test
  void should_see_halves_that_changed_places() {
    MistakeReport report = report(reports(cleats()), CleatMistake.HALVES_SWAPPED);
    assertThat(report.shows())
        .startsWith(
            "The notches of 1-LF open to the front instead of the back, away from those of");
    assertThat(report.how()).startsWith("Turn both strips over sideways, other face out");
  }

  /** Half of a kerf of 1/8 in more than 1 1/2 in, and as much less. */
  @Test
  void should_see_that_the_kerf_was_forgotten() {
    MistakeReport report = report(reports(cleats()), CleatMistake.KERF_FORGOTTEN);
    assertThat(report.shows())
        .startsWith(
            "1-LF is 1 9/16 in wide and 1-LB 1 7/16 in, instead of 1 1/2 in each; the middles"
                + " of the notches lie 1/8 in beyond the sawn edge");
  }
}
