package fourpin.reference;

import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A wood at 12 % moisture: averages of clear, straight-grained pieces.
 *
 * @param specificGravity ovendry mass over volume at 12 % moisture, against water
 * @param modulus of elasticity; low and high lie one coefficient of variation from the average
 * @param rupture modulus of rupture
 * @param sideHardness force to press a ball in by half its diameter
 */
public record Wood(
    String name,
    List<String> also,
    Kind kind,
    double specificGravity,
    Band modulus,
    Quantity rupture,
    Optional<Quantity> sideHardness,
    Band density,
    Source source)
    implements Substance {

  /** The two botanical kinds; they say nothing of hardness. */
  public enum Kind {
    HARDWOOD,
    SOFTWOOD
  }

  static Wood of(Row row) {
    double modulus = row.number("modulus_mpa");
    double spread = modulus * Reference.constant("variation of modulus in wood").value();
    double density = row.number("density_12pct_kg_m3");
    return new Wood(
        row.name(),
        row.also(),
        Kind.valueOf(row.text("kind").toUpperCase(Locale.ROOT)),
        row.number("specific_gravity_12pct"),
        Band.of(modulus - spread, modulus, modulus + spread, QuantityUnit.STRESS),
        row.quantity("rupture_mpa", QuantityUnit.STRESS),
        row.optionalQuantity("side_hardness_n", QuantityUnit.FORCE),
        Band.of(density, density, density, QuantityUnit.DENSITY),
        row.source());
  }

  @Override
  public Family family() {
    return Family.SOLID_WOOD;
  }

  /** A shelf is never cut across the grain of a board; the handbook's ratios differ by wood. */
  @Override
  public Optional<Band> modulusAcross() {
    return Optional.empty();
  }
}
