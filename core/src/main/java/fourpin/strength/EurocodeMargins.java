package fourpin.strength;

import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Sourced;
import fourpin.reference.Constant;
import fourpin.reference.Reference;
import fourpin.reference.Substance;
import fourpin.reference.Substance.Family;
import java.util.Optional;

/**
 * What Eurocode 5 takes off what wood and screws yield at, so that the outcome may be held against
 * a load as it is stated: for loads that are stored for years, in air as damp as the place's. A
 * case is no building; the margins are those of one.
 */
final class EurocodeMargins {

  /** What {@link #load} is, in words. */
  static final String LARGER = "margin for loads that may be larger than stated";

  private EurocodeMargins() {}

  /**
   * k_mod, for which boards of particles and fibres are far weaker than wood. Nothing of boards
   * that carry no load that stays in such air.
   */
  static Optional<Sourced> duration(Substance of, ServiceClass air) {
    return duration(of.family(), air);
  }

  /** The same of all of a family. */
  static Optional<Sourced> duration(Family family, ServiceClass air) {
    return Reference.constants()
        .find("EC5 duration for stored loads" + board(family) + air.inNames())
        .map(Constant::sourced);
  }

  private static String board(Family family) {
    return switch (family) {
      case SOLID_WOOD, LAMINATED_WOOD, PLYWOOD, GLASS -> "";
      case STRAND_BOARD -> ", strand board";
      case PARTICLEBOARD -> ", particleboard";
      case FIBREBOARD -> ", fibreboard";
    };
  }

  /** k_mod of a joint of two materials (EN 1995-1-1, Eq. 2.6). */
  static Optional<Sourced> duration(Substance one, Substance other, ServiceClass air) {
    return duration(one, air)
        .flatMap(first -> duration(other, air).map(second -> duration(first, second)));
  }

  private static Sourced duration(Sourced first, Sourced second) {
    double both = Math.sqrt(first.number() * second.number());
    return new Sourced(Quantity.of(both, QuantityUnit.RATIO), first.source());
  }

  /** By how much more stands for minutes than for years. */
  static double brief(ServiceClass air) {
    return constant("EC5 duration for brief loads" + air.inNames()).number()
        / constant("EC5 duration for stored loads" + air.inNames()).number();
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
