package fourpin.plan;

import static fourpin.job.SampleJobs.bay;
import static fourpin.job.SampleJobs.in;
import static fourpin.job.SampleJobs.job;
import static fourpin.job.SampleJobs.pins;
import static fourpin.job.SampleJobs.strip;
import static org.assertj.core.api.Assertions.assertThat;

import fourpin.bench.Caution;
import fourpin.boring.BayGrid;
import fourpin.boring.Borer;
import fourpin.casework.CaseworkBuilder;
import fourpin.job.Back;
import fourpin.job.Bay;
import fourpin.job.CaseDraft;
import fourpin.job.Job;
import fourpin.job.Joint;
import fourpin.job.RandomJobs;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Settings;
import fourpin.job.Support;
import fourpin.measure.Length;
import fourpin.measure.LengthStyle;
import fourpin.measure.Unit;
import fourpin.plan.PlannedStep.Stage;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The steps as a maker reads them. */
class BenchProgramTest {

  private static List<PlannedStep> printed(CaseDraft draft) {
    Job job = job(draft.order());
    return BenchProgram.of(job, Borer.bore(job, CaseworkBuilder.build(job)), List.of()).printed();
  }

  static CaseDraft draft(Bay... bays) {
    CaseDraft draft = new CaseDraft();
    draft.bays = List.of(bays);
    return draft;
  }

  private static Bay on(Support support) {
    Bay pinned = bay(2);
    return new Bay(
        pinned.width(), List.of(), pinned.shelves(), Optional.of(support), pinned.load());
  }

  static List<PlannedStep> at(List<PlannedStep> steps, Stage stage) {
    return steps.stream().filter(s -> s.stage() == stage).toList();
  }

  private static void set(CaseDraft draft, Setting setting, SettingValue value) {
    draft.settings = draft.settings.with(setting, value);
  }

  @Test
  void should_bore_before_assembly_in_the_order_of_work() {
    assertThat(printed(draft(bay(2), bay(2))).stream().map(PlannedStep::stage).distinct())
        .containsExactly(
            Stage.MEASURE,
            Stage.CUT,
            Stage.MARK,
            Stage.JOINT,
            Stage.BORE,
            Stage.DRY_FIT,
            Stage.FINISH,
            Stage.ASSEMBLE,
            Stage.SHELVES,
            Stage.STAND);
  }

  @Test
  void should_bore_after_assembly_when_the_job_says_so() {
    CaseDraft draft = draft(bay(2));
    set(draft, Setting.DRILL, new SettingValue.OfChoice("after-assembly"));
    List<PlannedStep> steps = printed(draft);
    assertThat(steps.stream().map(PlannedStep::stage).distinct())
        .containsSubsequence(Stage.ASSEMBLE, Stage.BORE, Stage.SHELVES);
    // The bottom's upper face, 4 7/32 above the foot, carries the stick; the first hole is 6 above.
    assertThat(at(steps, Stage.BORE).get(0).items())
        .containsExactly(
            "Stick “on B”: every mark measured from zero and numbered: (1) 6 in to (68) 73 in, every"
                + " 1 in.");
    assertThat(at(steps, Stage.BORE).get(1).items().getLast())
        .isEqualTo(
            "L: back row, bay 1, on the face, 9 27/32 in from the index edge: marks 1 to 68 of"
                + " stick “on B”, 68 holes, its zero 4 7/32 in from the index end; bit 1/4 in, 3/8"
                + " in deep.");
  }

  @Test
  void should_tell_where_every_row_is_bored() {
    List<PlannedStep> bored = at(printed(draft(bay(2), bay(2))), Stage.BORE);
    assertThat(bored.stream().map(PlannedStep::parts))
        .containsExactly(List.of(), List.of("L"), List.of("R"), List.of("P1"), List.of("P1"));
    assertThat(bored.getFirst().items().getFirst())
        .endsWith(
            "(1) 10 7/32 in to (68) 77 7/32 in, every 1 in. Marks for the ends of panels: at 3"
                + " 31/32 in.");
    assertThat(bored.get(4).items())
        .contains(
            "P1: front row, bay 2, on the reverse, 1 1/2 in from the index edge: marks 1 to 68 of"
                + " stick “North”, 68 holes, its end mark 3 31/32 in at the index end; bit 1/4 in,"
                + " 3/8 in deep.");
  }

  @Test
  void should_share_a_sentence_among_parts_cut_alike() {
    assertThat(at(printed(draft(bay(2), bay(2))), Stage.CUT).getFirst().items())
        .containsExactly(
            "L, R: 84 in long, 12 in wide, from ply.",
            "P1: 79 9/16 in long, 11 13/32 in wide, from ply.",
            "T: 71 5/16 in long, 12 in wide, from ply.",
            "B: 71 1/16 in long, 12 in wide, from ply.",
            "K: 70 9/16 in long, 3 1/2 in wide, from ply.");
  }

  @Test
  void should_fasten_standards_and_strips_where_the_rows_are() {
    Support standards = standards(Support.Mounting.SURFACE);
    Support cleats = cleats();
    List<PlannedStep> steps = at(printed(draft(on(standards), on(cleats))), Stage.ASSEMBLE);
    assertThat(steps.get(0).words())
        .isEqualTo(
            "Bay 1: cut the standards to 4 of 79 in, all from the same numbered end; screw them on"
                + " with that end down and standing on the panel below, front row 1 1/2 in from"
                + " the front edge, back row 9 27/32 in from the front edge (middle of the"
                + " standard), at least 1/16 in free above, a screw near each end and others no"
                + " more than 6 in apart.");
    assertThat(steps.get(1).words()).contains("front row 3/4 in from the front edge");
    assertThat(steps.get(1).parts()).containsExactly("P1", "R");
  }

  /** Steel that is as long as its space does not go in. */
  @ParameterizedTest
  @CsvSource({
    // space, play, cut: the next 64th of an inch below
    "25 3/32, 1/16, 25 1/32",
    "25.08, 0, 25 5/64",
    "47.28, 1/16, 47 13/64",
    "10, 0, 10"
  })
  void should_cut_standards_shorter_than_their_space(String space, String play, String cut) {
    var settings =
        Settings.standard(Unit.INCH)
            .with(Setting.STANDARD_PLAY, new SettingValue.OfLength(in(play)));
    BayGrid.Run run = new BayGrid.Run(in("4"), in("4").plus(in(space)));
    Length length = new StandardCut(settings, LengthStyle.FRACTIONS).length(run);
    assertThat(length).isEqualTo(in(cut));
    assertThat(run.length().minus(in(play)).isAtLeast(length)).isTrue();
  }

  @Test
  void should_rip_edge_strips_before_they_are_glued_on() {
    CaseDraft draft = draft(bay(2));
    draft.edging = List.of(strip("1/4", "23/32"));
    List<PlannedStep> steps = printed(draft);
    PlannedStep rip = at(steps, Stage.CUT).getLast();
    assertThat(rip.words())
        .isEqualTo(
            "Rip the edge strips by the layouts, plane off the saw marks to the finished size, and"
                + " cut them to length. Length follows the edge that a strip is glued to.");
    assertThat(rip.items())
        .contains(
            "L front, R front: oak, ripped 5/16 in wide from 3/4 in stock, planed to 1/4 x 23/32"
                + " in, 84 in long.");
    assertThat(hazards(List.of(rip))).containsExactly("saw", "narrow rips", "planer", "dust");
    List<PlannedStep> later = at(steps, Stage.SHELVES);
    List<String> starts = later.stream().map(p -> p.words().split(" ")[0]).toList();
    assertThat(starts).containsExactly("Measure", "Cut", "Take", "Glue", "Choose");
    assertThat(later.get(2).items())
        .containsExactly(
            "1-S1 front, 1-S2 front: oak, ripped 5/16 in wide from 3/4 in stock, planed to 1/4 x"
                + " 23/32 in, 70 7/16 in long.");
  }

  @Test
  void should_screw_the_kick_in() {
    CaseDraft draft = draft(bay(2));
    List<PlannedStep> steps = at(printed(draft), Stage.ASSEMBLE);
    assertThat(steps.getLast().parts()).containsExactly("K");
    assertThat(steps.getLast().words())
        .isEqualTo(
            "Put the kick between the sides under the bottom, its face level with the front edges"
                + " of the sides, and drive its 4 screws through the sides into lead holes.");
    assertThat(hazards(List.of(steps.getLast()))).containsExactly("drill");
    // The screws of the kick are not those of the joints.
    assertThat(steps.getFirst().words()).contains("between the sides. ");
    draft.topJoint = new Joint(Joint.Kind.BUTT, Optional.empty());
    assertThat(at(printed(draft), Stage.ASSEMBLE).getFirst().words())
        .contains("between the sides; drive the screws into lead holes. ");
  }

  /** Both kinds of back are cut when the glue has set, so they are fastened after that. */
  @ParameterizedTest
  @CsvSource({"RABBET, into its rabbets", "APPLIED, on the back edges of the case"})
  void should_fasten_a_back_after_it_is_cut(Back.Kind kind, String where) {
    CaseDraft draft = draft(bay(2));
    draft.back = Optional.of(new Back(kind, "back", Optional.empty(), Back.Pieces.ONE));
    Job job = job(draft.order());
    List<PlannedStep> steps = printed(draft);
    assertThat(at(steps, Stage.ASSEMBLE).getFirst().words())
        .contains("screw a brace across the case", "the back is cut to measure after that")
        .doesNotContain("squares the case");
    List<PlannedStep> later = at(steps, Stage.SHELVES);
    assertThat(later.subList(0, 4).stream().map(PlannedStep::parts)).containsOnly(List.of("BK"));
    assertThat(later.get(0).items().getFirst()).startsWith("BK: planned ").endsWith(" in high");
    assertThat(later.get(1).words()).contains("pieces kept for them, which the layouts mark");
    assertThat(later.get(3).words()).contains(where, " screws in lead holes, at most 6 in apart");
    long screws =
        Planner.plan(job).hardware().stream()
            .filter(h -> h.name().equals("screw for the back"))
            .map(h -> ((HardwareItem.Amount.Pieces) h.amount()).buy())
            .findFirst()
            .orElseThrow();
    assertThat(later.get(3).words()).contains(": " + screws + " screws");
    assertThat(later.get(4).parts()).containsExactly("1-S1", "1-S2");
  }

  @Test
  void should_fit_dry_with_what_carries_the_shelves() {
    assertThat(fit(pins())).contains("lay a flat offcut as long as a shelf").contains("fuzz");
    Support.Pins pins = (Support.Pins) pins();
    assertThat(fit(new Support.Sleeved(pins, in("3/8"), in("1/2"), in("1/16"))))
        .contains("hold a straight batten", "A sleeve goes into a finished test hole.");
    assertThat(fit(standards(Support.Mounting.LET_IN)))
        .contains("offcut of the standard into every groove")
        .doesNotContain("hole", "rows");
    assertThat(fit(standards(Support.Mounting.SURFACE))).doesNotContain("hole", "rows", "groove");
    assertThat(fit(cleats())).contains("a cleat in notches").doesNotContain("hole", "rows");
  }

  private static String fit(Support support) {
    List<PlannedStep> steps = printed(draft(on(support)));
    StringBuilder all = new StringBuilder();
    at(steps, Stage.DRY_FIT).forEach(s -> all.append(s.words()).append(s.check()));
    at(steps, Stage.FINISH).forEach(s -> all.append(s.words()).append(s.check()));
    return all.toString();
  }

  private static Support standards(Support.Mounting mounting) {
    return new Support.Standards(
        mounting, in("5/8"), in("3/16"), in("1/2"), in("1/4"), in("1/16"), in("1/8"), in("96"));
  }

  private static Support cleats() {
    return new Support.Cleats("oak", in("1 1/2"), in("3/4"), in("7/8"), in("3/4"), in("3/4"));
  }

  /** NIOSH: 23 kg is the most for one under good conditions. */
  @Test
  void should_call_as_many_people_as_the_limit_asks() {
    CaseDraft draft = draft(bay(2));
    set(draft, Setting.LIFT_LIMIT, new SettingValue.OfNumber(60));
    assertThat(hazards(at(printed(draft), Stage.STAND))).containsExactly("tip-over");
    set(draft, Setting.LIFT_LIMIT, new SettingValue.OfNumber(5));
    assertThat(hazards(at(printed(draft), Stage.STAND))).containsExactly("tip-over", "lifting");
    assertThat(hazards(at(printed(draft), Stage.CUT))).contains("lifting");
    Caution lifting =
        Cautions.lifting(
            "The case, 177 lb", 177, 50.7, "50.7 lb, NIOSH Applications Manual 94-110");
    assertThat(lifting.text())
        .isEqualTo(
            "The case, 177 lb: about 4 people, or a lifting aid. Limit for each person 50.7 lb,"
                + " NIOSH Applications Manual 94-110, under good conditions: close to the body,"
                + " without a twist, with a good grip.");
  }

  /** A sheet of 3/4 in plywood weighs some 60 to 75 lb (common practice). */
  @Test
  void should_warn_of_whole_sheets_where_they_are_cut() {
    Caution sheet =
        at(printed(draft(bay(2))), Stage.CUT).getFirst().cautions().stream()
            .filter(c -> c.hazard().equals("lifting"))
            .findFirst()
            .orElseThrow();
    assertThat(sheet.text())
        .startsWith("A whole sheet of ply, 96 x 48 in, ")
        .contains(": about 2 people, or a lifting aid. Limit for each person 50.7 lb, NIOSH ");
  }

  @Test
  void should_keep_the_pieces_of_what_waits() {
    List<PlannedStep> steps = printed(draft(bay(2)));
    assertThat(at(steps, Stage.CUT).getFirst().words())
        .endsWith(
            "Mark and keep the pieces that the layouts mark “waits”, there 1/2 in longer than planned:"
                + " they are cut to measure when the case stands.");
    assertThat(at(steps, Stage.SHELVES).get(1).words())
        .endsWith(
            "Cut them out of the pieces kept for them, which the layouts mark “waits” and have 1/2 in"
                + " longer than planned.");
    // Nothing of the back's plywood waits.
    assertThat(at(steps, Stage.CUT).get(1).words()).doesNotContain("waits");
  }

  /** NIOSH's load constant is for one person: what two may lift is twice as much, and no more. */
  @ParameterizedTest
  @CsvSource({"23.1, 2 people", "46, 2 people", "46.1, 3 people", "92, 4 people", "92.1, hoist"})
  void should_call_as_many_people_as_the_weight_takes(double kg, String words) {
    assertThat(Cautions.lifting("The case", kg, 23, "51 lb").text()).contains(words);
  }

  static List<String> hazards(List<PlannedStep> steps) {
    return steps.stream().flatMap(s -> s.cautions().stream()).map(Caution::hazard).toList();
  }

  static LongStream seeds() {
    return LongStream.range(0, 60);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void should_put_the_usual_cautions_at_every_step_that_can_hurt(long seed) {
    Job job = RandomJobs.of(seed);
    List<PlannedStep> steps =
        BenchProgram.of(job, Borer.bore(job, CaseworkBuilder.build(job)), List.of()).printed();
    for (PlannedStep step : steps) {
      List<String> hazards = hazards(List.of(step));
      String items = String.join(" ", step.items());
      if (items.contains("; bit ")) {
        assertThat(hazards).contains("drill");
      }
      if (items.contains(" deep.") && step.stage() == Stage.JOINT) {
        assertThat(hazards).containsAnyOf("router", "drill");
      }
      if (step.words().startsWith("Cut by the layouts")) {
        assertThat(hazards).contains("saw", "dust");
      }
      if (step.stage() == Stage.STAND) {
        assertThat(hazards).contains("tip-over");
      }
    }
    // A refused case has no steps; any other has parts, which are marked.
    assertThat(at(steps, Stage.MARK).stream().anyMatch(s -> !s.items().isEmpty()))
        .isEqualTo(!steps.isEmpty());
    assertThat(steps.stream().map(PlannedStep::number))
        .containsExactlyElementsOf(
            LongStream.rangeClosed(1, steps.size()).mapToObj(n -> (int) n).toList());
  }
}
