package fourpin.reference;

import fourpin.measure.Length;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import java.util.List;

/**
 * A kind of thing that stands on shelves.
 *
 * @param load along the shelf ({@link QuantityUnit#LINE_LOAD}) for what stands in a row, on the
 *     surface ({@link QuantityUnit#AREA_LOAD}) for the rest
 * @param height usual height as it stands
 * @param depth usual size from front to back
 * @param note what the figures hold for
 */
public record HeldThing(
    String name,
    List<String> also,
    Band load,
    Length height,
    Length depth,
    String note,
    Source source)
    implements Listed {

  static HeldThing of(Row row) {
    QuantityUnit unit = row.unit();
    return new HeldThing(
        row.name(),
        row.also(),
        new Band(
            row.customary("load_low", unit),
            row.customary("load_typical", unit),
            row.customary("load_high", unit)),
        row.length("height"),
        row.length("depth"),
        row.text("note"),
        row.source());
  }
}
