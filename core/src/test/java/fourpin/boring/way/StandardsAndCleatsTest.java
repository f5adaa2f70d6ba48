package fourpin.boring.way;

import static fourpin.job.SampleJobs.bookcase;
import static fourpin.job.SampleJobs.in;
import static fourpin.job.SampleJobs.job;
import static fourpin.job.SampleJobs.shelves;
import static org.assertj.core.api.Assertions.assertThat;

import fourpin.boring.Borer;
import fourpin.boring.way.Method.Cutter;
import fourpin.boring.way.Method.How;
import fourpin.boring.way.WayAnswer.Reason;
import fourpin.boring.way.WayAnswer.Verdict;
import fourpin.casework.CaseworkBuilder;
import fourpin.job.Bay;
import fourpin.job.CaseOrder;
import fourpin.job.Job;
import fourpin.job.SampleJobs;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Shop;
import fourpin.job.Support;
import fourpin.job.Tool;
import fourpin.job.Way;
import fourpin.measure.Figure;
import fourpin.measure.Length;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Grooves 5/8 x 3/16 in for standards, and blanks for strips of 1 1/2 in with holes of 1 1/2. */
class StandardsAndCleatsTest {

  private static final Optional<BigDecimal> AT_HAND = Optional.empty();
  private static final Tool ROUTER =
      new Tool.Router("plunge router", in("2"), in("6"), in("10"), AT_HAND);

  private static Tool bit(String diameter, String reach) {
    return new Tool.RouterBit("bit " + diameter, in(diameter), in(reach), AT_HAND);
  }

  private static Tool saw(String cut) {
    return new Tool.TableSaw("saw " + cut, in(cut), in("2"), AT_HAND);
  }

  private static Support standards(Support.Mounting mounting) {
    return new Support.Standards(
        mounting, in("5/8"), in("3/16"), in("1/2"), in("1/4"), in("1/16"), in("1/8"), in("96"));
  }

  private static Support cleats() {
    return new Support.Cleats("oak", in("1 1/2"), in("3/4"), in("1 1/2"), in("1 1/4"), in("5/8"));
  }

  private static Bay on(Support support) {
    return new Bay(
        Optional.empty(),
        List.of(),
        Optional.of(shelves(2)),
        Optional.of(support),
        Optional.empty());
  }

  /** One bay, with grooves as wide as the standard. */
  private static CaseOrder order(Support support) {
    CaseOrder order = bookcase(on(support));
    return order.with(
        order
            .settings()
            .with(Setting.GROOVE_PLAY, new SettingValue.OfLength(Length.ZERO))
            .with(Setting.PITCH, new SettingValue.OfLength(in("2"))));
  }

  private static WayAnswer answer(Way way, CaseOrder order, Tool... tools) {
    Job job = job(order).with(new Shop("shop", List.of(tools)));
    return WaysTest.ways(job).borings().getFirst().answer(way);
  }

  private static WayAnswer standards(Tool... tools) {
    return answer(Way.GROOVED_STANDARDS, order(standards(Support.Mounting.LET_IN)), tools);
  }

  private static Method.Grooved grooved(WayAnswer answer) {
    return (Method.Grooved) answer.method().orElseThrow();
  }

  private static double figure(WayAnswer answer, String what) {
    return answer.figures().stream()
        .filter(f -> f.id().endsWith("/" + what))
        .map(Figure::value)
        .findFirst()
        .orElseThrow()
        .value();
  }

  /** Common practice: a groove of 5/8 in takes three passes of a bit of 1/4, two depths of 1/8. */
  @ParameterizedTest
  @CsvSource({"1/4, 3", "5/16, 2", "5/8, 1", "1/2, 2", "3/16, 4", "1/8, 5"})
  void should_cut_a_groove_in_as_many_passes_as_the_bit_goes_into_it(String bit, int passes) {
    Method.Grooved grooved = grooved(standards(ROUTER, bit(bit, "1")));
    assertThat(grooved.cutter()).isEqualTo(Cutter.ROUTER);
    assertThat(grooved.passes()).isEqualTo(passes);
    assertThat(grooved.depths()).containsExactly(in("1/8"), in("3/16"));
  }

  /** Four grooves of three passes, two deep; two rows with three fences each, and two stops. */
  @Test
  void should_count_the_work_of_grooves() {
    WayAnswer answer = standards(ROUTER, bit("1/4", "1"));
    assertThat(answer.verdict()).isEqualTo(Verdict.POSSIBLE);
    assertThat(answer.reasons()).isEmpty();
    assertThat(figure(answer, "cuts")).isEqualTo(4 * 3 * 2);
    assertThat(figure(answer, "set-ups")).isEqualTo(2 * 3 + 2);
    assertThat(figure(answer, "clampings")).isEqualTo(2);
    // 15 to make, 8 x 5 to set up, 2 x 1.5 to clamp, 24 x 30 s to cut.
    assertThat(figure(answer, "minutes")).isEqualTo(15 + 40 + 3 + 12);
  }

  @Test
  void should_take_what_is_at_hand_and_has_fewest_passes() {
    Tool dear =
        new Tool.RouterBit("new bit", in("5/8"), in("1"), Optional.of(new BigDecimal("20")));
    assertThat(grooved(standards(ROUTER, dear, bit("1/4", "1"), bit("1/2", "1"))).tool())
        .isEqualTo("bit 1/2");
    WayAnswer bought = standards(ROUTER, dear);
    assertThat(bought.verdict()).isEqualTo(Verdict.TO_BUY);
    assertThat(figure(bought, "to-buy")).isEqualTo(20);
  }

  @Test
  void should_take_a_bit_for_granted_and_say_why_those_stated_do_not_do() {
    WayAnswer answer = standards(ROUTER, bit("3/4", "1"), bit("1/2", "1/8"));
    assertThat(grooved(answer).tool()).isEqualTo("straight bit of 1/4 in (assumed)");
    assertThat(answer.reasons())
        .extracting(Reason::what)
        .containsExactly(
            "bit 3/4 cuts 3/4 in, wider than the groove of 5/8 in",
            "bit 1/2 cuts 1/8 in deep, the groove is 3/16 in",
            "a router with a straight bit of 1/4 in is taken for granted");
    assertThat(standards(bit("1/4", "1")).reasons().getFirst().what())
        .isEqualTo("no router plunges 3/16 in with bit 1/4");
  }

  /** Sides run past the bottom and the top, so that their grooves stop. */
  @Test
  void should_not_saw_grooves_that_stop() {
    WayAnswer answer = standards(saw("1/8"), ROUTER, bit("1/4", "1"));
    assertThat(grooved(answer).cutter()).isEqualTo(Cutter.ROUTER);
    assertThat(answer.reasons())
        .containsExactly(
            new Reason(
                "the grooves in left side stop at the panels between its ends and can't be sawn"
                    + " through with saw 1/8",
                "rout them"));
  }

  @Test
  void should_screw_standards_on() {
    WayAnswer answer =
        answer(Way.GROOVED_STANDARDS, order(standards(Support.Mounting.SURFACE)), ROUTER);
    assertThat(answer.method()).contains(new Method.ScrewedOn());
    // 79 1/16 in at most 6 apart: 15 screws in each of four.
    assertThat(figure(answer, "holes")).isEqualTo(4 * 15);
  }

  @Test
  void should_ask_for_other_supports() {
    for (Way way : List.of(Way.GROOVED_STANDARDS, Way.CLEAT_BLANK)) {
      WayAnswer answer = answer(way, order(SampleJobs.pins()));
      assertThat(answer.verdict()).isEqualTo(Verdict.IF_CHANGED);
      assertThat(answer.method()).isEmpty();
      assertThat(answer.reasons()).extracting(Reason::remedy).containsExactly("state " + way.key());
    }
  }

  private static WayAnswer cleats(String gang, Tool... tools) {
    CaseOrder order = order(cleats());
    SettingValue choice = new SettingValue.OfChoice(gang);
    return answer(Way.CLEAT_BLANK, order.with(order.settings().with(Setting.GANG, choice)), tools);
  }

  private static Tool large(String reach) {
    return new Tool.PlainBit("large bit", in("1 1/2"), in("1/8"), in(reach), AT_HAND);
  }

  private static Tool press(String stroke) {
    return new Tool.DrillPress("press", in("6"), in("16"), in(stroke), in("12"), AT_HAND);
  }

  /** Strips 3/4 in thick: two together ask for 1 1/2 in of bit and of quill. */
  @ParameterizedTest
  @CsvSource({
    "single, 3, 3, 1, set gang to pairs",
    "pairs, 3, 3, 2, ''",
    "pairs, 1 1/2, 1 1/2, 2, ''",
    "pairs, 1 1/4, 3, 1, a longer bit and more travel",
    "pairs, 3, 1 1/4, 1, a longer bit and more travel",
  })
  void should_stack_blanks_as_far_as_bit_and_quill_reach(
      String asked, String reach, String stroke, int stack, String remedy) {
    WayAnswer answer = cleats(asked, large(reach), press(stroke));
    Method.Blanks blanks = (Method.Blanks) answer.method().orElseThrow();
    assertThat(blanks.how()).isEqualTo(How.DRILL_PRESS);
    assertThat(blanks.stack()).isEqualTo(stack);
    assertThat(blanks.bit().stop()).isEqualTo(in("3/4").times(stack));
    assertThat(answer.reasons()).isEmpty();
    assertThat(answer.together().getFirst().remedy()).isEqualTo(remedy);
    assertThat(figure(answer, "clampings")).isEqualTo(2.0 / stack);
  }

  @Test
  void should_bore_blanks_by_hand_where_there_is_no_press() {
    WayAnswer answer = cleats("pairs");
    Method.Blanks blanks = (Method.Blanks) answer.method().orElseThrow();
    assertThat(blanks.how()).isEqualTo(How.BY_HAND);
    assertThat(blanks.stack()).isEqualTo(1);
    assertThat(blanks.bit().tool()).isEqualTo("large bit of 1 1/2 in (assumed)");
    assertThat(answer.reasons())
        .extracting(Reason::what)
        .containsExactly(
            "a bit of 1 1/2 in that reaches 3/4 in is taken for granted",
            "without a drill press holes as large as these are hard to bore square");
    assertThat(answer.together())
        .extracting(Reason::what)
        .containsExactly(
            "blanks are bored one by one: led by hand a bit leaves the square in a stack");
  }

  /** One hole for two notches: half of what stands in the strips. */
  @Test
  void should_count_each_hole_of_a_blank_once() {
    WayAnswer answer = cleats("single", large("3"), press("3"));
    Job job = job(order(cleats()));
    long notches =
        Borer.bore(job, CaseworkBuilder.build(job)).cases().getFirst().parts().stream()
            .filter(p -> p.mark().startsWith("1-L") || p.mark().startsWith("1-R"))
            .mapToLong(p -> p.features().size())
            .sum();
    assertThat(notches).isPositive();
    assertThat(figure(answer, "holes")).isEqualTo(notches / 2.0);
  }
}
