package fourpin.plan;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.bench.Caution;
import fourpin.job.CaseDraft;
import fourpin.job.SampleJobs;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What strength counts on behind a kick is made by a step, since no cut list has it. */
class BehindKickTest {

  private static List<PlannedStep> steps(CaseDraft draft, String behind) {
    draft.settings = draft.settings.with(Setting.BEHIND_KICK, new SettingValue.OfChoice(behind));
    return Planner.plan(SampleJobs.job(draft.order())).steps().stream()
        .filter(step -> step.words().contains("no cut list has"))
        .toList();
  }

  private static CaseDraft bays(int count) {
    CaseDraft draft = new CaseDraft();
    draft.bays = Collections.nCopies(count, SampleJobs.bay(2));
    return draft;
  }

  /** The bottom of the sample case lies on a kick of 3 1/2 in. */
  @Test
  void blocksStandUnderEachPartition() {
    List<PlannedStep> steps = steps(bays(3), "blocks");
    assertThat(steps).hasSize(1);
    PlannedStep step = steps.getFirst();
    assertThat(step.parts()).containsExactly("P1", "P2");
    assertThat(step.words()).contains("below each partition", "3 1/2 in high");
    assertThat(step.cautions()).extracting(Caution::hazard).contains("saw");
  }

  @Test
  void aSecondBoardStandsUnderTheBackEdge() {
    List<PlannedStep> steps = steps(bays(1), "board");
    assertThat(steps).hasSize(1);
    assertThat(steps.getFirst().words()).contains("a second board", "under the back edge");
  }

  @ParameterizedTest
  @CsvSource({"3, nothing", "1, blocks"})
  void nothingIsMadeThatNothingCountsOn(int count, String behind) {
    assertThat(steps(bays(count), behind)).isEmpty();
    CaseDraft without = bays(count);
    without.kick = Optional.empty();
    assertThat(steps(without, "board")).isEmpty();
  }
}
