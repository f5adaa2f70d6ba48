package fourpin.plan;

import fourpin.cutting.Layout;
import fourpin.cutting.Origin;
import fourpin.cutting.SheetPattern;
import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.measure.Source.Standing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How many sheets a layout takes, and how near that is proven to be to the best.
 *
 * @param id "job/oak-ply/sheets"
 * @param what "oak-ply, sheets"
 * @param cost whether the prices are money or areas
 * @param before the number of the last sheet of earlier cuttings
 */
public record LayoutFigures(String id, String what, QuantityUnit cost, int before) {

  /** Of a first cutting. */
  public LayoutFigures(String id, String what, QuantityUnit cost) {
    this(id, what, cost, 0);
  }

  /** The symbol of what stock on hand is worth, in a gap. */
  static final String WORTH = "W";

  private static final double PER_CENT = 100;
  private static final double COINS = 100;
  private static final double SQUARE_MM_PER_SQUARE_M = 1e6;

  private static final Source COUNTED =
      new Source("the layouts, sawn on trial", "", Standing.DERIVED);

  private static final Source STATED =
      new Source("price or size stated of this stock", "", Standing.STATED);

  /** The bound holds for these parts on this stock with this saw, whatever the cuts. */
  private static final Source BOUND =
      new Source(
          "Gilmore and Gomory, Operations Research 9 (1961), and Farley, Operations Research 38"
              + " (1990); Fekete and Schepers, Mathematical Programming 91 (2001)",
          "worths of parts of which no sheet holds more than it costs",
          Standing.FROM_MEMORY);

  /** All of them. */
  public HowNear of(Layout layout) {
    return new HowNear(
        sheets(layout), fewest(layout), cost(layout), least(layout), gap(layout), proof(layout));
  }

  private static HowNear.Proof proof(Layout layout) {
    if (!layout.unplaced().isEmpty()) {
      return HowNear.Proof.PARTS_LEFT_OUT;
    }
    return layout.isProven() ? HowNear.Proof.PROVEN : HowNear.Proof.NOT_PROVEN;
  }

  private Figure sheets(Layout layout) {
    List<Input> inputs = new ArrayList<>();
    for (SheetPattern pattern : layout.patterns()) {
      inputs.add(number(inputs.size() + 1, pattern));
    }
    inputs.add(fewestNeeded(layout));
    return new Figure(
        id, what, Quantity.count(layout.sheets()), "n1 + n2 + ..., at least L", inputs, COUNTED);
  }

  private Input number(int layout, SheetPattern pattern) {
    return new Input(
        "n" + layout,
        "cut as layout S" + (before + layout),
        Quantity.count(pattern.quantity()),
        COUNTED);
  }

  private static Input fewestNeeded(Layout layout) {
    return new Input(
        "L",
        "no layout of these parts needs fewer",
        Quantity.count(layout.bound().sheets()),
        BOUND);
  }

  private Figure fewest(Layout layout) {
    return new Figure(
        id + "-fewest",
        what + ": no layout needs fewer",
        Quantity.count(layout.bound().sheets()),
        "L",
        List.of(fewestNeeded(layout)),
        BOUND);
  }

  private Figure cost(Layout layout) {
    List<Input> inputs = new ArrayList<>();
    for (int i = 1; i <= layout.patterns().size(); i++) {
      SheetPattern pattern = layout.patterns().get(i - 1);
      inputs.add(number(i, pattern));
      Quantity each = cost(pattern.sheet().price());
      inputs.add(new Input("c" + i, counted() + " of one of these", each, STATED));
    }
    return new Figure(
        id + "-cost",
        what + ": " + counted(),
        cost(layout.price()),
        "n1 c1 + n2 c2 + ...",
        inputs,
        COUNTED);
  }

  private String counted() {
    return cost == QuantityUnit.MONEY ? "cost" : "area";
  }

  private Figure least(Layout layout) {
    Quantity least = cost(layout.bound().price());
    Input bound = new Input("L", "no layout of these parts comes to less", least, BOUND);
    return new Figure(
        id + "-least",
        what + ": no layout comes to less " + counted(),
        least,
        "L",
        List.of(bound),
        BOUND);
  }

  /**
   * By cost; by number if the layout is free, since its stock is on hand; as an amount where the
   * least is nothing, of which nothing is a share.
   */
  Figure gap(Layout layout) {
    boolean free = layout.price() == 0;
    Quantity found = free ? Quantity.count(layout.sheets()) : cost(layout.price());
    Quantity least = free ? Quantity.count(layout.bound().sheets()) : cost(layout.bound().price());
    String counted = free ? "number" : counted();
    boolean amount = least.value() == 0;
    return new Figure(
        id + "-gap",
        what + ": " + counted + " above the least possible, at most",
        amount ? found : share(free ? layout.sheetGap() : layout.priceGap()),
        amount ? "C - L" : "100 (C - L) / L",
        Stream.of(
                Stream.of(new Input("C", counted + " of the layouts", found, COUNTED)),
                onHand(layout).stream(),
                Stream.of(new Input("L", "no layout of these parts comes to less", least, BOUND)))
            .flatMap(inputs -> inputs)
            .toList(),
        Source.GEOMETRY);
  }

  /** What is no money to be spent. */
  private Optional<Input> onHand(Layout layout) {
    long worth =
        layout.patterns().stream()
            .filter(pattern -> pattern.sheet().origin() == Origin.ON_HAND)
            .mapToLong(pattern -> pattern.quantity() * pattern.sheet().price())
            .sum();
    return Optional.of(
            new Input(WORTH, "within C, the worth stated of stock on hand", cost(worth), COUNTED))
        .filter(_ -> worth > 0);
  }

  private static Quantity share(double gap) {
    return Quantity.of(PER_CENT * gap, QuantityUnit.PER_CENT);
  }

  private Quantity cost(long price) {
    double divided = cost == QuantityUnit.MONEY ? COINS : SQUARE_MM_PER_SQUARE_M;
    return Quantity.of(price / divided, cost);
  }
}
