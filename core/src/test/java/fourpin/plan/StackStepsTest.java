package fourpin.plan;

import static fourpin.job.SampleJobs.in;
import static org.assertj.core.api.Assertions.assertThat;

import fourpin.bench.Caution;
import fourpin.job.CaseDraft;
import fourpin.job.CaseOrder;
import fourpin.job.Joint;
import fourpin.job.SampleJobs;
import fourpin.job.Sizes;
import fourpin.plan.PlannedStep.Stage;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** How a case is set on another one and joined to it. */
class StackStepsTest {

  private static CaseDraft sized(String name, String width, String height, String depth) {
    CaseDraft draft = new CaseDraft();
    draft.name = name;
    draft.sizes = new Sizes(Sizes.Measured.OUTSIDE, in(width), in(height), in(depth));
    draft.bays = List.of(SampleJobs.bay(1));
    return draft;
  }

  private static CaseDraft hutch() {
    CaseDraft hutch = sized("Hutch", "32", "44", "12");
    hutch.kick = Optional.empty();
    hutch.bottomJoint = CaseDraft.joint(Joint.Kind.RABBET, "3/8");
    return hutch;
  }

  private static Plan plan(CaseDraft hutch) {
    CaseOrder base = sized("Base", "36", "34", "18").order();
    return Planner.plan(SampleJobs.job(base, hutch.order().standingOn(Optional.of(base.name()))));
  }

  private static List<PlannedStep> standing(Plan plan, String name) {
    return plan.steps().stream()
        .filter(s -> s.stage() == Stage.STAND && s.caseName().equals(name))
        .toList();
  }

  @Test
  void theUpperCaseIsLiftedByTwoAndScrewedDown() {
    Plan plan = plan(hutch());
    List<PlannedStep> steps = standing(plan, "Hutch");
    assertThat(steps).hasSize(2);
    assertThat(steps.getFirst().words())
        .contains("Base stands level and is fastened", "two people", "each side 2 in in");
    assertThat(steps.getFirst().cautions()).extracting(Caution::hazard).contains("lifting");
    assertThat(steps.getLast().words()).contains("screws through its bottom", "to the wall too");
    assertThat(steps.getLast().cautions()).extracting(Caution::hazard).contains("tip-over");
    assertThat(standing(plan, "Base")).hasSize(1);
  }

  /** Those along the back that "Will it hold" asks for, and two in front. */
  @Test
  void itsScrewsAreBought() {
    Plan plan = plan(hutch());
    double back =
        plan.figures().stream()
            .filter(f -> f.id().equals("hutch/stack-screws"))
            .findFirst()
            .orElseThrow()
            .value()
            .value();
    assertThat(plan.hardware())
        .filteredOn(h -> h.name().equals("wood screw to the case below"))
        .singleElement()
        .satisfies(
            h -> {
              assertThat(h.where()).isEqualTo("Hutch");
              assertThat(h.amount())
                  .isEqualTo(new HardwareItem.Amount.Pieces((long) back + 2, (long) back + 2));
            });
  }

  /** No screw through a bottom reaches a top that it does not lie on. */
  @Test
  void aRaisedBottomIsJoinedByStrips() {
    CaseDraft raised = hutch();
    raised.kick = new CaseDraft().kick;
    raised.bottomJoint = new CaseDraft().bottomJoint;
    Plan plan = plan(raised);
    assertThat(standing(plan, "Hutch").getLast().words()).contains("strips as high as the gap");
    assertThat(plan.hardware()).noneMatch(h -> h.name().equals("wood screw to the case below"));
  }
}
