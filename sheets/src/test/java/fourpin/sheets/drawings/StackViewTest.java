package fourpin.sheets.drawings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fourpin.casework.BuiltCase;
import fourpin.casework.CaseworkBuilder;
import fourpin.job.CaseOrder;
import fourpin.job.Job;
import fourpin.job.Sizes;
import fourpin.sheets.SampleJobs;
import fourpin.sheets.drawings.Stacks.Placed;
import fourpin.sheets.drawings.Stacks.Stack;
import fourpin.sheets.paint.Box;
import fourpin.sheets.paint.Drawing;
import fourpin.sheets.paint.Mark;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A case drawn on the one that it stands on. */
class StackViewTest {

  private final Job job = stacked(SampleJobs.readingRoom());
  private final List<BuiltCase> cases = CaseworkBuilder.build(job).cases();
  private final Drafter drafter = Drafter.of(job, 175, 220);

  /** The sample's case, and a narrower, shallower one on it, of the same bays. */
  private static Job stacked(Job job) {
    CaseOrder lower = job.cases().getFirst();
    Sizes sizes = lower.sizes();
    Sizes less =
        new Sizes(
            sizes.measured(),
            sizes.width().minus(SampleJobs.in("4")),
            sizes.height(),
            sizes.depth().minus(SampleJobs.in("1")));
    CaseOrder upper = named("upper", lower).with(less).standingOn(Optional.of(lower.name()));
    return job.with(List.of(lower, upper));
  }

  private static CaseOrder named(String name, CaseOrder of) {
    return new CaseOrder(
        name,
        of.quantity(),
        of.sizes(),
        of.material(),
        of.bays(),
        of.topJoint(),
        of.bottomJoint(),
        of.partitionJoint(),
        of.fixedShelfJoint(),
        of.back(),
        of.kick(),
        of.faceFrame(),
        of.doors(),
        of.edging(),
        of.load(),
        of.settings());
  }

  @Test
  void eachCaseIsDrawnOnceOnItsOwn() {
    List<Stack> stacks = Stacks.of(cases);
    assertThat(stacks).hasSize(1);
    assertThat(stacks.getFirst().name()).isEqualTo("upper on " + cases.getFirst().order().name());
    assertThat(Stacks.high(cases.subList(0, 1))).isEmpty();
  }

  @Test
  void middleStandsOverMiddleAndBacksInLine() {
    Placed upper = Stacks.of(cases).getFirst().upper().getFirst();
    assertThat(upper.right()).isCloseTo(2 * 25.4, within(1e-6));
    assertThat(upper.back()).isCloseTo(25.4, within(1e-6));
    assertThat(upper.up()).isCloseTo(cases.getFirst().outside().high().z().mm(), within(1e-6));
  }

  @Test
  void theFrontIsAsHighAsBothTogether() {
    Drawing front = new StackView(drafter, Stacks.of(cases).getFirst()).front();
    Box parts = Mark.around(front.marks().stream().filter(m -> m instanceof Mark.Group).toList());
    double high = 2 * front.scale().toPaper(cases.getFirst().outside().high().z().mm());
    // Lines are half a millimetre thick.
    assertThat(parts.height()).isCloseTo(high, within(1.0));
  }
}
