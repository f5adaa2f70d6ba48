package fourpin.strength.plate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The rectangles that a plate is divided into, with lines through its middle, its supports and the
 * ends of its bands. Each crossing of lines has four unknowns: deflection, slope along x, slope
 * along y, twist.
 */
final class Mesh {

  static final int UNKNOWNS = 4;
  static final int SHAPES = Hermite.SHAPES * Hermite.SHAPES;

  private static final double ROUNDING = 1e-9;

  private final double length;
  private final Fold fold;
  private final Lines x;
  private final Lines y;

  /**
   * @param parts spaces along x of the whole plate; two thirds as many over the depth
   */
  Mesh(Plate plate, int parts, Fold fold) {
    this.length = plate.length();
    this.fold = fold;
    List<Double> alongX = new ArrayList<>(List.of(plate.length() / 2));
    List<Double> alongY = new ArrayList<>(List.of(plate.depth() / 2));
    plate.supports().forEach(s -> alongX.add(s.x()));
    plate.supports().forEach(s -> alongY.add(s.y()));
    double edge = 0;
    for (Plate.Band band : plate.bands()) {
      edge += band.depth();
      alongY.add(edge);
    }
    Lines whole = Lines.of(length, alongX, parts);
    this.x = fold == Fold.WHOLE ? whole : whole.upTo(length / 2);
    this.y = Lines.of(plate.depth(), alongY, overDepth(parts));
  }

  /** Spaces over the depth for so many along. */
  static int overDepth(int parts) {
    return Math.max(2, parts * 2 / 3);
  }

  Lines x() {
    return x;
  }

  Lines y() {
    return y;
  }

  int unknowns() {
    return UNKNOWNS * x.count() * y.count();
  }

  /** The number of the first unknown of a crossing. */
  int crossing(int column, int row) {
    return UNKNOWNS * (column * y.count() + row);
  }

  /** The unknown that a shape of an element belongs to. */
  int unknown(int column, int row, int shape) {
    int i = shape / Hermite.SHAPES;
    int j = shape % Hermite.SHAPES;
    return crossing(column + i / 2, row + j / 2) + i % 2 + 2 * (j % 2);
  }

  Fold fold() {
    return fold;
  }

  /** A place in the mirror. */
  double mirrored(double atX) {
    return length - atX;
  }

  /** Whether a place lies on the half that is only the image of the other. */
  boolean isImage(double atX) {
    return fold != Fold.WHOLE && atX > (1 + ROUNDING) * x.at(x.count() - 1);
  }

  /** Whether a place lies where the image begins. */
  boolean isMiddle(double atX) {
    return fold != Fold.WHOLE && Math.abs(atX / length - 0.5) < ROUNDING;
  }

  /** A value at a place as a sum over the unknowns of the element there. */
  Weights weights(double atX, double atY, int derivativeX, int derivativeY) {
    if (isImage(atX)) {
      boolean turned = (derivativeX % 2 == 1) != (fold == Fold.ODD);
      return weights(mirrored(atX), atY, derivativeX, derivativeY).times(turned ? -1 : 1);
    }
    int column = x.space(atX);
    int row = y.space(atY);
    double s = (atX - x.start(column)) / x.side(column);
    double t = (atY - y.start(row)) / y.side(row);
    double[] alongX = Hermite.shapes(derivativeX, s, x.side(column));
    double[] alongY = Hermite.shapes(derivativeY, t, y.side(row));
    int[] unknowns = new int[SHAPES];
    double[] factors = new double[SHAPES];
    for (int shape = 0; shape < SHAPES; shape++) {
      unknowns[shape] = unknown(column, row, shape);
      factors[shape] = alongX[shape / Hermite.SHAPES] * alongY[shape % Hermite.SHAPES];
    }
    return new Weights(unknowns, factors);
  }

  /** By how much each unknown counts. */
  record Weights(int[] unknowns, double[] factors) {

    Weights times(double times) {
      return new Weights(unknowns, Arrays.stream(factors).map(f -> times * f).toArray());
    }

    double of(double[] field) {
      double sum = 0;
      for (int i = 0; i < unknowns.length; i++) {
        sum += factors[i] * field[unknowns[i]];
      }
      return sum;
    }

    void addTo(double[] field, double times) {
      for (int i = 0; i < unknowns.length; i++) {
        field[unknowns[i]] += factors[i] * times;
      }
    }
  }
}
