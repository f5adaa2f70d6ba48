package fourpin.reference;

import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import java.util.List;
import java.util.Optional;

/**
 * Sheet goods, laminated wood and glass.
 *
 * @param note what the figures hold for
 */
public record PanelProduct(
    String name,
    List<String> also,
    Family family,
    Band density,
    Band modulus,
    Optional<Band> modulusAcross,
    String note,
    Source source)
    implements Substance {

  static PanelProduct of(Row row) {
    return new PanelProduct(
        row.name(),
        row.also(),
        Family.valueOf(row.text("family")),
        density(row.number("density_low_kg_m3"), row.number("density_high_kg_m3")),
        modulus(row, "along"),
        row.text("across_typical_mpa").isEmpty()
            ? Optional.empty()
            : Optional.of(modulus(row, "across")),
        row.text("note"),
        row.source());
  }

  private static Band density(double low, double high) {
    return Band.of(low, (low + high) / 2, high, QuantityUnit.DENSITY);
  }

  private static Band modulus(Row row, String way) {
    return Band.of(
        row.number(way + "_low_mpa"),
        row.number(way + "_typical_mpa"),
        row.number(way + "_high_mpa"),
        QuantityUnit.STRESS);
  }
}
