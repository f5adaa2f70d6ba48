package fourpin.reference;

import fourpin.measure.Quantity;
import fourpin.measure.Source;

/**
 * A published load that every shelf is held against.
 *
 * @param load on the shelf's surface
 * @param use what it is published for
 */
public record ReferenceLoad(String name, Quantity load, String use, Source source)
    implements Listed {

  static ReferenceLoad of(Row row) {
    return new ReferenceLoad(
        row.name(), row.customary("load", row.unit()), row.text("use"), row.source());
  }
}
