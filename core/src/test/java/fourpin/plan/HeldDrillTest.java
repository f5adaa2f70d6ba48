package fourpin.plan;

import static fourpin.job.SampleJobs.job;
import static org.assertj.core.api.Assertions.assertThat;

import fourpin.boring.Borer;
import fourpin.boring.Boring;
import fourpin.boring.way.Method;
import fourpin.casework.CaseworkBuilder;
import fourpin.job.CaseDraft;
import fourpin.job.Job;
import fourpin.job.SampleJobs;
import fourpin.job.Way;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A strap is bored through by hand or under the drill press, and the steps say which. */
class HeldDrillTest {

  private static List<PlannedStep> bored(Method.How how) {
    CaseDraft draft = new CaseDraft();
    draft.bays = List.of(SampleJobs.bay(2));
    Job job = job(draft.order());
    Boring boring = Borer.bore(job, CaseworkBuilder.build(job));
    Method.Guided sample = (Method.Guided) GuidedBookcase.boring(boring).method();
    Method method = new Method.Guided(how, sample.guide(), sample.bit(), sample.clampings());
    BenchProgram program =
        BenchProgram.of(
            job, boring, List.of(GuidedBookcase.boring(boring, Way.STEEL_STRAP, method)));
    return program.printed().stream()
        .filter(s -> s.stage() == PlannedStep.Stage.BORE && !s.parts().isEmpty())
        .toList();
  }

  @Test
  void should_bring_panel_and_guide_under_the_drill_press_together() {
    assertThat(bored(Method.How.DRILL_PRESS))
        .hasSize(2)
        .allSatisfy(
            step -> {
              assertThat(step.words())
                  .startsWith(
                      "Clamp the guide as each line says and bore. Panel and guide go under the"
                          + " drill press together, both ends held up level with the table: bring"
                          + " each hole of the guide under the bit. ");
              assertThat(step.cautions()).containsExactly(Cautions.PRESS, Cautions.DUST);
            });
  }

  @Test
  void should_say_nothing_of_a_drill_press_where_the_drill_is_held_by_hand() {
    assertThat(bored(Method.How.BY_HAND))
        .hasSize(2)
        .allSatisfy(
            step -> {
              assertThat(step.words()).doesNotContain("drill press");
              assertThat(step.cautions()).containsExactly(Cautions.DRILL, Cautions.DUST);
            });
  }
}
