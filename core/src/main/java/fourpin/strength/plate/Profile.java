package fourpin.strength.plate;

/**
 * The half over the diagonal of a matrix that is alike on both sides of it, solved by Cholesky's
 * way. Of each row all is kept up to the last that goes together with it or one before: what is
 * nothing there fills up. Rows lie in one piece, so that whole runs of them are reckoned at once.
 */
final class Profile {

  /** Each from its diagonal on. */
  private final double[][] rows;

  Profile(Numbering numbering) {
    int size = numbering.count();
    int[] last = new int[size];
    for (int column = 0; column < size; column++) {
      last[numbering.first(column)] = column;
    }
    this.rows = new double[size][];
    int reaches = 0;
    for (int row = 0; row < size; row++) {
      reaches = Math.max(reaches, last[row]);
      rows[row] = new double[reaches - row + 1];
    }
  }

  /** What stands under the diagonal is left out. */
  void add(int row, int column, double value) {
    if (row <= column) {
      rows[row][column - row] += value;
    }
  }

  /**
   * Puts the upper factor in its place.
   *
   * @return whether it has one
   */
  boolean decompose() {
    for (int k = 0; k < rows.length; k++) {
      double[] row = rows[k];
      if (!(row[0] > 0)) {
        return false;
      }
      scale(row, 1 / Math.sqrt(row[0]));
      for (int i = 1; i < row.length; i++) {
        subtract(rows[k + i], row, i, row[i]);
      }
    }
    return true;
  }

  private static void scale(double[] row, double by) {
    for (int j = 0; j < row.length; j++) {
      row[j] *= by;
    }
  }

  /** As many times as stated what stands in a row from some place on. */
  private static void subtract(double[] from, double[] row, int start, double times) {
    int count = row.length - start;
    for (int j = 0; j < count; j++) {
      from[j] -= times * row[start + j];
    }
  }

  /** Once it is decomposed. */
  double[] solve(double[] right) {
    double[] solved = right.clone();
    for (int k = 0; k < rows.length; k++) {
      double[] row = rows[k];
      solved[k] /= row[0];
      for (int j = 1; j < row.length; j++) {
        solved[k + j] -= solved[k] * row[j];
      }
    }
    for (int k = rows.length - 1; k >= 0; k--) {
      solved[k] = (solved[k] - rest(rows[k], solved, k)) / rows[k][0];
    }
    return solved;
  }

  private static double rest(double[] row, double[] solved, int at) {
    double sum = 0;
    for (int j = 1; j < row.length; j++) {
      sum += row[j] * solved[at + j];
    }
    return sum;
  }
}
