package fourpin.plan;

import static fourpin.job.SampleJobs.job;
import static org.assertj.core.api.Assertions.assertThat;

import fourpin.bench.Caution;
import fourpin.boring.Borer;
import fourpin.boring.Boring;
import fourpin.boring.way.Method;
import fourpin.casework.CaseworkBuilder;
import fourpin.job.CaseDraft;
import fourpin.job.Job;
import fourpin.job.SampleJobs;
import fourpin.job.Way;
import java.util.List;
import java.util.function.Consumer;
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

  /** How a panel lies is said first, then each of its two rows. */
  private static void twoPanels(List<PlannedStep> bored, Caution tool, Consumer<String> lying) {
    assertThat(bored).hasSize(6);
    for (int i = 0; i < bored.size(); i++) {
      boolean lays = i % 3 == 0;
      if (lays) {
        lying.accept(bored.get(i).words());
      } else {
        assertThat(bored.get(i).cautions()).containsExactly(tool, Cautions.DUST);
      }
    }
  }

  @Test
  void should_bring_panel_and_guide_under_the_drill_press_together() {
    twoPanels(
        bored(Method.How.DRILL_PRESS),
        Cautions.PRESS,
        words ->
            assertThat(words)
                .contains(
                    " Panel and guide go under the drill press together, both ends held up level"
                        + " with the table: bring each hole of the guide under the bit. "));
  }

  @Test
  void should_say_nothing_of_a_drill_press_where_the_drill_is_held_by_hand() {
    twoPanels(
        bored(Method.How.BY_HAND),
        Cautions.DRILL,
        words -> assertThat(words).doesNotContain("drill press"));
  }
}
