package fourpin.boring.way;

import static fourpin.boring.way.ToolKit.answer;
import static fourpin.boring.way.ToolKit.bushing;
import static fourpin.boring.way.ToolKit.draft;
import static fourpin.boring.way.ToolKit.router;
import static fourpin.boring.way.ToolKit.routerBit;
import static fourpin.boring.way.ToolKit.sheet;
import static fourpin.job.SampleJobs.in;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fourpin.job.Way;
import fourpin.measure.Figure;
import fourpin.measure.Length;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A guide for a router with a base of 6 in. */
class RouterGuideTest {

  private static WayAnswer routed(String stock) {
    return answer(
        Way.ROUTER_GUIDE,
        draft().order(),
        List.of(
            router("2"), bushing("3/8", "5/16", "3/16"), routerBit("1"), sheet("1/4", stock, "4")));
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
}
