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
import fourpin.job.Shop;
import fourpin.job.Support;
import fourpin.job.Support.Mounting;
import fourpin.job.Tool;
import fourpin.measure.Length;
import fourpin.plan.MistakeReport.Outcome;
import fourpin.plan.MistakeReport.Rescue;
import java.util.ArrayList;
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
    return reports(support, Shop.NONE);
  }

  private static List<MistakeReport> reports(Support support, Shop shop) {
    CaseOrder order =
        bookcase(
            new Bay(
                Optional.empty(),
                List.of(),
                Optional.of(shelves(2)),
                Optional.of(support),
                Optional.empty()));
    CaseOrder tight =
        order.with(
            order.settings().with(Setting.GROOVE_PLAY, new SettingValue.OfLength(Length.ZERO)));
    Job job = job(tight).with(shop);
    Boring boring = Borer.bore(job, CaseworkBuilder.build(job));
    List<CaseBoring> ways = Ways.of(job, boring).borings();
    return Mistakes.of(job, boring, BenchProgram.of(job, boring, ways), ways);
  }

  /** A router and its bits, by their diameters. */
  private static Shop router(String bits) {
    List<Tool> tools = new ArrayList<>();
    tools.add(new Tool.Router("router", in("2"), in("6"), in("10"), Optional.empty()));
    for (String bit : bits.split(" ")) {
      tools.add(new Tool.RouterBit(bit, in(bit), in("1"), Optional.empty()));
    }
    return new Shop("shop", tools);
  }

  private static MistakeReport report(List<MistakeReport> reports, BenchMistake mistake) {
    return reports.stream().filter(r -> r.mistake() == mistake).findFirst().orElseThrow();
  }

  @Test
  void should_try_every_mistake_that_a_support_allows() {
    assertThat(reports(standards(Mounting.LET_IN, "3/16", "96"), router("1/4")))
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
   * edge the groove of 5/8 runs from 10 3/16 in, 1/32 in behind the back groove, which runs from 9
   * 17/32 in, or 12 - 9 17/32 - 5/8 = 1 27/32 from the other edge.
   */
  @Test
  void should_see_a_groove_from_the_wrong_edge() {
    MistakeReport report =
        report(reports(standards(Mounting.LET_IN, "3/16", "96")), GrooveMistake.WRONG_EDGE);
    assertThat(report.part()).isEqualTo("L");
    assertThat(report.shows())
        .startsWith(
            "Its near wall lies 9 in out of line with the other panels. At every shelf alike")
        .contains("lowest shelf 1-S1 on level 52 of bay 1 (underside 30 7/32 in up)");
    assertThat(report.test())
        .isEqualTo(
            "From the index edge (front) to the near wall of the groove for standard, front row, bay 1:"
                + " 1 3/16 in, not 10 3/16 in (9 in more). To the back row: 9 17/32 in, not 1 27/32 in"
                + " (7 11/16 in less).");
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
    assertThat(report.test())
        .startsWith("Before R is grooved: “LEFT” is written on the face that lies up, and with the")
        .endsWith(
            "bay 1: 1 3/16 in, not 10 3/16 in (9 in more). To the back row: 9 17/32 in, not 1 27/32 in"
                + " (7 11/16 in less).");
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
    assertThat(report.test())
        .startsWith(
            "Across the groove for standard, front row, bay 1: 5/8 in, not 1/2 in (1/8 in less).");
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
        .startsWith("All its slots are 1/4 in off those of the others. At every shelf alike")
        .contains("lowest shelf 1-S1 on level 52 of bay 1");
    assertThat(report.test())
        .startsWith(
            "From the panel below to the lowest slot of one standard: 3/8 in, not 1/8 in (1/4 in less).");
    assertThat(report.rescue()).isEqualTo(Rescue.NOT_NEEDED);
  }

  /** What falls off decides: 17 in are whole pitches, 17 1/8 in are 1/8 in more. */
  @ParameterizedTest
  @CsvSource({
    "96, NOT_NEEDED, Nothing: its slots lie right; only their numbers do not., Count its slots",
    "96 1/8, USE, All its slots are 1/8 in off those of the others., Saw 3/8 in more off its lower",
  })
  void should_find_slots_off_by_what_is_cut_off(
      String soldIn, Rescue rescue, String shows, String how) {
    MistakeReport report =
        report(
            reports(standards(Mounting.LET_IN, "3/16", soldIn)), GrooveMistake.CUT_AT_NUMBERED_END);
    assertThat(report.shows()).startsWith(shows);
    assertThat(report.how()).contains(how);
    assertThat(report.rescue()).isEqualTo(rescue);
  }

  /** 79 1/16 in of strip, notches from 6 in by 1 in: from the other end 1/16 in higher. */
  @Test
  void should_turn_the_strips_of_a_blank_that_was_marked_from_its_other_end() {
    MistakeReport report = report(reports(cleats()), CleatMistake.END_FOR_END);
    assertThat(report.shows())
        .isEqualTo(
            "68 of 68 notches of 1-LF are wrong. At every shelf alike, lowest shelf"
                + " 1-S1 on level 20 of bay 1 (underside 29 23/32 in up): counted from"
                + " below, its left notch is 1/16 in too high; it slopes.");
    assertThat(report.test())
        .startsWith(
            "From the index end (bottom) to the highest hole of the blank: 73 in, not 73 1/16 in (1/16 in"
                + " more).");
    assertThat(report.rescue()).isEqualTo(Rescue.NOT_NEEDED);
    assertThat(report.how()).startsWith("Turn both strips over end for end, other face out");
  }

  @Test
  void should_see_a_blank_that_was_marked_one_hole_off() {
    MistakeReport report = report(reports(cleats()), CleatMistake.HOLE_SKIPPED);
    assertThat(report.shows())
        .startsWith("1 of 68 notches of 1-LF is missing.")
        .endsWith("counted from below, its left notch is 1 in too high; it slopes.");
    assertThat(report.test())
        .isEqualTo(
            "Count the holes: 68. From the index end (bottom) to hole 67, counted from below, of the"
                + " blank: 72 in, not 73 in (1 in more).");
    assertThat(report.how()).startsWith("Bore it before the blank is ripped; afterwards clamp");
  }

  /** Whole holes on the middle line are the same from both edges and both faces. */
  @ParameterizedTest
  @CsvSource({"WRONG_EDGE, HARMLESS", "SECOND_LEFT, HARMLESS", "STOP_SLIPPED, IMPOSSIBLE"})
  void should_say_what_does_not_spoil_a_blank(CleatMistake mistake, String outcome) {
    Outcome is = report(reports(cleats()), mistake).outcome();
    assertThat(is.getClass().getSimpleName()).isEqualToIgnoringCase(outcome);
  }

  /** The strip of 79 1/16 in turned as a whole: as with the stick. */
  @Test
  void should_turn_a_blank() {
    List<MistakeReport> all = reports(cleats());
    assertThat(report(all, CleatMistake.PANEL_TURNED).shows())
        .isEqualTo(report(all, CleatMistake.END_FOR_END).shows());
  }

  /**
   * From 5/8 in in passes of 3/8 in, fence at 1 7/16 and 1 3/16: with 1/4 in it reaches to 1 11/16,
   * with 1/2 in to 1 15/16.
   */
  @ParameterizedTest
  @CsvSource({
    "3/8 1/4, 1/2 in (1/8 in less), BORE_AGAIN",
    "3/8 1/2, 3/4 in (1/8 in more), USE",
  })
  void should_cut_with_another_cutter_of_the_shop(String bits, String seen, Rescue rescue) {
    MistakeReport report =
        report(
            reports(standards(Mounting.LET_IN, "3/16", "96"), router(bits)),
            GrooveMistake.OTHER_CUTTER);
    assertThat(report.test())
        .isEqualTo("Across the groove for standard, front row, bay 1: 5/8 in, not " + seen + ".");
    assertThat(report.rescue()).isEqualTo(rescue);
  }

  /**
   * Passes of 1/4 in have their fences at 1 9/16, 1 5/16 and 1 3/16: with 3/8 in at the same fences
   * they reach to 1 15/16, 1/8 in further than 1 13/16.
   */
  @ParameterizedTest
  @CsvSource({
    "1/4, 'A borrowed cutter of 3/8 in is in: the shop file states no other for grooves near 1/4 in.'",
    "'', 'A cutter of 3/8 in, the next size that is sold, is in, instead of 1/4 in.'",
  })
  void should_borrow_another_cutter(String bits, String what) {
    Shop shop = bits.isEmpty() ? Shop.NONE : router(bits);
    MistakeReport report =
        report(reports(standards(Mounting.LET_IN, "3/16", "96"), shop), GrooveMistake.OTHER_CUTTER);
    assertThat(report.what()).isEqualTo(what);
    assertThat(report.test())
        .isEqualTo(
            "Across the groove for standard, front row, bay 1: 5/8 in, not 3/4 in (1/8 in more)."
                + " Measure a borrowed cutter before it goes in.");
    assertThat(report.rescue()).isEqualTo(Rescue.USE);
  }

  /** Nobody takes 1/4 in for 1 1/2 in; wider than all pins, the next bit is 1 5/8 in. */
  @Test
  void should_borrow_another_bit_for_cleats() {
    Shop shop =
        new Shop(
            "shop",
            List.of(
                new Tool.PlainBit("bit", in("1 1/2"), in("1/8"), in("3"), Optional.empty()),
                new Tool.PlainBit("small", in("1/4"), in("1/8"), in("3"), Optional.empty())));
    MistakeReport report = report(reports(cleats(), shop), CleatMistake.OTHER_BIT);
    assertThat(report.what()).startsWith("A borrowed bit of 1 5/8 in is in, instead of 1 1/2 in:");
    assertThat(report.test()).contains("1 1/2 in, not 1 5/8 in (1/8 in more).");
    assertThat(report.how()).endsWith("make the cleats 1 5/8 in high.");
  }

  /** The bottom lies lower than the top is thick: grooves are not the same from both ends. */
  @Test
  void should_turn_a_panel_before_it_is_grooved() {
    MistakeReport report =
        report(reports(standards(Mounting.LET_IN, "3/16", "96")), GrooveMistake.PANEL_TURNED);
    assertThat(report.test())
        .startsWith("From the index end (bottom) to the lowest end of the groove for standard")
        .contains(": 4 7/32 in, not 23/32 in (3 1/2 in less).");
    assertThat(report.rescue()).isEqualTo(Rescue.PLUG);
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
