package fourpin.strength;

import fourpin.job.CaseOrder;
import fourpin.job.Load;
import fourpin.job.Setting;
import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.measure.Length;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.measure.Sourced;
import fourpin.reference.HeldThing;
import fourpin.reference.Reference;
import java.util.List;
import java.util.Optional;

/**
 * The load on a shelf: as the bay states it, else as the case does, else as the settings say.
 *
 * @param what it is, for people
 * @param given along the shelf or on its surface
 */
public record ShelfLoad(String what, Sourced given) {

  /** 1 kPa is a thousandth of 1 N/mm². */
  private static final double KPA_PER_MPA = 1000;

  /**
   * The load of the shelves in one bay.
   *
   * @param bay from the left, from 1
   * @throws IllegalArgumentException if the job names a thing that no table lists
   */
  public static ShelfLoad of(CaseOrder order, int bay) {
    return order
        .bays()
        .get(bay - 1)
        .load()
        .or(order::load)
        .map(ShelfLoad::of)
        .orElseGet(() -> unstated(order));
  }

  /** How deep the things are that stand in a bay, where the job names them. */
  private static Optional<Sourced> depthOfThings(CaseOrder order, int bay) {
    return order.bays().get(bay - 1).load().or(order::load).stream()
        .filter(Load.Holds.class::isInstance)
        .map(load -> Reference.things().get(((Load.Holds) load).thing()))
        .map(thing -> new Sourced(Quantity.of(thing.depth()), thing.source()))
        .findFirst();
  }

  /**
   * How deep a row of what a bay holds is on a shelf of some depth; things that nobody names are no
   * deeper than the shelf.
   */
  static Optional<Sourced> depthOfRow(CaseOrder order, int bay, Length shelf) {
    return depthOfThings(order, bay).or(() -> depthOfUnnamedRow(order, shelf));
  }

  static Optional<Sourced> depthOfUnnamedRow(CaseOrder order, Length shelf) {
    Length usual = order.settings().length(Setting.ROW_DEPTH);
    return Optional.of(new Sourced(Quantity.of(usual), order.settings().source(Setting.ROW_DEPTH)))
        .filter(_ -> usual.isLessThan(shelf));
  }

  /** Of a top, of which no job states what stands there. */
  static ShelfLoad ofTop(CaseOrder order) {
    return new ShelfLoad(
        "load taken to stand on it, which no job states",
        new Sourced(
            order.settings().load(Setting.TOP_LOAD), order.settings().source(Setting.TOP_LOAD)));
  }

  private static ShelfLoad unstated(CaseOrder order) {
    return new ShelfLoad(
        "load of shelves that state none",
        new Sourced(
            order.settings().load(Setting.SHELF_LOAD),
            order.settings().source(Setting.SHELF_LOAD)));
  }

  private static ShelfLoad of(Load load) {
    return switch (load) {
      case Load.PerLength(Quantity perLength) ->
          new ShelfLoad("load as stated", Sourced.stated(perLength));
      case Load.PerArea(Quantity perArea) ->
          new ShelfLoad("load as stated", Sourced.stated(perArea));
      case Load.Holds(String name) -> of(Reference.things().get(name));
    };
  }

  private static ShelfLoad of(HeldThing thing) {
    return new ShelfLoad(
        "load of " + thing.name(), new Sourced(thing.load().typical(), thing.source()));
  }

  /**
   * The line load, in N/mm.
   *
   * @param depth of the shelf, over which an area load is taken
   */
  public double perMm(Length depth) {
    return along() ? given.number() : given.number() / KPA_PER_MPA * depth.mm();
  }

  /**
   * The line load with its working.
   *
   * @param id of the figure
   * @param depth of the shelf, over which an area load is taken
   */
  Figure figure(String id, Length depth) {
    Input depthInput = new Input("D", "depth of the shelf", Quantity.of(depth), Source.GEOMETRY);
    return new Figure(
        id,
        what,
        Quantity.of(perMm(depth), QuantityUnit.LINE_LOAD),
        along() ? "q" : "p D",
        along() ? List.of(given.input("q", what)) : List.of(given.input("p", what), depthInput),
        given.source());
  }

  private boolean along() {
    return given.value().unit() == QuantityUnit.LINE_LOAD;
  }
}
