package fourpin.strength.plate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Equations of a band have the answers that a general solver finds. */
class BandMatrixTest {

  private static final double NEAR = 1e-9;

  @ParameterizedTest
  @CsvSource({"1, 1", "2, 1", "5, 5", "7, 20", "40, 2", "60, 13", "200, 44"})
  void answersAreThoseOfTheWholeMatrix(int size, int width) {
    Random random = new Random(11);
    BandMatrix band = new BandMatrix(size, width);
    DMatrixRMaj whole = new DMatrixRMaj(size, size);
    fill(band, whole, width, random, 2.0 * width);
    double[] right = random.doubles(size).toArray();
    DMatrixRMaj answer = new DMatrixRMaj(size, 1);
    CommonOps_DDRM.solve(whole, new DMatrixRMaj(size, 1, true, right.clone()), answer);
    assertThat(band.factor()).isTrue();
    band.solve(right);
    assertThat(right).containsExactly(answer.data, within(NEAR));
  }

  @ParameterizedTest
  @CsvSource({"0", "-1"})
  void whatNothingHoldsIsNotSolved(double onDiagonal) {
    BandMatrix band = new BandMatrix(2, 2);
    band.add(0, 0, 1);
    band.add(1, 1, onDiagonal);
    assertThat(band.factor()).isFalse();
  }

  /** Entries up to 1 beside a diagonal that outweighs them. */
  private static void fill(
      BandMatrix band, DMatrixRMaj whole, int width, Random random, double diagonal) {
    for (int column = 0; column < whole.numCols; column++) {
      band.add(column, column, diagonal);
      whole.add(column, column, diagonal);
      for (int row = column + 1; row < Math.min(column + width, whole.numRows); row++) {
        double value = random.nextBoolean() ? random.nextDouble() : 0;
        band.add(row, column, value);
        whole.add(row, column, value);
        whole.add(column, row, value);
      }
    }
  }
}
