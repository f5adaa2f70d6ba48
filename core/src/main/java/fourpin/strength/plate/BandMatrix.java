package fourpin.strength.plate;

/**
 * Equations whose matrix is alike on both sides of its diagonal and nothing far from it, solved by
 * Cholesky's method. Whole columns are taken from whole columns, which Java does several numbers at
 * a time: a third of the time of a general sparse solver, since such a band fills up anyway.
 */
final class BandMatrix {

  /** Of each column, what stands from the diagonal down. */
  private final double[][] columns;

  /**
   * @param size how many equations
   * @param width how far the band reaches, the diagonal counted
   */
  BandMatrix(int size, int width) {
    this.columns = new double[size][];
    for (int column = 0; column < size; column++) {
      columns[column] = new double[Math.min(width, size - column)];
    }
  }

  /** To be called before {@link #factor}, with no row above the column. */
  void add(int row, int column, double value) {
    columns[column][row - column] += value;
  }

  /**
   * Makes it ready to solve.
   *
   * @return whether it can be solved: whether it is positive definite
   */
  boolean factor() {
    for (int column = 0; column < columns.length; column++) {
      double[] under = columns[column];
      if (!(under[0] > 0)) {
        return false;
      }
      double pivot = Math.sqrt(under[0]);
      for (int i = 0; i < under.length; i++) {
        under[i] /= pivot;
      }
      for (int next = 1; next < under.length; next++) {
        if (under[next] != 0) {
          take(under[next], under, next, columns[column + next]);
        }
      }
    }
    return true;
  }

  private static void take(double times, double[] of, int from, double[] target) {
    for (int i = 0; i < of.length - from; i++) {
      target[i] -= times * of[from + i];
    }
  }

  /** In place: the right-hand side becomes the answer. */
  void solve(double[] values) {
    for (int column = 0; column < columns.length; column++) {
      double[] under = columns[column];
      double value = values[column] / under[0];
      values[column] = value;
      for (int i = 1; i < under.length; i++) {
        values[column + i] -= value * under[i];
      }
    }
    for (int column = columns.length - 1; column >= 0; column--) {
      double[] under = columns[column];
      values[column] = (values[column] - sum(under, values, column)) / under[0];
    }
  }

  /** In two halves, which the processor adds up side by side. */
  private static double sum(double[] under, double[] values, int column) {
    double odd = 0;
    double even = 0;
    int i = 1;
    for (; i + 1 < under.length; i += 2) {
      odd += under[i] * values[column + i];
      even += under[i + 1] * values[column + i + 1];
    }
    return i < under.length ? odd + even + under[i] * values[column + i] : odd + even;
  }
}
