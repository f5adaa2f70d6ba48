package fourpin.reference;

import fourpin.measure.Length;
import fourpin.measure.Source;

/**
 * A size of sleeve that lines a pin's hole.
 *
 * @param pin diameter of the stem that it takes
 * @param outside diameter of its hole
 * @param length in the hole
 */
public record PinSleeve(
    String name, Length pin, Length outside, Length length, String note, Source source)
    implements Listed {

  static PinSleeve of(Row row) {
    return new PinSleeve(
        row.name(),
        row.length("pin"),
        row.length("outside"),
        row.length("length"),
        row.text("note"),
        row.source());
  }
}
