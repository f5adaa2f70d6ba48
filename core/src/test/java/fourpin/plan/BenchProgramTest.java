package fourpin.plan;

import static fourpin.job.SampleJobs.bay;
import static fourpin.job.SampleJobs.in;
import static fourpin.job.SampleJobs.job;
import static org.assertj.core.api.Assertions.assertThat;

import fourpin.bench.Caution;
import fourpin.boring.Borer;
import fourpin.casework.CaseworkBuilder;
import fourpin.job.Bay;
import fourpin.job.CaseDraft;
import fourpin.job.Job;
import fourpin.job.RandomJobs;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Support;
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
    return BenchProgram.of(job, Borer.bore(job, CaseworkBuilder.build(job))).printed();
  }

  private static CaseDraft draft(Bay... bays) {
    CaseDraft draft = new CaseDraft();
    draft.bays = List.of(bays);
    return draft;
  }

  private static Bay on(Support support) {
    Bay pinned = bay(2);
    return new Bay(
        pinned.width(), List.of(), pinned.shelves(), Optional.of(support), pinned.load());
  }

  private static List<PlannedStep> at(List<PlannedStep> steps, Stage stage) {
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
        .containsExactly(List.of(), List.of("L"), List.of("R"), List.of("P1"));
    assertThat(bored.getFirst().items().getFirst())
        .endsWith(
            "(1) 10 7/32 in to (68) 77 7/32 in, every 1 in. Marks for the ends of panels: 3 31/32"
                + " in.");
    assertThat(bored.get(3).items())
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
    Support standards =
        new Support.Standards(
            Support.Mounting.SURFACE,
            in("5/8"),
            in("3/16"),
            in("1/2"),
            in("1/4"),
            in("1/16"),
            in("1/8"),
            in("96"));
    Support cleats =
        new Support.Cleats("oak", in("1 1/2"), in("3/4"), in("7/8"), in("3/4"), in("3/4"));
    List<PlannedStep> steps = at(printed(draft(on(standards), on(cleats))), Stage.ASSEMBLE);
    assertThat(steps.get(0).words())
        .isEqualTo(
            "Bay 1: cut the standards to 4 of 79 1/16 in, all from the same numbered end; screw"
                + " them on with that end down and standing on the panel below, front row 1 1/2 in"
                + " from the front edge, back row 9 27/32 in from the front edge (middle of the"
                + " standard).");
    assertThat(steps.get(1).words()).contains("front row 3/4 in from the front edge");
    assertThat(steps.get(1).parts()).containsExactly("P1", "R");
  }

  @Test
  void should_call_two_people_for_what_is_heavier_than_the_limit() {
    CaseDraft draft = draft(bay(2));
    set(draft, Setting.LIFT_LIMIT, new SettingValue.OfNumber(60));
    assertThat(hazards(at(printed(draft), Stage.STAND))).containsExactly("tip-over");
    set(draft, Setting.LIFT_LIMIT, new SettingValue.OfNumber(5));
    assertThat(hazards(at(printed(draft), Stage.STAND))).containsExactly("tip-over", "lifting");
    assertThat(hazards(at(printed(draft), Stage.CUT))).contains("lifting");
  }

  /** NIOSH's load constant is for one person: what two may lift is twice as much, and no more. */
  @ParameterizedTest
  @CsvSource({"23.1, 2 people", "46, 2 people", "46.1, 3 people", "92, 4 people", "92.1, hoist"})
  void should_call_as_many_people_as_the_weight_takes(double kg, String words) {
    assertThat(Cautions.lifting("The case", kg, 23).text()).contains(words);
  }

  private static List<String> hazards(List<PlannedStep> steps) {
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
        BenchProgram.of(job, Borer.bore(job, CaseworkBuilder.build(job))).printed();
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
