package fourpin.plan;

import static fourpin.job.SampleJobs.bay;
import static fourpin.job.SampleJobs.job;
import static fourpin.plan.BenchProgramTest.at;
import static fourpin.plan.BenchProgramTest.draft;
import static fourpin.plan.BenchProgramTest.hazards;
import static org.assertj.core.api.Assertions.assertThat;

import fourpin.boring.Borer;
import fourpin.boring.Boring;
import fourpin.boring.way.CaseBoring;
import fourpin.boring.way.Method;
import fourpin.casework.CaseworkBuilder;
import fourpin.casework.Face;
import fourpin.job.Job;
import fourpin.job.Way;
import fourpin.plan.PlannedStep.Stage;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The steps of boring by each kind of method, as a maker reads them. */
class BoreStepsTest {

  @Test
  void should_tell_how_the_guide_lies_on_every_panel() {
    Job job = job(draft(bay(2)).order());
    Boring boring = Borer.bore(job, CaseworkBuilder.build(job));
    BenchProgram program = BenchProgram.of(job, boring, List.of(GuidedBookcase.boring(boring)));
    assertThat(ProgramCheck.of(boring.cases(), program)).isEmpty();
    List<PlannedStep> bored = at(program.printed(), Stage.BORE);
    assertThat(bored.stream().map(PlannedStep::parts))
        .containsExactly(List.of(), List.of(), List.of("L"), List.of("R"));
    assertThat(bored.get(0).words())
        .contains("80 3/4 in long, 3 1/2 in wide", "Screw a block 3/4 in thick on behind zero");
    assertThat(bored.get(0).items().get(1))
        .isEqualTo("Guide “G”: on both sides, tape over hole 1: nothing is bored through it.");
    // 3/8 in hole + 1/4 in guide = 5/8 in stop (common practice).
    assertThat(bored.get(1).words())
        .isEqualTo(
            "Set the stop: hole 3/8 in + guide 1/4 in = 5/8 in. The bit's point goes 1/16 in deeper;"
                + " 9/32 in of wood stays behind it in the thinnest panel.");
    assertThat(bored.get(2).items())
        .containsExactly(
            "L: guide “G” on the face, its side B showing: its block against the index end; its"
                + " index edge flush with the index edge.",
            "L: front row, bay 1: through guide “G” bore holes 2 to 69: 68 holes in all.",
            "L: guide “G” on the face, its side B showing: its block against the index end; its far"
                + " edge against a strip 5/32 in wide, which lies flush with the far edge.",
            "L: back row, bay 1: through guide “G” bore holes 2 to 69: 68 holes in all.");
    assertThat(bored.get(3).items().getFirst()).contains("its side A showing", "flush");
    assertThat(bored.get(2).check())
        .contains("77 7/32 in in the front row, bay 1, 77 7/32 in in the back row, bay 1");
    assertThat(hazards(bored)).containsOnly("saw", "small pieces", "drill", "router", "dust");
    assertThat(hazards(List.of(bored.get(2)))).containsExactly("router", "dust");
  }

  /** Back rows run with the back edge along the fence: 12 - 9 27/32 = 2 5/32 in. */
  @Test
  void should_run_the_nearer_edge_along_the_fence() {
    Job job = job(draft(bay(2)).order());
    Boring boring = Borer.bore(job, CaseworkBuilder.build(job));
    Method press =
        new Method.Marked(
            Method.How.DRILL_PRESS, ((Method.Guided) GuidedBookcase.boring(boring).method()).bit());
    CaseBoring at = GuidedBookcase.boring(boring, Way.DRILL_PRESS, press);
    List<PlannedStep> bored = at(BenchProgram.of(job, boring, List.of(at)).printed(), Stage.BORE);
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
        .startsWith("Bore on the line borer by these coordinates, seen from above with the index");
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
    Map<String, String> words =
        at(BenchProgram.of(job, boring, borings).printed(), Stage.BORE).stream()
            .collect(Collectors.toMap(s -> s.parts().getFirst(), PlannedStep::words));
    String left =
        "up zero is the lower left corner, index edge at the left stop, and distances from it grow"
            + " to the right. ";
    String right =
        "up zero is the lower right corner, index edge at the right stop, and distances from it"
            + " grow to the left. ";
    assertThat(words.get("L")).contains("With the face " + left).doesNotContain("reverse");
    assertThat(words.get("R")).contains("With the face " + right).doesNotContain("reverse");
    Face up = PieceLayout.of(boring.cases().getFirst().part("P1")).face();
    assertThat(words.get("P1"))
        .contains(
            "With the face " + (up == Face.RIGHT ? left : right),
            "With the reverse " + (up == Face.RIGHT ? right : left),
            "from one side stop to the other");
  }
}
