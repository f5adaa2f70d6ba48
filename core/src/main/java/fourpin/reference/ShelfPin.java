package fourpin.reference;

import fourpin.measure.Length;
import fourpin.measure.Source;

/**
 * A size of shelf pin.
 *
 * @param stem diameter
 * @param hole diameter of the hole usually bored for it
 * @param holeDepth usual depth to the full diameter
 */
public record ShelfPin(
    String name, Length stem, Length hole, Length holeDepth, String note, Source source)
    implements Listed {

  static ShelfPin of(Row row) {
    return new ShelfPin(
        row.name(),
        row.length("stem"),
        row.length("hole"),
        row.length("hole_depth"),
        row.text("note"),
        row.source());
  }
}
