package fourpin.job;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.measure.Length;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The generated shops are such as the reader of shop files would take. */
class RandomShopTest {

  static LongStream seeds() {
    return LongStream.range(0, 300);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void isTheSameForTheSameSeed(long seed) {
    assertThat(RandomJobs.of(seed).shop()).isEqualTo(RandomJobs.of(seed).shop());
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void hasToolsThatDoNotContradictThemselves(long seed) {
    List<Tool> tools = RandomJobs.of(seed).shop().tools();

    assertThat(tools.stream().map(Tool::name)).doesNotHaveDuplicates();
    assertThat(tools).allSatisfy(t -> assertThat(contradiction(t)).isEqualTo("none"));
  }

  private static String contradiction(Tool tool) {
    boolean good =
        switch (tool) {
          case Tool.CentringBit b ->
              b.nose().isAtLeast(b.tip()) && b.diameter().isLessThan(b.tip());
          case Tool.Bushing b -> b.bore().isLessThan(b.outside()) && b.bore().isPositive();
          case Tool.PerforatedStrip s ->
              s.hole().isLessThan(s.pitch())
                  && s.fromEdge().plus(s.hole().over(2)).isLessThan(s.width())
                  && s.fromEdge().times(2).isAtLeast(s.hole())
                  && s.over().plus(s.fromEnd()).isLessThan(s.length());
          case Tool.Machine m -> m.diameters().stream().allMatch(Length::isPositive);
          default -> true;
        };
    return good ? "none" : tool.toString();
  }

  @Test
  void hasEveryKindOfToolInManyShops() {
    List<Class<?>> kinds = List.of(Tool.class.getPermittedSubclasses());

    assertThat(kinds).allSatisfy(k -> assertThat(shopsWith(k)).isBetween(50L, 299L));
  }

  private static long shopsWith(Class<?> kind) {
    return seeds()
        .filter(s -> RandomJobs.of(s).shop().tools().stream().anyMatch(kind::isInstance))
        .count();
  }
}
