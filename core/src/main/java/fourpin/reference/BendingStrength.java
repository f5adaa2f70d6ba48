package fourpin.reference;

import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;

/**
 * At what stress wood and panels break in bending, as nearly all of a kind stand it for minutes.
 *
 * @param strength along the grain, face grain or length of the sheet, f_m,k
 * @param margin by which codes divide it, γ_M
 * @param condition what it holds for
 */
public record BendingStrength(
    String name, Quantity strength, double margin, String condition, Source source)
    implements Listed {

  static BendingStrength of(Row row) {
    return new BendingStrength(
        row.name(),
        row.quantity("strength_mpa", QuantityUnit.STRESS),
        row.number("margin"),
        row.text("condition"),
        row.source());
  }
}
