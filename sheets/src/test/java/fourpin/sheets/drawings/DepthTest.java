package fourpin.sheets.drawings;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.casework.Axis;
import fourpin.casework.Box;
import fourpin.casework.Part;
import fourpin.measure.Length;
import fourpin.measure.Sum;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DepthTest {

  private static final double SLANT = 0.35;

  static LongStream seeds() {
    return LongStream.range(0, 40);
  }

  /**
   * Blocks of a grid: of two that touch, the one in front, above or at the right hides the other.
   */
  @ParameterizedTest
  @MethodSource("seeds")
  void whatIsNearerIsPaintedLater(long seed) {
    Random random = new Random(seed);
    List<Part> parts = new ArrayList<>();
    for (int i = 0; i < 27; i++) {
      if (random.nextInt(3) > 0) {
        parts.add(cube(i % 3, i / 3 % 3, i / 9));
      }
    }
    Collections.shuffle(parts, random);
    List<Part> ordered = Depth.farthestFirst(parts, SLANT);
    assertThat(ordered).hasSameElementsAs(parts);
    for (int later = 0; later < ordered.size(); later++) {
      for (int earlier = 0; earlier < later; earlier++) {
        assertThat(isHiddenBy(ordered.get(later).box(), ordered.get(earlier).box())).isFalse();
      }
    }
  }

  /** Whether the other touches it in front, above or at the right. */
  private static boolean isHiddenBy(Box one, Box other) {
    boolean inFront = one.low().y().equals(other.high().y());
    boolean over = other.low().z().equals(one.high().z());
    boolean right = other.low().x().equals(one.high().x());
    boolean sameX = one.low().x().equals(other.low().x());
    boolean sameY = one.low().y().equals(other.low().y());
    boolean sameZ = one.low().z().equals(other.low().z());
    return (inFront && sameX && sameZ) || (over && sameX && sameY) || (right && sameY && sameZ);
  }

  private static Part cube(int x, int y, int z) {
    Box box = Box.of(mm(x), mm(x + 1), mm(y), mm(y + 1), mm(z), mm(z + 1));
    return new Part(
        "C" + x + y + z,
        "cube",
        Part.Role.SHELF,
        "wood",
        box,
        Axis.X,
        Axis.Z,
        Sum.of("a", mm(1)),
        Sum.of("b", mm(1)),
        List.of(),
        List.of(),
        Part.CutWhen.NOW);
  }

  private static Length mm(int hundreds) {
    return Length.mm(100L * hundreds);
  }
}
