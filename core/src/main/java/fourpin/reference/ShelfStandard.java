package fourpin.reference;

import fourpin.measure.Length;
import fourpin.measure.LengthReader;
import fourpin.measure.Source;
import fourpin.measure.Unit;
import java.util.List;

/**
 * A size of metal standard.
 *
 * @param width of the standard, and of its groove when let in
 * @param thickness likewise
 * @param slotPitch from slot to slot
 * @param soldIn lengths on sale
 */
public record ShelfStandard(
    String name,
    Length width,
    Length thickness,
    Length slotPitch,
    List<Length> soldIn,
    String note,
    Source source)
    implements Listed {

  public ShelfStandard {
    soldIn = List.copyOf(soldIn);
  }

  static ShelfStandard of(Row row) {
    LengthReader lengths = new LengthReader(Unit.INCH);
    return new ShelfStandard(
        row.name(),
        row.length("width"),
        row.length("thickness"),
        row.length("slot_pitch"),
        row.list("sold_in").map(text -> lengths.read(text).orThrow()).toList(),
        row.text("note"),
        row.source());
  }
}
