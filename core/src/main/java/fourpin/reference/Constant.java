package fourpin.reference;

import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.measure.Sourced;

/** A bare number of mechanics. @param use what it is for */
public record Constant(String name, double value, String use, Source source) implements Listed {

  static Constant of(Row row) {
    return new Constant(row.name(), row.number("value"), row.text("use"), row.source());
  }

  public Sourced sourced() {
    return new Sourced(Quantity.of(value, QuantityUnit.RATIO), source);
  }
}
