package fourpin.strength;

import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.strength.PlateAnswer.Half;
import fourpin.strength.ShelfOnSupports.Bearing;
import java.util.ArrayList;
import java.util.List;

/** The figures of one shelf with its load on one half of its length, and nothing on the other. */
final class HalfLoaded {

  private static final String WHERE = ", p = q / D from 0 to l / 2, nothing beyond";

  private final ShelfOnSupports shelf;
  private final Half half;
  private final List<Input> bending;

  /**
   * @param bending what its bending follows from
   */
  HalfLoaded(ShelfOnSupports shelf, Half half, List<Input> bending) {
    this.shelf = shelf;
    this.half = half;
    this.bending = bending;
  }

  List<Figure> all() {
    List<Figure> all = new ArrayList<>();
    all.add(
        figure(
            "plate-half",
            "sag at the most, the load on one half of the length alone",
            Quantity.of(half.sag(), QuantityUnit.LENGTH),
            "max w(x, y)" + WHERE));
    if (shelf.bearing() instanceof Bearing.Rows) {
      all.addAll(onSupports());
    }
    return all;
  }

  private List<Figure> onSupports() {
    return List.of(
        figure(
            "plate-half-twist",
            "how far a corner then lies out of the plane of the other three",
            Quantity.of(half.twist(), QuantityUnit.LENGTH),
            "|w(0, 0) - w(l, 0) - w(0, D) + w(l, D)|" + WHERE),
        figure(
            "plate-half-push",
            "load on the most loaded support then",
            Quantity.of(half.push(), QuantityUnit.FORCE),
            "max r" + WHERE),
        figure(
            "plate-half-lifted",
            "supports that the shelf then lifts off",
            Quantity.count(half.lifted()),
            "number of supports with r = 0" + WHERE));
  }

  private Figure figure(String id, String title, Quantity value, String formula) {
    return new Figure(
        shelf.prefix() + "/" + id, title, value, formula, bending, PlateFigures.PLATE);
  }
}
