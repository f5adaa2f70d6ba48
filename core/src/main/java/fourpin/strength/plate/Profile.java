package fourpin.strength.plate;

import org.ejml.data.DMatrixSparseCSC;

/**
 * The half over the diagonal of a matrix that is alike on both sides of it. Of each column, all is
 * kept from the first row on: what is nothing there fills up when it is solved.
 */
final class Profile {

  private final DMatrixSparseCSC matrix;

  Profile(Numbering numbering) {
    int size = numbering.count();
    int all = 0;
    int[] starts = new int[size + 1];
    for (int column = 0; column < size; column++) {
      all += column - numbering.first(column) + 1;
      starts[column + 1] = all;
    }
    this.matrix = new DMatrixSparseCSC(size, size, all);
    matrix.col_idx = starts;
    matrix.nz_length = all;
    matrix.indicesSorted = true;
    for (int column = 0; column < size; column++) {
      int row = numbering.first(column);
      for (int i = starts[column]; i < starts[column + 1]; i++) {
        matrix.nz_rows[i] = row++;
      }
    }
  }

  /** What stands under the diagonal is left out. */
  void add(int row, int column, double value) {
    if (row <= column) {
      matrix.nz_values[matrix.col_idx[column + 1] - 1 - (column - row)] += value;
    }
  }

  DMatrixSparseCSC matrix() {
    return matrix;
  }
}
