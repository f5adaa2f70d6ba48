package fourpin.strength;

import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Sourced;
import fourpin.reference.Reference;
import fourpin.reference.Substance;

/**
 * What Eurocode 5 takes off what wood and screws yield at, so that the outcome may be held against
 * a load as it is stated: for loads that are stored for years, in rooms. A case is no building; the
 * margins are those of one.
 */
final class EurocodeMargins {

  private EurocodeMargins() {}

  /** k_mod, for which boards of particles and fibres are far weaker than wood. */
  static Sourced duration(Substance of) {
    return switch (of.family()) {
      case SOLID_WOOD, LAMINATED_WOOD, PLYWOOD, GLASS -> constant("EC5 duration for stored loads");
      case STRAND_BOARD -> constant("EC5 duration for stored loads, strand board");
      case PARTICLEBOARD -> constant("EC5 duration for stored loads, particleboard");
      case FIBREBOARD -> constant("EC5 duration for stored loads, fibreboard");
    };
  }

  /** k_mod of a joint of two materials (EN 1995-1-1, Eq. 2.6). */
  static Sourced duration(Substance one, Substance other) {
    Sourced first = duration(one);
    double both = Math.sqrt(first.number() * duration(other).number());
    return new Sourced(Quantity.of(both, QuantityUnit.RATIO), first.source());
  }

  /** γ_M of connections, and of solid wood. */
  static Sourced material() {
    return constant("EC5 material factor of connections");
  }

  /** γ_Q: loads are taken that much larger; those of a shelf's own weight as well, for caution. */
  static Sourced load() {
    return constant("EN 1990 load factor");
  }

  private static Sourced constant(String name) {
    return Reference.constant(name).sourced();
  }
}
