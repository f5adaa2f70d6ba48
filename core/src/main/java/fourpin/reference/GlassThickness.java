package fourpin.reference;

import fourpin.measure.Length;
import fourpin.measure.Source;

/**
 * A thickness that flat glass is made in.
 *
 * @param thickness nominal, in the unit of those who name it so
 */
public record GlassThickness(String name, Length thickness, Source source) implements Listed {

  static GlassThickness of(Row row) {
    return new GlassThickness(row.name(), row.length("thickness"), row.source());
  }
}
