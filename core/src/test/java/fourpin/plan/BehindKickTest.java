package fourpin.plan;

import static fourpin.job.SampleJobs.in;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fourpin.casework.Axis;
import fourpin.casework.Part;
import fourpin.job.Back;
import fourpin.job.CaseDraft;
import fourpin.job.Joint;
import fourpin.job.Kick;
import fourpin.job.SampleJobs;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.measure.Length;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What strength counts on behind a kick is cut, bored for and put in like any other part. */
class BehindKickTest {

  private static final Length RECESS = in("2");

  private static Plan plan(CaseDraft draft, String behind) {
    draft.settings = draft.settings.with(Setting.BEHIND_KICK, new SettingValue.OfChoice(behind));
    return Planner.plan(SampleJobs.job(draft.order()));
  }

  private static CaseDraft bays(int count) {
    CaseDraft draft = new CaseDraft();
    draft.bays = Collections.nCopies(count, SampleJobs.bay(2));
    draft.kick = Optional.of(new Kick(in("3 1/2"), RECESS, "ply"));
    return draft;
  }

  private static List<Part> parts(Plan plan, Part.Role role) {
    return plan.cases().getFirst().parts().stream().filter(p -> p.role() == role).toList();
  }

  private static List<PlannedStep> making(Plan plan, String mark) {
    return plan.steps().stream()
        .filter(step -> step.parts().contains(mark) && step.words().contains("under the bottom"))
        .toList();
  }

  private static CutItem cut(Plan plan, String mark) {
    return plan.cutList().stream()
        .filter(item -> item.marks().contains(mark))
        .findFirst()
        .orElseThrow();
  }

  /** The bottom of the sample case is 12 in deep, the kick 23/32 in thick. */
  @Test
  void blocksReachFromTheKickToTheBackEdgeUnderEachPartition() {
    Plan plan = plan(bays(3), "blocks");
    List<Part> blocks = parts(plan, Part.Role.BLOCK);
    assertThat(blocks).extracting(Part::mark).containsExactly("K-P1", "K-P2");
    assertThat(blocks)
        .allSatisfy(
            b -> {
              assertThat(b.length().total()).isEqualTo(in("9 9/32"));
              assertThat(b.box().high().z()).isEqualTo(in("3 1/2"));
              assertThat(b.box().low().y()).isEqualTo(RECESS.plus(in("23/32")));
            });
    Part partition = plan.cases().getFirst().part("P1");
    assertThat(middle(blocks.getFirst())).isEqualTo(middle(partition));
    assertThat(cut(plan, "K-P2").marks()).containsExactly("K-P1", "K-P2");
    assertThat(making(plan, "K-P1")).hasSize(1);
    assertThat(plan.hardware())
        .filteredOn(item -> item.name().contains("blocks"))
        .extracting(HardwareItem::amount)
        .containsExactly(new HardwareItem.Amount.Pieces(4, 4));
  }

  private static Length middle(Part part) {
    return part.box().low().x().plus(part.box().size(Axis.X).over(2));
  }

  /** Level with the bottom's back edge, whatever back there is, and screwed as the kick is. */
  @ParameterizedTest
  @EnumSource(Back.Kind.class)
  void aSecondBoardStandsUnderTheBackEdge(Back.Kind kind) {
    CaseDraft draft = bays(1);
    draft.back = draft.back.map(b -> new Back(kind, b.material(), Optional.empty(), b.pieces()));
    Plan plan = plan(draft, "board");
    List<Part> kicks = parts(plan, Part.Role.KICK);
    assertThat(kicks).extracting(Part::mark).containsExactly("K", "K2");
    Part second = kicks.getLast();
    assertThat(second.box().high().y())
        .isEqualTo(plan.cases().getFirst().part("B").box().high().y());
    assertThat(cut(plan, "K2").marks()).containsExactly("K", "K2");
    assertThat(making(plan, "K2"))
        .singleElement()
        .satisfies(s -> assertThat(s.words()).contains("second kick", "4 screws"));
    assertThat(making(plan, "K").getFirst().words()).contains("2 in behind the front edges");
  }

  @Test
  void whatStandsThereIsWeighed() {
    Plan plan = plan(bays(1), "board");
    double more = volume(plan) - volume(plan(bays(1), "nothing"));
    Part second = plan.cases().getFirst().part("K2");
    assertThat(more).isCloseTo(second.box().volume() / 1e9, within(1e-9));
  }

  /** Of plywood, m³. */
  private static double volume(Plan plan) {
    return plan.totals().stream()
        .filter(figure -> figure.id().endsWith("/weight"))
        .flatMap(figure -> figure.inputs().stream())
        .filter(input -> input.meaning().equals("volume of ply"))
        .mapToDouble(input -> input.value().value())
        .sum();
  }

  @ParameterizedTest
  @CsvSource({"3, nothing", "1, blocks"})
  void nothingIsMadeThatNothingCountsOn(int count, String behind) {
    assertThat(parts(plan(bays(count), behind), Part.Role.KICK)).hasSize(1);
    assertThat(parts(plan(bays(count), behind), Part.Role.BLOCK)).isEmpty();
    CaseDraft without = bays(count);
    without.kick = Optional.empty();
    without.bottomJoint = CaseDraft.joint(Joint.Kind.RABBET, "3/8");
    assertThat(parts(plan(without, "board"), Part.Role.KICK)).isEmpty();
  }
}
