package fourpin.strength;

import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.measure.Gravity;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.measure.Source.Standing;
import fourpin.strength.PlateAnswer.LowSupport;
import fourpin.strength.PlateAnswer.Relieved;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The figures of one shelf on supports of which one lies low. */
final class RockingFigures {

  private static final Source STATICS =
      new Source("statics of the bent plate", "", Standing.DERIVED);

  private final ShelfOnSupports shelf;
  private final LowSupport low;
  private final Input twist;
  private final Verdict verdict;

  /**
   * @param twist its stiffness in twist
   * @param verdict that knows the largest load within its limits
   */
  RockingFigures(ShelfOnSupports shelf, LowSupport low, Input twist, Verdict verdict) {
    this.shelf = shelf;
    this.low = low;
    this.twist = twist;
    this.verdict = verdict;
  }

  List<Figure> all() {
    List<Figure> all = new ArrayList<>(List.of(closedBy()));
    most().ifPresent(all::add);
    all.add(closed());
    return all;
  }

  /** Whether it rocks under the stated load. */
  boolean rocks() {
    return low.empty().closedBy() > stated();
  }

  private double stated() {
    return shelf.load().value().value() * shelf.loaded().length();
  }

  /** How much has to stand on the shelf until it does not rock on a low support. */
  Figure closedBy() {
    return figure(
        "low-support-load",
        "load, spread evenly, until which it rocks on one low support",
        mass(low.empty().closedBy()),
        "max(0, R - r₀) / (s × 9.80665 m/s²)",
        relieved(low.empty()));
  }

  /** All that it may bear, where it rocks under that still: more is no load to put on it. */
  Optional<Figure> most() {
    double most = largest() * shelf.loaded().length();
    return low.empty().closedBy() > most ? Optional.of(most(most)) : Optional.empty();
  }

  private double largest() {
    return verdict.largestLoad().number();
  }

  private Figure most(double most) {
    Figure closedBy = closedBy();
    return figure(
        "low-support-most",
        "largest load within its limits, under which it still rocks on one low support",
        mass(most),
        "q₀ l / 9.80665 m/s²",
        List.of(
            new Input(
                "q₀",
                "largest load within the limits",
                Quantity.of(largest(), QuantityUnit.LARGEST_LOAD),
                PlateFigures.PLATE),
            new Input(
                "l",
                "length of the shelf",
                Quantity.of(shelf.loaded().length(), QuantityUnit.LENGTH),
                Source.GEOMETRY),
            new Input(
                "Q₀", "more than that: " + closedBy.title(), closedBy.value(), closedBy.source())));
  }

  /** How far a support may lie low until the loaded shelf rocks. */
  Figure closed() {
    List<Input> inputs = new ArrayList<>(relieved(low.loaded()));
    inputs.add(
        new Input(
            "Q",
            "load on the shelf",
            Quantity.of(stated(), QuantityUnit.FORCE),
            shelf.load().source()));
    return figure(
        "low-support-closed",
        "how far one support may lie low until the loaded shelf rocks",
        Quantity.of(
            shelf.doubt().low().number() * low.loaded().times(stated()), QuantityUnit.LENGTH),
        "d (r₀ + s Q) / R",
        inputs);
  }

  private List<Input> relieved(Relieved relieved) {
    return List.of(
        shelf.doubt().low().input("d", "how far one support lies low"),
        new Input(
            "R",
            "how much less the support pushes that the low one relieves most",
            Quantity.of(relieved.relief(), QuantityUnit.FORCE),
            PlateFigures.PLATE),
        new Input(
            "r₀",
            "its push under the empty shelf",
            Quantity.of(relieved.own(), QuantityUnit.FORCE),
            PlateFigures.PLATE),
        new Input(
            "s",
            "its share of an even load",
            Quantity.of(relieved.share(), QuantityUnit.RATIO),
            PlateFigures.PLATE),
        twist);
  }

  private static Quantity mass(double newton) {
    return Quantity.of(newton / Gravity.STANDARD, QuantityUnit.MASS);
  }

  private Figure figure(
      String id, String title, Quantity value, String formula, List<Input> inputs) {
    return new Figure(shelf.prefix() + "/" + id, title, value, formula, inputs, STATICS);
  }
}
