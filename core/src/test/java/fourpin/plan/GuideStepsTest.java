package fourpin.plan;

import static fourpin.job.SampleJobs.in;
import static fourpin.job.SampleJobs.job;
import static org.assertj.core.api.Assertions.assertThat;

import fourpin.bench.Step;
import fourpin.boring.Borer;
import fourpin.boring.Boring;
import fourpin.boring.way.BitSetting;
import fourpin.boring.way.CaseBoring;
import fourpin.boring.way.Clamping;
import fourpin.boring.way.Method;
import fourpin.casework.CaseworkBuilder;
import fourpin.job.CaseDraft;
import fourpin.job.Job;
import fourpin.job.Kick;
import fourpin.job.SampleJobs;
import fourpin.job.Way;
import fourpin.measure.Length;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What must hold at the bench while rows are bored through a guide. */
class GuideStepsTest {

  private final Job job = job(draft().order());
  private final Boring boring = Borer.bore(job, CaseworkBuilder.build(job));

  private static CaseDraft draft() {
    CaseDraft draft = new CaseDraft();
    draft.bays = List.of(SampleJobs.bay(2));
    draft.kick = Optional.of(new Kick(in("3 1/2"), in("2"), "ply"));
    return draft;
  }

  private BenchProgram program(Way way, UnaryOperator<Method.Guided> change) {
    Method.Guided sample = (Method.Guided) GuidedBookcase.boring(boring).method();
    CaseBoring bored = GuidedBookcase.boring(boring, way, change.apply(sample));
    return BenchProgram.of(job, boring, List.of(bored));
  }

  private static List<Step> steps(BenchProgram program) {
    return program.cases().getFirst().steps();
  }

  private static boolean isNotch(Step step) {
    return step instanceof Step.Channel c
        && c.piece().equals("L")
        && c.shape() == Step.Channel.Shape.NOTCH;
  }

  private static boolean isDado(Step step) {
    return step instanceof Step.Channel c
        && c.piece().equals("L")
        && c.shape() == Step.Channel.Shape.DADO;
  }

  private static boolean isBoring(Step step) {
    return step instanceof Step.BoreThrough b && b.piece().equals("L");
  }

  private static int last(List<Step> steps, Predicate<Step> which) {
    return IntStream.range(0, steps.size())
        .filter(i -> which.test(steps.get(i)))
        .max()
        .orElseThrow();
  }

  /** The block at the front rows bears where the kick will be. */
  @Test
  void should_bore_the_rows_before_the_end_is_notched_that_the_block_bears_on() {
    BenchProgram program = program(Way.ROUTER_GUIDE, m -> m);
    List<Step> steps = steps(program);
    assertThat(steps.stream().filter(GuideStepsTest::isNotch)).hasSize(1);
    assertThat(last(steps, GuideStepsTest::isNotch))
        .isGreaterThan(last(steps, GuideStepsTest::isBoring));
    assertThat(last(steps, GuideStepsTest::isDado))
        .isLessThan(last(steps, GuideStepsTest::isBoring));
    assertThat(ProgramCheck.of(boring.cases(), program)).isEmpty();
  }

  @Test
  void should_notch_with_the_other_joints_where_no_block_bears() {
    BenchProgram program = BenchProgram.of(job, boring, List.of());
    List<PlannedStep> notched =
        program.printed().stream()
            .filter(s -> s.items().stream().anyMatch(l -> l.startsWith("L: notch")))
            .toList();
    assertThat(notched).extracting(PlannedStep::stage).containsExactly(PlannedStep.Stage.JOINT);
  }

  private static Method.Guided moved(Method.Guided method, Length bored) {
    List<Clamping> clampings =
        method.clampings().stream()
            .map(
                c ->
                    new Clamping(
                        c.bay(),
                        c.part(),
                        c.face(),
                        c.row(),
                        c.edge(),
                        c.across(),
                        c.along(),
                        c.bearing(),
                        List.of(
                            new Clamping.Reach(Optional.empty(), List.of(2)),
                            new Clamping.Reach(Optional.of(new Clamping.Step(2, 2)), List.of(3)))))
            .toList();
    BitSetting bit = method.bit();
    return new Method.Guided(
        method.how(),
        method.guide(),
        new BitSetting(
            bit.tool(), bored, bit.runs(), bit.over(), bit.depth(), bit.point(), bit.reserve()),
        clampings);
  }

  private static String made(BenchProgram program) {
    return program.printed().stream()
        .map(PlannedStep::words)
        .filter(w -> w.startsWith("Make guide"))
        .findFirst()
        .orElseThrow();
  }

  /** The guide's holes are 3/8 in. */
  @Test
  void should_name_the_pin_that_fits_both_holes() {
    assertThat(made(program(Way.ROUTER_GUIDE, m -> moved(m, in("1/4")))))
        .contains(
            "make a stepped pin",
            "3/8 in thick as far as the guide is thick, 1/4 in thick below for the bored hole",
            "A plain pin of 1/4 in has 1/8 in of play in the guide.");
    assertThat(made(program(Way.HARDBOARD_STRIP, m -> moved(m, in("3/8")))))
        .contains("have a plain pin of 3/8 in at hand")
        .doesNotContain("stepped");
    assertThat(made(program(Way.ROUTER_GUIDE, m -> m))).doesNotContain(" pin ");
  }

  @Test
  void should_hold_up_the_routers_base_along_the_row() {
    String packing = "lay a packing strip 1/4 in thick, as thick as the guide, alongside it";
    assertThat(program(Way.ROUTER_GUIDE, m -> m).printed())
        .anySatisfy(s -> assertThat(s.words()).contains(packing));
    assertThat(program(Way.CENTRING_GUIDE, m -> m).printed())
        .noneSatisfy(s -> assertThat(s.words()).contains(packing));
  }
}
