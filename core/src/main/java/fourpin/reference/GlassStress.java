package fourpin.reference;

import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;

/**
 * A working stress of glass in bending; sources disagree.
 *
 * @param condition what it holds for
 */
public record GlassStress(String name, Quantity stress, String condition, Source source)
    implements Listed {

  static GlassStress of(Row row) {
    return new GlassStress(
        row.name(),
        row.quantity("stress_mpa", QuantityUnit.STRESS),
        row.text("condition"),
        row.source());
  }
}
