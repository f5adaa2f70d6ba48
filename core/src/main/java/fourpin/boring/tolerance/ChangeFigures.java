package fourpin.boring.tolerance;

import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.measure.Source.Standing;
import java.util.ArrayList;
import java.util.List;

/** What changes bring, as figures that can be asked for. */
final class ChangeFigures {

  private static final Source ALTERED =
      new Source("errors altered by the change", "worked out as without it", Standing.DERIVED);

  private ChangeFigures() {}

  /**
   * Gap, odds and slope after each change, with what they are now.
   *
   * @param prefix of the ids; the change's number follows
   */
  static List<Figure> of(String prefix, List<Change> changes) {
    List<Figure> figures = new ArrayList<>();
    for (int i = 0; i < changes.size(); i++) {
      Change change = changes.get(i);
      String id = prefix + "-" + (i + 1);
      Change.Outcome now = change.before();
      Change.Outcome then = change.after();
      figures.add(figure(id, "gap", change, length(now.gap()), length(then.gap())));
      figures.add(figure(id, "odds", change, percent(now.odds()), percent(then.odds())));
      figures.add(figure(id, "slope", change, length(now.slope()), length(then.slope())));
    }
    return figures;
  }

  private static Figure figure(String id, String what, Change change, Quantity now, Quantity then) {
    return new Figure(
        id + "/" + what,
        what + " at the worst place with " + change.what(),
        then,
        "as " + what + " is worked out, with the change",
        List.of(new Input("n", what + " now", now, ALTERED)),
        ALTERED);
  }

  private static Quantity length(double mm) {
    return Quantity.of(mm, QuantityUnit.LENGTH);
  }

  private static Quantity percent(double share) {
    return Quantity.of(share * 100, QuantityUnit.PER_CENT);
  }
}
