package fourpin.boring.way;

import static fourpin.boring.way.ToolKit.answer;
import static fourpin.boring.way.ToolKit.centring;
import static fourpin.boring.way.ToolKit.draft;
import static fourpin.boring.way.ToolKit.drill;
import static fourpin.boring.way.ToolKit.sheet;
import static fourpin.boring.way.ToolKit.strip;
import static fourpin.job.SampleJobs.in;
import static org.assertj.core.api.Assertions.assertThat;

import fourpin.boring.way.Guide.GuideHole;
import fourpin.job.Tool.StripKind;
import fourpin.job.Way;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Guides that are shorter than the rows: 68 levels 1 in apart, the lowest 10 7/32 in up. */
class FewestMovesTest {

  private static Method.Guided by(String stock) {
    WayAnswer answer =
        answer(
            Way.CENTRING_GUIDE,
            draft().order(),
            List.of(drill(), centring("3/8", "9/32", "1 1/4"), sheet("1/4", stock, "4")));
    return (Method.Guided) answer.method().orElseThrow();
  }

  /**
   * A piece of 20 in has room for 8 holes from 10 7/32 in on, with 2 in beyond the last and 3/4 in
   * for the block, and for 9 below, no nearer to the block than 7/8 in: 17 holes, which take 8
   * levels and then 16 at a time, 5 places in all. Without the lowest it is 15 at a time, and still
   * 5. Holes that save no move are left out.
   */
  @ParameterizedTest
  @CsvSource({
    // stock, holes, of these below the lowest level, places of a row
    "96, 68, 0, 1",
    "79, 35, 1, 2",
    "60, 35, 1, 2",
    "47, 35, 1, 2",
    "20, 16, 8, 5",
    "14, 11, 9, 8",
  })
  void should_take_as_many_holes_as_save_a_move(String stock, int holes, int below, int places) {
    Method.Guided method = by(stock);
    Guide guide = method.guide();
    assertThat(guide.holes()).hasSize(holes);
    assertThat(guide.holes().stream().map(GuideHole::along).filter(in("10 7/32")::isMoreThan))
        .hasSize(below);
    assertThat(method.clampings()).allSatisfy(c -> assertThat(c.reaches()).hasSize(places));
    assertThat(guide.length().plus(guide.block()).isMoreThan(in(stock))).isFalse();
    assertThat(guide.holes().getFirst().along().isLessThan(in("7/8"))).isFalse();
  }

  /** Its first holes are there anyway, and serve once the strap is moved along. */
  @Test
  void should_use_the_holes_of_a_strip_below_the_lowest_level() {
    WayAnswer answer =
        answer(
            Way.STEEL_STRAP,
            draft().order(),
            List.of(
                drill(),
                centring("3/8", "9/32", "1 1/4"),
                strip(StripKind.STEEL, "5/16", "1/2", "24")));
    Method.Guided method = (Method.Guided) answer.method().orElseThrow();
    List<Clamping.Reach> reaches = method.clampings().getFirst().reaches();
    GuideHole first = method.guide().hole(reaches.getFirst().holes().getFirst());
    GuideHole pin = method.guide().hole(reaches.get(1).step().orElseThrow().pin());
    assertThat(first.along()).isEqualTo(in("10 7/32"));
    assertThat(pin.along().isLessThan(in("1 1/4"))).isTrue();
    assertThat(pin.use()).isEqualTo(Guide.Use.BORED);
  }

  /** Against every number of holes below and above, for rows with gaps. */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
  void should_find_no_guide_with_fewer_moves_nor_with_fewer_holes_for_as_many(int seed) {
    SplittableRandom random = new SplittableRandom(seed);
    List<Integer> levels =
        IntStream.range(0, 40).filter(i -> i == 0 || random.nextInt(4) > 0).boxed().toList();
    int below = random.nextInt(8);
    int above = 2 + random.nextInt(12);
    FewestMoves moves = new FewestMoves(below, above, holes -> laid(levels, holes));
    Optional<Walk.Holes> found = moves.holes();
    assertThat(found).isPresent();
    long places = places(levels, found.get());
    for (int b = 0; b <= below; b++) {
      for (int a = 1; a <= above; a++) {
        Walk.Holes other = new Walk.Holes(b, a + b);
        assertThat(places(levels, other)).isGreaterThanOrEqualTo(places);
        if (places(levels, other) == places) {
          assertThat(other.count()).isGreaterThanOrEqualTo(found.get().count());
        }
      }
    }
  }

  private static long places(List<Integer> levels, Walk.Holes holes) {
    return laid(levels, holes).orElse(Long.MAX_VALUE);
  }

  /** The places that the guide is carried to, one by one. */
  private static OptionalLong laid(List<Integer> levels, Walk.Holes holes) {
    return Walk.along(levels, holes, Integer.MAX_VALUE).stream().mapToLong(List::size).findAny();
  }
}
