package fourpin.plan;

import static fourpin.job.SampleJobs.bay;
import static fourpin.job.SampleJobs.in;
import static fourpin.job.SampleJobs.job;
import static fourpin.plan.BenchProgramTest.at;
import static fourpin.plan.BenchProgramTest.draft;
import static fourpin.plan.BenchProgramTest.hazards;
import static org.assertj.core.api.Assertions.assertThat;

import fourpin.boring.Borer;
import fourpin.boring.Boring;
import fourpin.boring.way.CaseBoring;
import fourpin.boring.way.Method;
import fourpin.boring.way.Ways;
import fourpin.casework.CaseworkBuilder;
import fourpin.casework.Face;
import fourpin.job.CaseDraft;
import fourpin.job.Job;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Settings;
import fourpin.job.Way;
import fourpin.plan.PlannedStep.FaceUp;
import fourpin.plan.PlannedStep.Stage;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The steps of boring by each kind of method, as a maker reads them. */
class BoreStepsTest {

  /** 23/32 - 3/8 - 1/16 in. */
  private static final String LEFT_BEHIND =
      "The bit's point goes 1/16 in deeper; 9/32 in of wood stays behind it in the thinnest panel.";

  @Test
  void should_tell_how_the_guide_lies_on_every_panel() {
    Job job = job(draft(bay(2)).order());
    Boring boring = Borer.bore(job, CaseworkBuilder.build(job));
    BenchProgram program = BenchProgram.of(job, boring, List.of(GuidedBookcase.boring(boring)));
    assertThat(ProgramCheck.of(boring.cases(), program)).isEmpty();
    List<PlannedStep> bored = at(program.printed(), Stage.BORE);
    assertThat(bored.stream().map(PlannedStep::parts))
        .containsExactly(
            List.of(),
            List.of(),
            List.of(),
            List.of("L"),
            List.of("L"),
            List.of("L"),
            List.of("R"),
            List.of("R"),
            List.of("R"));
    assertThat(bored.get(0).words())
        .contains(
            "80 3/4 in long in all (80 in from zero to the far end, and 3/4 in behind zero, where"
                + " the block sits), 3 1/2 in wide",
            "draw the centre line of the holes",
            "screw two battens, each 3/4 in wide, 3/4 in high and 3 1/2 in long, one on either side",
            "stop faces on zero",
            "with two screws No. 6 (3.5 mm)",
            "leave them on, also when the guide is turned over");
    assertThat(bored.get(0).check())
        .contains("Bore through hole 2 into scrap, once with side A showing and once with side B");
    assertThat(bored.get(0).items().get(1))
        .isEqualTo("Guide “G”: on both sides, tape over hole 1: nothing is bored through it.");
    assertThat(bored.get(1).items())
        .containsExactly(
            "Spacer “G S1”: 5/32 in from side to side, which is what it keeps apart, 80 in long,"
                + " from hardboard offcut.");
    // 3/8 in hole + 1/4 in guide = 5/8 in stop (common practice).
    assertThat(bored.get(2).words())
        .isEqualTo(
            "Set the stop: hole 3/8 in + guide 1/4 in = 5/8 in, to the full diameter. The bit's point"
                + " goes 1/16 in deeper; 9/32 in of wood stays behind it in the thinnest panel.");
    assertThat(bored.get(3).words())
        .startsWith(
            "Lay L with the face up, the index end (BOTTOM) towards you: the index edge (FRONT)"
                + " is then on your left.");
    assertThat(bored.get(6).words()).contains("the index edge (FRONT) is then on your right.");
    assertThat(bored.get(4).words())
        .isEqualTo(
            "Clamp the guide at both ends and bore. Its hole 2 makes level 1 of the bay, hole 69"
                + " level 68.");
    assertThat(bored.get(4).items())
        .containsExactly(
            "L: guide “G” on the face, its side B showing: its block against the index end; its"
                + " index edge flush with the index edge.",
            "L: front row, bay 1: through guide “G” bore holes 2 to 69: 68 holes in all.");
    assertThat(bored.get(5).items())
        .containsExactly(
            "L: guide “G” on the face, its side B showing: its block against the index end; its far"
                + " edge against spacer “G S1” (5/32 in), which lies flush with the far edge.",
            "L: back row, bay 1: through guide “G” bore holes 2 to 69: 68 holes in all.");
    assertThat(bored.get(7).items().getFirst()).contains("its side A showing", "flush");
    assertThat(bored.get(4).check())
        .contains("From the index end to the centre of the last hole: 77 7/32 in.");
    assertThat(hazards(bored)).containsOnly("saw", "small pieces", "drill", "router", "dust");
    assertThat(hazards(List.of(bored.get(4)))).containsExactly("router", "dust");
  }

  /**
   * 23/32 - 2 x (3/8 + 1/16) is less than nothing; 1/4 deep, 23/32 - 2 x (1/4 + 1/16) = 3/32 is
   * left.
   */
  @Test
  void should_say_what_stays_between_opposite_holes_of_a_partition() {
    CaseDraft draft = draft(bay(2), bay(2));
    assertThat(stop(job(draft.order())))
        .endsWith("behind it in the thinnest panel; opposite holes of P1 meet.");
    draft.settings = deep(draft, "1/4");
    assertThat(stop(job(draft.order())))
        .endsWith("behind it in the thinnest panel, 3/32 in between opposite holes of P1.");
    assertThat(stop(job(draft(bay(2)).order()))).doesNotContain("opposite");
  }

  private static Settings deep(CaseDraft draft, String depth) {
    return draft.settings.with(Setting.HOLE_DEPTH, new SettingValue.OfLength(in(depth)));
  }

  /** Nothing is stated: holes of 3/8 in by hand, 23/32 - 3/8 - 1/8 = 7/32 behind the point. */
  @Test
  void should_set_and_try_the_stop_before_boring_by_hand() {
    Job job = job(draft(bay(2)).order());
    Boring boring = Borer.bore(job, CaseworkBuilder.build(job));
    BenchProgram program = BenchProgram.of(job, boring, Ways.of(job, boring).borings());
    List<PlannedStep> bored = at(program.printed(), Stage.BORE);
    assertThat(bored.get(1).words())
        .startsWith(
            "Set the stop: hole 3/8 in, to the full diameter. The bit's point goes 1/8 in deeper;"
                + " 7/32 in of wood stays behind it in the thinnest panel.");
    assertThat(bored.get(1).check())
        .isEqualTo(
            "Bore into scrap of the same stock: the hole is 3/8 in deep to the full diameter and"
                + " takes a pin. Look at the stop again after every row.");
    assertThat(hazards(List.of(bored.get(1)))).containsExactly("drill", "dust");
    assertThat(ProgramCheck.of(boring.cases(), program)).isEmpty();
  }

  private static String stop(Job job) {
    Boring boring = Borer.bore(job, CaseworkBuilder.build(job));
    BenchProgram program = BenchProgram.of(job, boring, List.of(GuidedBookcase.boring(boring)));
    return at(program.printed(), Stage.BORE).stream()
        .map(PlannedStep::words)
        .filter(words -> words.startsWith("Set the stop"))
        .findFirst()
        .orElseThrow();
  }

  /** Each face of each panel has a sheet; what is done once for all panels has none. */
  @Test
  void should_put_what_is_done_to_a_face_on_its_sheet() {
    Job job = job(draft(bay(2), bay(2)).order());
    Boring boring = Borer.bore(job, CaseworkBuilder.build(job));
    assertThat(
            BenchProgram.of(job, boring, List.of()).printed().stream()
                .filter(s -> s.stage() == Stage.BORE)
                .map(PlannedStep::sheet))
        .containsExactly(
            List.of(),
            List.of(new FaceUp("L", Face.RIGHT)),
            List.of(new FaceUp("R", Face.LEFT)),
            List.of(new FaceUp("P1", Face.LEFT)),
            List.of(new FaceUp("P1", Face.RIGHT)));
    assertThat(
            BenchProgram.of(job, boring, List.of()).printed().stream()
                .filter(s -> s.stage() != Stage.BORE))
        .allSatisfy(s -> assertThat(s.sheet()).isEmpty());
  }

  /** Back rows run with the back edge along the fence: 12 - 9 27/32 = 2 5/32 in. */
  @Test
  void should_run_the_nearer_edge_along_the_fence() {
    Job job = job(draft(bay(2)).order());
    Boring boring = Borer.bore(job, CaseworkBuilder.build(job));
    Method press =
        new Method.Marked(
            Method.How.DRILL_PRESS,
            ((Method.Guided) GuidedBookcase.boring(boring).method()).bit(),
            List.of());
    CaseBoring at = GuidedBookcase.boring(boring, Way.DRILL_PRESS, press);
    List<PlannedStep> bored = at(BenchProgram.of(job, boring, List.of(at)).printed(), Stage.BORE);
    assertThat(bored.get(1).words()).contains("Set the depth stop and try it", LEFT_BEHIND);
    assertThat(bored.get(1).items())
        .containsExactly(
            "L: front row, bay 1, on the face, the index edge to the fence, centre of the bit 1 1/2"
                + " in from the fence: marks 1 to 68 of stick “North”, 68 holes, its zero at the"
                + " index end; bit 1/4 in, 3/8 in deep.",
            "L: back row, bay 1, on the face, the far edge to the fence, centre of the bit 2 5/32 in"
                + " from the fence: marks 1 to 68 of stick “North”, 68 holes, its zero at the index"
                + " end; bit 1/4 in, 3/8 in deep.");
  }

  @Test
  void should_tell_a_machine_the_coordinates_of_every_row() {
    Job job = job(draft(bay(2)).order());
    Boring boring = Borer.bore(job, CaseworkBuilder.build(job));
    Method machine =
        new Method.Programmed(
            "line borer", ((Method.Guided) GuidedBookcase.boring(boring).method()).bit());
    List<CaseBoring> borings = List.of(GuidedBookcase.boring(boring, Way.MACHINE, machine));
    List<PlannedStep> bored = at(BenchProgram.of(job, boring, borings).printed(), Stage.BORE);
    assertThat(bored.getFirst().words())
        .contains("Bore on the line borer by these coordinates, seen from above: zero")
        .contains("Try the depth in scrap of the same stock first. " + LEFT_BEHIND);
    assertThat(bored.getFirst().items().getLast())
        .isEqualTo(
            "L: back row, bay 1, on the face, 9 27/32 in from the index edge: 68 holes, at 10 7/32"
                + " in to 77 7/32 in, every 1 in, from the index end; bit 1/4 in, 3/8 in deep.");
    assertThat(hazards(bored)).containsOnly("machine", "dust");
  }

  /** Left and right panels have the same coordinates and are mirrored; a partition is both. */
  @Test
  void should_tell_a_machine_which_corner_is_zero() {
    Job job = job(draft(bay(2), bay(2)).order());
    Boring boring = Borer.bore(job, CaseworkBuilder.build(job));
    Method machine =
        new Method.Programmed(
            "line borer", ((Method.Guided) GuidedBookcase.boring(boring).method()).bit());
    List<CaseBoring> borings = List.of(GuidedBookcase.boring(boring, Way.MACHINE, machine));
    List<PlannedStep> bored = at(BenchProgram.of(job, boring, borings).printed(), Stage.BORE);
    assertThat(bored).hasSize(4);
    for (PlannedStep step : bored) {
      boolean left = step.sheet().getFirst().face() == Face.RIGHT;
      assertThat(step.words())
          .contains("the index edge (FRONT) is then on your " + (left ? "left." : "right."))
          .contains(
              left
                  ? "zero is the lower left corner, the index edge lies at the left stop, and"
                      + " distances from it grow to the right."
                  : "zero is the lower right corner, the index edge lies at the right stop, and"
                      + " distances from it grow to the left.");
    }
  }
}
