package fourpin.reference;

import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;

/**
 * What a value is usually, and how far it strays.
 *
 * @param low nowhere over {@code typical}, which is nowhere over {@code high}; all of one unit
 */
public record Band(Quantity low, Quantity typical, Quantity high) {

  public Band {
    if (low.unit() != typical.unit() || high.unit() != typical.unit()) {
      throw new IllegalArgumentException("a band has one unit: " + low + typical + high);
    }
    if (low.value() > typical.value() || typical.value() > high.value()) {
      throw new IllegalArgumentException("a band rises: " + low + typical + high);
    }
  }

  static Band of(double low, double typical, double high, QuantityUnit unit) {
    return new Band(Quantity.of(low, unit), Quantity.of(typical, unit), Quantity.of(high, unit));
  }
}
