package fourpin.strength;

import fourpin.job.CaseOrder;
import fourpin.job.Load;
import fourpin.job.Setting;
import fourpin.measure.Length;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.measure.Sourced;
import fourpin.reference.HeldThing;
import fourpin.reference.Reference;

/**
 * The load along a shelf: as the bay states it, else as the case does, else as the settings say.
 */
public final class ShelfLoad {

  /** 1 kPa is a thousandth of 1 N/mm². */
  private static final double KPA_PER_MPA = 1000;

  private ShelfLoad() {}

  /**
   * The line load in N/mm.
   *
   * @param bay from the left, from 1
   * @param depth of the shelf, over which an area load is taken
   * @throws IllegalArgumentException if the job names a thing that no table lists
   */
  public static Sourced along(CaseOrder order, int bay, Length depth) {
    return order
        .bays()
        .get(bay - 1)
        .load()
        .or(order::load)
        .map(load -> along(load, depth))
        .orElseGet(
            () ->
                new Sourced(
                    order.settings().load(Setting.SHELF_LOAD),
                    order.settings().source(Setting.SHELF_LOAD)));
  }

  private static Sourced along(Load load, Length depth) {
    return switch (load) {
      case Load.PerLength(Quantity perLength) -> new Sourced(perLength, Source.STATED);
      case Load.PerArea(Quantity perArea) -> new Sourced(overDepth(perArea, depth), Source.STATED);
      case Load.Holds(String name) -> {
        HeldThing thing = Reference.things().get(name);
        yield new Sourced(overDepth(thing.load().typical(), depth), thing.source());
      }
    };
  }

  private static Quantity overDepth(Quantity load, Length depth) {
    return load.unit() == QuantityUnit.LINE_LOAD
        ? load
        : Quantity.of(load.value() / KPA_PER_MPA * depth.mm(), QuantityUnit.LINE_LOAD);
  }
}
