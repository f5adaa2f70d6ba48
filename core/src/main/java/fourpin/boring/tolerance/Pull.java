package fourpin.boring.tolerance;

import fourpin.boring.tolerance.ErrorModel.Position;
import fourpin.boring.tolerance.ErrorModel.Term;
import fourpin.boring.tolerance.Miss.Point;
import java.util.Map;
import java.util.TreeMap;

/**
 * By how much an error goes into what makes a shelf rock.
 *
 * @param gap into the gap of the corners
 * @param left into what the left middle pin stands proud, {@code right} the right one; zero where
 *     there are no middle pins
 */
record Pull(double gap, double left, double right) {

  /**
   * The pulls of all causes of one place, by their index in the model; what cancels is left out.
   */
  static Map<Integer, Pull> of(ErrorModel model, Position position) {
    Map<Integer, Pull> pulls = new TreeMap<>();
    position
        .points()
        .forEach(
            (point, terms) -> {
              for (Term term : terms) {
                pulls.merge(term.cause(), at(point, position, term.factor()), Pull::plus);
              }
            });
    pulls
        .entrySet()
        .removeIf(e -> model.causes().get(e.getKey()).deviation() * e.getValue().first() == 0);
    return pulls;
  }

  private static Pull at(Point point, Position position, double factor) {
    double proud = position.isOnSix() ? factor : 0;
    return new Pull(
        Miss.GAP.factor(point) * factor,
        Miss.LEFT_PROUD.factor(point) * proud,
        Miss.RIGHT_PROUD.factor(point) * proud);
  }

  private Pull plus(Pull other) {
    return new Pull(gap + other.gap, left + other.left, right + other.right);
  }

  /** The first that is not zero; zero if all are. */
  double first() {
    return gap != 0 ? gap : left != 0 ? left : right;
  }

  /** The same in proportion, the first 1; adding zero makes one of the two zeros. */
  Pull direction() {
    return new Pull(gap / first() + 0.0, left / first() + 0.0, right / first() + 0.0);
  }
}
