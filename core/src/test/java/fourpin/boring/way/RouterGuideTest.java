package fourpin.boring.way;

import static fourpin.boring.way.ToolKit.answer;
import static fourpin.boring.way.ToolKit.bushing;
import static fourpin.boring.way.ToolKit.draft;
import static fourpin.boring.way.ToolKit.routerBit;
import static fourpin.boring.way.ToolKit.sheet;
import static fourpin.job.SampleJobs.in;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fourpin.job.Setting;
import fourpin.job.Settings;
import fourpin.job.Tool;
import fourpin.job.Way;
import fourpin.measure.Figure;
import fourpin.measure.Length;
import fourpin.measure.Unit;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A guide for a router with a base of 6 in. */
class RouterGuideTest {

  private static WayAnswer routed(String stock) {
    return routedBy("6", stock);
  }

  private static WayAnswer routedBy(String base, String stock) {
    return answer(
        Way.ROUTER_GUIDE,
        draft().order(),
        List.of(
            new Tool.Router("router", in("2"), in(base), in("10"), Optional.empty()),
            bushing("3/8", "5/16", "3/16"),
            routerBit("1"),
            sheet("1/4", stock, "4")));
  }

  private static Method.Guided method(WayAnswer answer) {
    return (Method.Guided) answer.method().orElseThrow();
  }

  /** Half the base, 3 in, and 1 1/2 in for a clamp. */
  @ParameterizedTest
  @CsvSource({"96", "32"})
  void should_reach_beyond_the_last_hole_for_the_base_and_a_clamp(String stock) {
    Guide guide = method(routed(stock)).guide();
    Length beyond = guide.length().minus(guide.holes().getLast().along());
    assertThat(beyond).isEqualTo(in("4 1/2"));
    assertThat(guide.length().plus(guide.block()).isMoreThan(in(stock))).isFalse();
  }

  /**
   * The first hole lies 10 7/32 in above the foot. A base of 22 in keeps 1/8 in off the block, one
   * of 20 1/4 in would need a spacer of 1/32 in and gets one as thick as the block, 3/4 in.
   */
  @ParameterizedTest
  @CsvSource({"6, 10 7/32, 0", "20, 10 7/32, 0", "20 1/4, 10 31/32, 3/4", "22, 11 1/8, 29/32"})
  void should_keep_the_first_hole_off_the_block_by_half_the_base(
      String base, String first, String spacer) {
    Method.Guided method = method(routedBy(base, "120"));
    assertThat(method.guide().holes().getFirst().along()).isEqualTo(in(first));
    assertThat(method.clampings())
        .allSatisfy(c -> assertThat(c.along().negated()).isEqualTo(in(spacer)));
    List<String> spacers =
        Spacers.of(method).list().stream()
            .map(Spacers.Spacer::number)
            .filter("E1"::equals)
            .toList();
    assertThat(spacers).hasSize(in(spacer).isPositive() ? 1 : 0);
  }

  /** 20 min, 45 s a hole, and 10 min for the pin where 3/8 + 1/64 in leads and 1/4 in is bored. */
  @ParameterizedTest
  @CsvSource({"96, 0", "32, 10"})
  void should_count_the_time_for_a_stepped_pin(String stock, double pin) {
    WayAnswer answer = routed(stock);
    Method.Guided method = method(answer);
    assertThat(method.isMovedAlong()).isEqualTo(pin > 0);
    Figure making =
        answer.figures().stream().filter(f -> f.id().endsWith("/making")).findFirst().orElseThrow();
    double holes = method.guide().holes().size();
    assertThat(making.value().value()).isCloseTo(20 + holes * 45 / 60 + pin, within(1e-9));
  }

  /** Two rows on each of two sides, 2 min each, beside what is clamped and bored anyway. */
  @ParameterizedTest
  @CsvSource({"96, 0", "32, 4"})
  void should_count_the_time_that_the_block_takes(String stock, double refits) {
    WayAnswer answer = routed(stock);
    double minutes = figure(answer, "/router-guide/minutes").value().value();
    double before =
        figure(answer, "/making").value().value()
            + figure(answer, "/set-ups").value().value() * standard(Setting.SET_UP_MINUTES)
            + figure(answer, "/clampings").value().value() * standard(Setting.CLAMP_MINUTES)
            + figure(answer, "/router-guide/holes").value().value()
                * standard(Setting.ROUTER_SECONDS)
                / 60;
    assertThat(minutes - before).isCloseTo(refits * 2, within(1e-9));
  }

  private static double standard(Setting setting) {
    return Settings.standard(Unit.INCH).number(setting);
  }

  private static Figure figure(WayAnswer answer, String end) {
    return answer.figures().stream().filter(f -> f.id().endsWith(end)).findFirst().orElseThrow();
  }
}
