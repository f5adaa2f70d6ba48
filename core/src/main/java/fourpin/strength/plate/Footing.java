package fourpin.strength.plate;

import fourpin.strength.plate.Plate.Support;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Which supports of a plate the bent part of it rests on, and what those do for the others.
 *
 * @param bearing the numbers of the supports under the bent part
 */
record Footing(Plate plate, Fold fold, List<Integer> bearing) {

  /** Places nearer than this share of the length are one. */
  private static final double SAME = 1e-9;

  Footing {
    bearing = List.copyOf(bearing);
  }

  static Footing of(Plate plate, Fold fold) {
    Footing all = new Footing(plate, fold, List.of());
    List<Integer> bearing =
        IntStream.range(0, plate.supports().size()).filter(all::bears).boxed().toList();
    return new Footing(plate, fold, bearing);
  }

  int count() {
    return bearing.size();
  }

  Support support(int bearer) {
    return plate.supports().get(bearing.get(bearer));
  }

  /** An upside-down image leaves the middle line where it is, so that nothing carries it there. */
  private boolean bears(int support) {
    return switch (fold) {
      case WHOLE -> true;
      case EVEN -> beyond(support) <= 0;
      case ODD -> beyond(support) < 0;
    };
  }

  /** -1 for a support left of the middle line, 0 on it, 1 right of it. */
  private int beyond(int support) {
    double over = plate.supports().get(support).x() / plate.length() - 0.5;
    return Math.abs(over) < SAME ? 0 : (int) Math.signum(over);
  }

  /** The values of all supports from those of the bearing ones: pushes of halves as of wholes. */
  double[] spread(double[] values) {
    return IntStream.range(0, plate.supports().size())
        .mapToDouble(support -> times(support) * at(support, values))
        .toArray();
  }

  private double at(int support, double[] values) {
    int bearer = bearing.indexOf(bears(support) ? support : twin(support));
    return bearer < 0 ? 0 : values[bearer];
  }

  /** A support on the middle line carries both halves. */
  private int times(int support) {
    return switch (fold) {
      case WHOLE -> 1;
      case EVEN -> beyond(support) == 0 ? 2 : 1;
      case ODD -> -beyond(support);
    };
  }

  /**
   * The support in the mirror.
   *
   * @throws IllegalArgumentException if none stands there
   */
  int twin(int support) {
    Support of = plate.supports().get(support);
    double x = plate.length() - of.x();
    return IntStream.range(0, plate.supports().size())
        .filter(i -> isAt(plate.supports().get(i), x, of.y()))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("not alike on both sides: " + plate));
  }

  private boolean isAt(Support support, double x, double y) {
    double near = SAME * plate.length();
    return Math.abs(support.x() - x) < near && Math.abs(support.y() - y) < near;
  }

  /** Of values of all supports, those of the bearing ones. */
  double[] of(List<Double> values) {
    return bearing.stream().mapToDouble(values::get).toArray();
  }
}
