package fourpin.boring;

import static fourpin.job.SampleJobs.in;
import static org.assertj.core.api.Assertions.assertThat;

import fourpin.measure.Length;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class OutlineTest {

  /** A disc of 1/4 in at (0, 0) against a rectangle; the 3-4-5 triangle gives the slanting one. */
  @ParameterizedTest
  @CsvSource({
    "1, 2, -1, 1, 7/8",
    "-1, 1, 3/8, 2, 1/4",
    "3, 9, 4, 9, 4 7/8",
    "-1, 1, 1/8, 1, 0",
    "-1, 1, -1/16, 1, -3/16"
  })
  void should_measure_from_a_hole_to_a_joint(
      String front, String back, String bottom, String top, String gap) {
    Outline hole = new Outline.Disc(in("0"), in("0"), in("1/4"));
    Outline joint = new Outline.Rectangle(signed(front), signed(back), signed(bottom), signed(top));
    assertThat(Outline.gap(hole, joint)).isEqualTo(signed(gap));
    assertThat(Outline.gap(joint, hole)).isEqualTo(signed(gap));
  }

  static Length signed(String inches) {
    return inches.startsWith("-") ? in(inches.substring(1)).negated() : in(inches);
  }

  static LongStream seeds() {
    return LongStream.range(0, 300);
  }

  /** The rectangle's points are sampled finely; no other way to reach it is shorter. */
  @ParameterizedTest
  @MethodSource("seeds")
  void should_agree_with_sampled_points(long seed) {
    Random random = new Random(seed);
    double[] at = random.doubles(4, -50, 50).toArray();
    double front = Math.min(at[0], at[1]);
    double back = Math.max(at[0], at[1]);
    double bottom = Math.min(at[2], at[3]);
    double top = Math.max(at[2], at[3]);
    double y = random.nextDouble(60, 90);
    double z = random.nextDouble(-90, 90);
    double nearest = Double.MAX_VALUE;
    for (int i = 0; i <= 400; i++) {
      for (int k = 0; k <= 400; k++) {
        double dy = front + (back - front) * i / 400 - y;
        double dz = bottom + (top - bottom) * k / 400 - z;
        nearest = Math.min(nearest, Math.sqrt(dy * dy + dz * dz));
      }
    }
    Outline disc = new Outline.Disc(mm(y), mm(z), mm(10));
    Outline rectangle = new Outline.Rectangle(mm(front), mm(back), mm(bottom), mm(top));
    assertThat(Outline.gap(disc, rectangle).mm() + 5).isBetween(nearest - 0.3, nearest + 1e-5);
  }

  private static Length mm(double millimetres) {
    return Length.nearestMm(millimetres);
  }
}
