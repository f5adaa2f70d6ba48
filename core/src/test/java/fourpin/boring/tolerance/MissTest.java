package fourpin.boring.tolerance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Against planes laid through three of four points, for every choice of the fourth. */
class MissTest {

  private static final double WIDE = 800;
  private static final double DEEP = 250;
  private static final double[][] PLACES = {{0, 0}, {0, DEEP}, {WIDE, 0}, {WIDE, DEEP}};

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void theGapIsThatUnderAPlaneThroughAnyThree(long seed) {
    Random random = new Random(seed);
    double[] z = random.doubles(4, -2, 2).toArray();
    double gap = Math.abs(Miss.GAP.of(z[0], z[1], z[2], z[3]));
    for (int fourth = 0; fourth < 4; fourth++) {
      assertThat(Math.abs(planeAt(fourth, z) - z[fourth]))
          .as("fourth support %d of %s", fourth, z)
          .isCloseTo(gap, within(1e-9));
    }
  }

  @Test
  void aRigidShelfRestsOnTheThreeThatLeaveTheFourthBelow() {
    double[] z = {0.5, 0, 0, 0};
    int below = 0;
    for (int fourth = 0; fourth < 4; fourth++) {
      below += planeAt(fourth, z) >= z[fourth] ? 1 : 0;
    }
    assertThat(below).as("high front left pin: it lies on two sets of three in turn").isEqualTo(2);
    assertThat(Miss.GAP.of(0.5, 0, 0, 0)).isEqualTo(0.5);
  }

  @ParameterizedTest
  @CsvSource({
    "1, 1, 1, 1, 0, 0, all alike",
    "2, 2, 0, 0, 0, 2, the left higher",
    "1, 0, 1, 0, 0, 0, the front higher",
    "3, 2, 1, 0, 0, 2, both",
    "1, 0, 0, 1, 2, 0, across",
    "0, 1, 1, 0, -2, 0, across the other way"
  })
  void commonErrorsAndSlopesDoNotRock(
      double lf, double lb, double rf, double rb, double gap, double slope, String what) {
    assertThat(Miss.GAP.of(lf, lb, rf, rb)).as(what).isEqualTo(gap);
    assertThat(Miss.SLOPE.of(lf, lb, rf, rb)).as(what).isEqualTo(slope);
  }

  /** Height at one corner of the plane through the three others, by Cramer's rule. */
  private static double planeAt(int fourth, double[] z) {
    double[][] m = new double[3][];
    double[] rhs = new double[3];
    int row = 0;
    for (int i = 0; i < 4; i++) {
      if (i != fourth) {
        m[row] = new double[] {1, PLACES[i][0], PLACES[i][1]};
        rhs[row++] = z[i];
      }
    }
    double all = determinant(m);
    double height = 0;
    double[] at = {1, PLACES[fourth][0], PLACES[fourth][1]};
    for (int column = 0; column < 3; column++) {
      double[][] replaced = {m[0].clone(), m[1].clone(), m[2].clone()};
      for (int r = 0; r < 3; r++) {
        replaced[r][column] = rhs[r];
      }
      height += at[column] * determinant(replaced) / all;
    }
    return height;
  }

  private static double determinant(double[][] m) {
    return m[0][0] * (m[1][1] * m[2][2] - m[1][2] * m[2][1])
        - m[0][1] * (m[1][0] * m[2][2] - m[1][2] * m[2][0])
        + m[0][2] * (m[1][0] * m[2][1] - m[1][1] * m[2][0]);
  }
}
