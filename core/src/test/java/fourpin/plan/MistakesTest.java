package fourpin.plan;

import static fourpin.job.SampleJobs.bay;
import static fourpin.job.SampleJobs.in;
import static fourpin.job.SampleJobs.job;
import static org.assertj.core.api.Assertions.assertThat;

import fourpin.boring.Borer;
import fourpin.boring.Boring;
import fourpin.boring.way.CaseBoring;
import fourpin.boring.way.Method;
import fourpin.boring.way.Ways;
import fourpin.casework.CaseworkBuilder;
import fourpin.job.Bay;
import fourpin.job.CaseDraft;
import fourpin.job.Job;
import fourpin.job.RandomJobs;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Support;
import fourpin.job.Way;
import fourpin.measure.Length;
import fourpin.plan.MistakeReport.Outcome;
import fourpin.plan.MistakeReport.Rescue;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Mistakes on a bookcase 84 in high and 12 in deep of 23/32 in plywood: in each side 68 holes of
 * 1/4 in, 3/8 in deep, from 10 7/32 to 77 7/32 in in rows 1 1/2 and 9 27/32 in from the front edge.
 * The guide is 80 in long; the lower of two shelves lies on level 21, 30 7/32 in up. All figures
 * are worked out by hand.
 */
class MistakesTest {

  private static CaseDraft draft(Bay... bays) {
    CaseDraft draft = new CaseDraft();
    draft.bays = List.of(bays);
    return draft;
  }

  private static List<MistakeReport> guided(CaseDraft draft) {
    Job job = job(draft.order());
    Boring boring = Borer.bore(job, CaseworkBuilder.build(job));
    return reports(job, boring, List.of(GuidedBookcase.boring(boring)));
  }

  private static List<MistakeReport> marked(CaseDraft draft) {
    Job job = job(draft.order());
    return reports(job, Borer.bore(job, CaseworkBuilder.build(job)), List.of());
  }

  private static List<MistakeReport> reports(Job job, Boring boring, List<CaseBoring> borings) {
    return Mistakes.of(job, boring, BenchProgram.of(job, boring, borings), borings);
  }

  private static MistakeReport of(List<MistakeReport> reports, Mistake mistake) {
    return reports.stream().filter(r -> r.mistake() == mistake).findFirst().orElseThrow();
  }

  private static void set(CaseDraft draft, Setting setting, String inches) {
    draft.settings = draft.settings.with(setting, new SettingValue.OfLength(in(inches)));
  }

  @Test
  void should_try_every_mistake_in_each_way() {
    List<Mistake> all = new ArrayList<>(List.of(Mistake.values()));
    all.removeAll(List.of(Mistake.PIN_IN_WRONG_HOLE, Mistake.WRONG_SPACER));
    assertThat(guided(draft(bay(2))))
        .extracting(MistakeReport::mistake)
        .containsExactlyElementsOf(all);
    all.removeAll(List.of(Mistake.MASKED_HOLE, Mistake.SPACER_FORGOTTEN));
    assertThat(marked(draft(bay(2))))
        .extracting(MistakeReport::mistake)
        .containsExactlyElementsOf(all);
    assertThat(guided(draft(bay(2))))
        .extracting(MistakeReport::part)
        .containsExactly("L", "L", "L", "R", "L", "L", "L", "L", "L");
  }

  /** Neither a guide nor a stick lies on the panel. */
  @Test
  void should_try_what_a_machine_can_do_wrong() {
    Job job = job(draft(bay(2)).order());
    Boring boring = Borer.bore(job, CaseworkBuilder.build(job));
    Method.Guided guided = (Method.Guided) GuidedBookcase.boring(boring).method();
    Method machine = new Method.Programmed("line borer", guided.bit());
    List<MistakeReport> all =
        reports(job, boring, List.of(GuidedBookcase.boring(boring, Way.MACHINE, machine)));
    assertThat(of(all, Mistake.END_FOR_END).outcome()).isInstanceOf(Outcome.Impossible.class);
    assertThat(all.stream().filter(r -> r.outcome() instanceof Outcome.Spoilt))
        .extracting(MistakeReport::mistake)
        .containsExactly(
            Mistake.WRONG_EDGE,
            Mistake.PANEL_TURNED,
            Mistake.SECOND_LEFT,
            Mistake.HOLE_SKIPPED,
            Mistake.STOP_SLIPPED,
            Mistake.OTHER_BIT);
  }

  /**
   * 80 - 77 7/32 = 2 25/32 in is the lowest hole then, 7 7/16 below the wanted 10 7/32; the nearest
   * to that is 9 25/32, 7/16 lower. Rims are 7/16 - 1/4 = 3/16 in apart. A hole at 3 25/32 lies in
   * the bottom's dado.
   */
  @Test
  void should_turn_the_guide_end_for_end() {
    MistakeReport report = of(guided(draft(bay(2))), Mistake.END_FOR_END);
    assertThat(report.shows())
        .isEqualTo(
            "136 of 136 holes are wrong. At every shelf alike, lowest shelf 1-S1 on"
                + " level 21 of bay 1 (underside 30 11/32 in up): counted from below, its"
                + " left holes are 7 7/16 in too low; it slopes.");
    assertThat(report.test())
        .startsWith(
            "From the index end (bottom) to the highest hole of the front row, bay 1: 77 7/32 in,"
                + " not 69 25/32 in (7 7/16 in less).");
    assertThat(report.rescue()).isEqualTo(Rescue.PLUG);
    assertThat(report.how())
        .startsWith("Wrong holes run into a joint, an edge or an end: plug them")
        .contains("only 3/16 in of wood lies between rims");
  }

  /**
   * End for end the holes of a guide so long miss the wanted ones by: 80 in 7/16, 79 3/4 in 5/16,
   * 79 5/8 in 3/16, 79 1/2 in 1/16, 79 15/32 in 1/32 in; with 79 7/16 in they lie on the same
   * lattice and only the highest are missing. Holes are 1/4 in wide: 3/16 in apart they meet by
   * 1/16 in, the bit's point still in whole wood; a sleeve of 5/16 in covers holes that are 1/32 in
   * apart.
   */
  @ParameterizedTest
  @CsvSource({
    "80, PLUG, only 3/16 in of wood",
    "79 3/4, PLUG, only 1/16 in of wood",
    "79 5/8, PLUG, meet by 1/16 in. Glue",
    "79 1/2, LOST, meet by 3/16 in",
    "79 15/32, SLEEVE, 5/16 in for 1/4 in pins",
    "79 7/16, PLUG, At least 3/4 in of wood"
  })
  void should_save_a_panel_by_the_wood_between_holes(String length, Rescue rescue, String how) {
    Job job = job(draft(bay(2)).order());
    Boring boring = Borer.bore(job, CaseworkBuilder.build(job));
    List<CaseBoring> borings = List.of(GuidedBookcase.boring(boring, in(length)));
    MistakeReport report = of(reports(job, boring, borings), Mistake.END_FOR_END);
    assertThat(report.rescue()).isEqualTo(rescue);
    assertThat(report.how()).contains(how);
  }

  /** 84 - 77 7/32 = 6 25/32 in is the lowest hole then, 84 - 10 7/32 = 73 25/32 the last. */
  @ParameterizedTest
  @CsvSource({"PANEL_TURNED, true", "PANEL_TURNED, false", "END_FOR_END, false"})
  void should_turn_the_panel_or_the_stick(Mistake mistake, boolean guide) {
    CaseDraft draft = draft(bay(2));
    MistakeReport report = of(guide ? guided(draft) : marked(draft), mistake);
    assertThat(report.shows()).contains("136 of 136 holes", "are 3 7/16 in too low; it slopes");
    assertThat(report.test()).contains("bay 1: 77 7/32 in, not 73 25/32 in (3 7/16 in less).");
    // The front row keeps 1 1/2 - 1/8 = 1 3/8 in from the edge; nothing is nearer.
    assertThat(report.rescue()).isEqualTo(Rescue.OTHERS_ALIKE);
    assertThat(report.how()).contains("at least 1 3/8 in clear");
  }

  /**
   * In a case that stands the stick goes between bottom and top, from 4 7/32 to 83 9/32 in: upside
   * down the highest hole comes to 87 1/2 - 10 7/32 = 77 9/32, 1/16 in higher.
   */
  @Test
  void should_stand_the_stick_upside_down() {
    CaseDraft draft = draft(bay(2));
    draft.settings =
        draft.settings.with(Setting.DRILL, new SettingValue.OfChoice("after-assembly"));
    MistakeReport report = of(marked(draft), Mistake.END_FOR_END);
    assertThat(report.what())
        .isEqualTo("The stick stands at L upside down, its zero at the panel above.");
    assertThat(report.test())
        .startsWith(
            "From the top of B to the highest hole of the front row, bay 1: 73 in, not 73 1/16 in (1/16 in"
                + " more).");
    assertThat(of(marked(draft), Mistake.PANEL_TURNED).outcome())
        .isInstanceOf(Outcome.Impossible.class);
  }

  @Test
  void should_call_a_turned_panel_with_balanced_rows_harmless() {
    CaseDraft draft = draft(bay(2));
    draft.settings = draft.settings.with(Setting.BALANCE, new SettingValue.OfChoice("balanced"));
    MistakeReport report = of(marked(draft), Mistake.PANEL_TURNED);
    assertThat(report.shows()).isEqualTo("Nothing: the rows are the same from both ends.");
    assertThat(report.rescue()).isEqualTo(Rescue.NOT_NEEDED);
  }

  /** 12 - 1 1/2 = 10 1/2 in, 9 in off; to the back row's rims 10 1/2 - 9 27/32 - 1/4 = 13/32. */
  @ParameterizedTest
  @CsvSource({"true", "false"})
  void should_set_a_row_out_from_the_wrong_edge(boolean guide) {
    CaseDraft draft = draft(bay(2));
    MistakeReport report = of(guide ? guided(draft) : marked(draft), Mistake.WRONG_EDGE);
    assertThat(report.shows())
        .startsWith("68 of 136 holes are wrong. At every shelf alike, lowest shelf 1-S1 on")
        .endsWith("its front left hole is 9 in further from the index edge.");
    assertThat(report.test())
        .isEqualTo(
            "From the index edge (front) to the front row, bay 1: 1 1/2 in, not 10 1/2 in (9 in more)."
                + " To the back row: 9 27/32 in, not 2 5/32 in (7 11/16 in less).");
    assertThat(report.rescue()).isEqualTo(Rescue.BORE_AGAIN);
    assertThat(report.how()).contains("At least 13/32 in of wood");
  }

  @Test
  void should_not_call_a_row_clear_of_the_one_that_it_lies_in() {
    CaseDraft draft = draft(bay(2));
    set(draft, Setting.BACK_ROW, "1");
    MistakeReport report = of(marked(draft), Mistake.WRONG_EDGE);
    // The back row moves to 10 11/32 in, 5/32 in from the wrong row at 10 1/2: they meet by 3/32.
    assertThat(report.rescue()).isEqualTo(Rescue.PLUG);
    assertThat(report.how()).contains("meet by 3/32 in. Glue", "what the dowels reach into");
  }

  /** 3/8 in from both faces of 23/32 in leaves nothing, 1/4 in leaves 7/32. */
  @ParameterizedTest
  @CsvSource({"3/8, PLUG, no wood would be left", "1/4, BORE_AGAIN, 7/32 in of wood stays"})
  void should_bore_a_second_left_side(String depth, Rescue rescue, String how) {
    CaseDraft draft = draft(bay(2));
    set(draft, Setting.HOLE_DEPTH, depth);
    MistakeReport report = of(marked(draft), Mistake.SECOND_LEFT);
    assertThat(report.part()).isEqualTo("R");
    assertThat(report.shows())
        .startsWith("All 136 holes are bored into the reverse, none into the face.");
    assertThat(report.rescue()).isEqualTo(rescue);
    assertThat(report.how()).contains(how);
  }

  /** The hole of the lowest shelf: counted from below, all above it come 1 in too high. */
  @ParameterizedTest
  @CsvSource({"true", "false"})
  void should_skip_a_hole(boolean guide) {
    CaseDraft draft = draft(bay(2));
    MistakeReport report = of(guide ? guided(draft) : marked(draft), Mistake.HOLE_SKIPPED);
    assertThat(report.what()).startsWith("Hole 21 of the front row, bay 1 of L is left out;");
    assertThat(report.shows())
        .startsWith("1 of 136 holes is missing. At every shelf alike, lowest shelf 1-S1")
        .endsWith("counted from below, its front left hole is 1 in too high; it rocks.");
    assertThat(report.test())
        .isEqualTo(
            "Count the front row, bay 1: 68 holes, the back row as many."
                + " From the index end (bottom) to hole 67, counted from"
                + " below, of the front row, bay 1: 76 7/32 in, not 77 7/32 in (1 in more).");
    assertThat(report.rescue()).isEqualTo(Rescue.BORE_AGAIN);
    assertThat(report.how()).isEqualTo("Nothing is spoilt: bore what is missing.");
  }

  /**
   * A guide of 40 holes is moved along by 39 in, its first hole over the highest that was bored. A
   * hole lower it bores levels 40 to 67 once more, and level 68 not at all; no shelf lies there.
   */
  @Test
  void should_put_the_locating_pin_into_the_wrong_hole() {
    Job job = job(draft(bay(2)).order());
    Boring boring = Borer.bore(job, CaseworkBuilder.build(job));
    List<CaseBoring> stepped = List.of(GuidedBookcase.stepped(boring));
    MistakeReport report = of(reports(job, boring, stepped), Mistake.PIN_IN_WRONG_HOLE);
    assertThat(report.shows())
        .isEqualTo(
            "1 of 136 holes is missing. At no shelf as they are placed, but at level 68 of bay"
                + " 1 (underside 77 11/32 in up): its front left hole is not there.");
    assertThat(report.test())
        .isEqualTo(
            "Count the front row, bay 1: 68 holes, the back row as many."
                + " From the index end (bottom) to the highest hole of"
                + " the front row, bay 1: 77 7/32 in, not 76 7/32 in (1 in less).");
    assertThat(report.rescue()).isEqualTo(Rescue.BORE_AGAIN);
  }

  /**
   * The bit of the guide has a point of 1/16 in: 23/32 - 3/8 - 1/8 - 1/16 = 5/32 in is left; with a
   * slip of 1/4 in 1/32, with 9/32 nothing; with 3/8 even the full diameter goes through.
   */
  @ParameterizedTest
  @CsvSource({
    "1/8, USE, 5/32 in of wood is left",
    "1/4, USE, 1/32 in of wood is left",
    "9/32, LOST, comes out",
    "3/8, LOST, comes out"
  })
  void should_let_the_stop_slip(String slip, Rescue rescue, String how) {
    CaseDraft draft = draft(bay(2));
    set(draft, Setting.STOP_SLIP, slip);
    MistakeReport report = of(guided(draft), Mistake.STOP_SLIPPED);
    String shown =
        slip.equals("3/8") ? "Every hole goes right through" : "are " + slip + " in too deep";
    assertThat(report.shows()).contains(shown);
    assertThat(report.rescue()).isEqualTo(rescue);
    assertThat(report.how()).contains(how);
  }

  /** 23/32 - 2 x (3/16 + 1/8) = 3/32: two slips of 1/32 in leave 1/32, two of 1/16 nothing. */
  @ParameterizedTest
  @CsvSource({"1/32, false", "1/16, true"})
  void should_say_that_slips_from_both_faces_meet_in_a_partition(String slip, boolean meet) {
    CaseDraft draft = draft(bay(2), bay(2));
    set(draft, Setting.STOP_SLIP, slip);
    set(draft, Setting.HOLE_DEPTH, "3/16");
    Job job = job(draft.order());
    Boring boring = Borer.bore(job, CaseworkBuilder.build(job));
    List<MistakeReport> all = reports(job, boring, Ways.of(job, boring).borings());
    String how = of(all, Mistake.STOP_SLIPPED).how();
    assertThat(how.contains("Not so in P1: bored so from both faces, its opposite holes meet."))
        .isEqualTo(meet);
  }

  /**
   * From 1/4 in to 7 mm it is 0.65 mm, from 5 mm to 1/4 in 1.35 mm, from 3/16 in (4.76 mm) to 5 mm
   * 0.24 mm, which is not loose. Sleeves of 9/32 in (7.14 mm) and 7 mm take in the wider holes. No
   * pin is wider than 7 mm.
   */
  @ParameterizedTest
  @CsvSource({
    "6.35, SLEEVE, 9/32 in for 1/4 in pins",
    "5, SLEEVE, 7 mm for 5 mm pins",
    "4.7625, USE, hardly wobbles",
    "7, BORE_AGAIN, once more with the right bit",
    "6, OTHERS_ALIKE, take pins for 1/4 in"
  })
  void should_bore_with_another_bit(double mm, Rescue rescue, String how) {
    Length stem = Length.nearestMm(mm);
    Bay pinned = bay(2);
    Bay other = pinned.with(new Support.Pins(stem, in("3/8"), in("3/8"), stem.over(2)));
    MistakeReport report = of(marked(draft(other)), Mistake.OTHER_BIT);
    assertThat(report.shows()).contains("136 of 136 holes");
    assertThat(report.rescue()).isEqualTo(rescue);
    assertThat(report.how()).contains(how);
  }

  @Test
  void should_say_nothing_of_a_case_without_pins() {
    CaseDraft draft = draft(bay(2));
    draft.bays =
        List.of(
            new Bay(
                Optional.empty(), List.of(), Optional.empty(), Optional.empty(), Optional.empty()));
    assertThat(marked(draft)).isEmpty();
  }

  static LongStream batches() {
    return LongStream.range(0, 5);
  }

  /** What is never the same as wanted must never pass for it, whatever the job and the way. */
  @ParameterizedTest
  @MethodSource("batches")
  void should_notice_mistakes_on_random_jobs(long batch) {
    Set<Mistake> always =
        EnumSet.complementOf(
            EnumSet.of(Mistake.END_FOR_END, Mistake.WRONG_EDGE, Mistake.PANEL_TURNED));
    Set<BenchMistake> seen = new HashSet<>();
    for (long seed = batch * 20; seed < (batch + 1) * 20; seed++) {
      Job job = RandomJobs.of(seed);
      Boring boring = Borer.bore(job, CaseworkBuilder.build(job));
      for (MistakeReport report : reports(job, boring, HandMadeWays.of(boring, seed))) {
        boolean harmless = report.outcome() instanceof Outcome.Harmless;
        assertThat(harmless && always.contains(report.mistake()))
            .as("seed %d: %s", seed, report)
            .isFalse();
        if (report.outcome() instanceof Outcome.Spoilt(var right, var wrong, var check, _)) {
          assertThat(wrong).as("seed %d: %s", seed, report).isNotEqualTo(right);
          assertThat(check.wrong())
              .as("seed %d: %s", seed, report)
              .isNotEqualTo(Optional.of(check.right()));
          assertThat(report.test()).containsPattern(", not |; now ");
        } else {
          assertThat(report.rescue()).isEqualTo(Rescue.NOT_NEEDED);
        }
        assertThat(report.test()).isNotEmpty();
        assertThat(report.how()).isNotEmpty();
        seen.add(report.mistake());
      }
    }
    assertThat(seen).contains(Mistake.MASKED_HOLE, Mistake.SPACER_FORGOTTEN);
  }
}
