package fourpin.strength;

import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.strength.ShelfOnSupports.Bearing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Works out what the supports of one shelf carry, and the load on its front edge that tips it. */
final class RowLoads {

  private static final Source SECTION = ShelfFigures.SECTION;
  private static final Source STATICS = ShelfFigures.STATICS;

  private final ShelfOnSupports shelf;
  private final LoadedShelf loaded;

  RowLoads(ShelfOnSupports shelf) {
    this.shelf = shelf;
    this.loaded = shelf.loaded();
  }

  List<Figure> supports() {
    return switch (shelf.bearing()) {
      case Bearing.WholeEnd() ->
          List.of(
              figure(
                  "end-load",
                  "load on each end",
                  force(loaded.reaction()),
                  "(q + g) (L + 2 c) / 2",
                  loads(),
                  STATICS));
      case Bearing.Rows rows ->
          List.of(
              support(rows, "front", "(q + g) (L + 2 c) / 2 × (D - b - y) / (D - a - b)"),
              support(rows, "back", "(q + g) (L + 2 c) / 2 × (y - a) / (D - a - b)"));
    };
  }

  private Figure support(Bearing.Rows rows, String row, String formula) {
    double between = depth() - rows.front().number() - rows.back().number();
    double front = (depth() - rows.back().number() - centre()) / between;
    double share = row.equals("front") ? front : 1 - front;
    List<Input> inputs = new ArrayList<>(loads());
    inputs.addAll(depths(rows));
    inputs.add(
        new Input(
            "y",
            "from the front edge to the middle of load and weight, the load spread evenly",
            length(centre()),
            STATICS));
    return figure(
        "load-" + row,
        "load on each " + row + " support" + twoRows(rows),
        force(loaded.reaction() * share),
        formula,
        inputs,
        STATICS);
  }

  private static String twoRows(Bearing.Rows rows) {
    return switch (rows.count()) {
      case TWO -> "";
      case THREE -> ", were there none half way between front and back";
    };
  }

  private double depth() {
    return shelf.section().depth();
  }

  /** Middle of load and own weight, from the front edge. */
  private double centre() {
    double own = shelf.section().weight() * shelf.section().centreOfWeight();
    return (loaded.load() * depth() / 2 + own) / loaded.total();
  }

  private List<Input> loads() {
    return List.of(
        new Input("q", shelf.load().title(), shelf.load().value(), shelf.load().source()),
        new Input(
            "g",
            "the shelf's own weight",
            Quantity.of(shelf.section().weight(), QuantityUnit.LINE_LOAD),
            SECTION),
        new Input("L", "span", shelf.span().value(), shelf.span().source()),
        new Input("c", "end over each support", length(shelf.overhang()), STATICS));
  }

  private List<Input> depths(Bearing.Rows rows) {
    return List.of(
        new Input("D", "depth of the shelf", length(depth()), SECTION),
        rows.front().input("a", "front edge to the front row"),
        rows.back().input("b", "back edge to the back row"));
  }

  /** Nothing for a shelf in joints. */
  Optional<Figure> tipping() {
    return shelf.bearing() instanceof Bearing.Rows rows
        ? Optional.of(tipping(rows))
        : Optional.empty();
  }

  /** The empty shelf tips about its front row; one that does so by itself takes no load at all. */
  private Figure tipping(Bearing.Rows rows) {
    double own = shelf.section().weight() * loaded.length();
    double a = rows.front().number();
    double centre = shelf.section().centreOfWeight();
    return figure(
        "tipping",
        "load on the front edge that tips the empty shelf",
        force(Math.max(0, own * (centre - a) / a)),
        "W (y - a) / a",
        List.of(
            new Input("W", "the shelf's own weight", force(own), SECTION),
            new Input("y", "from the front edge to the middle of weight", length(centre), SECTION),
            rows.front().input("a", "front edge to the front row")),
        STATICS);
  }

  private Figure figure(
      String id, String title, Quantity value, String formula, List<Input> inputs, Source source) {
    return new Figure(shelf.prefix() + "/" + id, title, value, formula, inputs, source);
  }

  private static Quantity length(double mm) {
    return Quantity.of(mm, QuantityUnit.LENGTH);
  }

  private static Quantity force(double newton) {
    return Quantity.of(newton, QuantityUnit.FORCE);
  }
}
