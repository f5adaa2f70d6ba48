package fourpin.reference;

import fourpin.measure.Source;
import java.util.List;
import java.util.Locale;

/**
 * How a substance bends across and twists, against how it bends along.
 *
 * @param across modulus of elasticity across over along; of flat-sawn boards, in which the rings
 *     lie along the width
 * @param shear modulus in the plane of the board or sheet over the modulus along
 * @param poisson by how much it narrows across for each part that it is stretched along
 * @param note what the figures hold for
 */
public record ElasticRatios(
    String name,
    List<String> also,
    double across,
    double shear,
    double poisson,
    String note,
    Source source)
    implements Listed {

  static ElasticRatios of(Row row) {
    return new ElasticRatios(
        row.name(),
        row.also(),
        row.number("across"),
        row.number("shear"),
        row.number("poisson"),
        row.text("note"),
        row.source());
  }

  /** The row of a kind of wood or of a family of panels: {@code STRAND_BOARD} is "strand board". */
  static String rowOf(Enum<?> group) {
    return group.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
