package fourpin.reference;

import fourpin.measure.Source;

/**
 * How a wood shrinks and swells.
 *
 * @param radialShrinkage from green to ovendry, per cent
 * @param tangentialShrinkage likewise
 * @param radial change for each per cent of moisture between 6 and 14 %, as a share of the size
 * @param tangential likewise
 * @param note whether it holds for a commercial group
 */
public record WoodMovement(
    String name,
    double radialShrinkage,
    double tangentialShrinkage,
    double radial,
    double tangential,
    String note,
    Source source)
    implements Listed {

  static WoodMovement of(Row row) {
    return new WoodMovement(
        row.name(),
        row.number("radial_pct"),
        row.number("tangential_pct"),
        row.number("radial_per_pct"),
        row.number("tangential_per_pct"),
        row.text("note"),
        row.source());
  }
}
