package fourpin.boring;

import static fourpin.job.SampleJobs.in;
import static org.assertj.core.api.Assertions.assertThat;

import fourpin.measure.Length;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class LatticeTest {

  /**
   * A 72 in side, pitch 1 1/4, wish 3 from each end: 53 holes leave 1 over; a start at 3 1/2 makes
   * the row symmetric (worked by hand). The others by hand too: ends - 2 start over whole pitches.
   */
  @ParameterizedTest
  @CsvSource({
    "72, 1 1/4, 3, 3 1/2, 2 7/8, 1/4",
    "72, 1 1/4, 3 1/2, 3 1/2, 3 1/2, 0",
    "84, 1, 10 7/32, 10 1/2, 10, 7/16",
    "60, 2, 7, 7, 7, 0",
    "60, 2, 6 1/2, 7, 6, 1"
  })
  void should_name_the_balanced_start(
      String side, String pitch, String start, String up, String nearest, String miss) {
    Lattice lattice = new Lattice(in(start), in(pitch));
    assertThat(lattice.balancedUpwards(in(side)).start()).isEqualTo(in(up));
    assertThat(lattice.missWhenTurned(in(side))).isEqualTo(in(miss));
    Length shift = lattice.balancedNearest(in(side)).start().minus(in(start)).abs();
    assertThat(shift).isEqualTo(Length.min(in(up).minus(in(start)), in(start).minus(in(nearest))));
  }

  /**
   * Published 32 mm convention, copies of a cabinetmaking article: 32 mm pitch, first hole 9.5 mm
   * in balanced panels of 19 mm; such panels are a whole number of pitches and 19 mm long.
   */
  @ParameterizedTest
  @CsvSource({"691", "723", "2003", "2291"})
  void should_agree_with_the_32_mm_convention(long length) {
    Lattice lattice = new Lattice(Length.nearestMm(9.5), Length.mm(32));
    assertThat(lattice.missWhenTurned(Length.mm(length))).isEqualTo(Length.ZERO);
    List<Length> heights = lattice.within(Length.ZERO, Length.mm(length));
    assertThat(Length.mm(length).minus(heights.getLast())).isEqualTo(Length.nearestMm(9.5));
  }

  @Test
  void should_count_the_holes_of_a_row() {
    // 72 - 2 x 3 = 66 = 52 x 1 1/4 + 1: 53 holes.
    assertThat(new Lattice(in("3"), in("1 1/4")).within(in("3"), in("69"))).hasSize(53);
    assertThat(new Lattice(in("3 1/2"), in("1 1/4")).within(in("3"), in("69"))).hasSize(53);
    assertThat(new Lattice(in("3"), in("1")).within(in("5 1/2"), in("5 3/4"))).isEmpty();
  }

  static LongStream seeds() {
    return LongStream.range(0, 200);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void should_be_the_same_from_both_ends_when_balanced(long seed) {
    Random random = new Random(seed);
    Length ends = Length.inches(640 + random.nextInt(5000), 64);
    Lattice wished =
        new Lattice(
            Length.inches(10 + random.nextInt(600), 64),
            Length.inches(20 + random.nextInt(100), 64));
    for (Lattice lattice : List.of(wished.balancedUpwards(ends), wished.balancedNearest(ends))) {
      List<Length> row = lattice.within(lattice.start(), ends.minus(lattice.start()));
      List<Length> turned = row.reversed().stream().map(ends::minus).toList();
      assertThat(turned).isEqualTo(row);
      assertThat(lattice.start().minus(wished.start()).abs().times(2).isMoreThan(wished.pitch()))
          .isFalse();
    }
  }
}
