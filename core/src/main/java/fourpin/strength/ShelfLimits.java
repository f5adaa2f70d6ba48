package fourpin.strength;

import fourpin.measure.Quantity;
import fourpin.measure.Sourced;
import fourpin.reference.Reference;
import java.util.Optional;

/**
 * How far a shelf may sag, and how far it may be stressed.
 *
 * @param creep sag after years over sag at first
 * @param firstOver span divided by the sag allowed at first loading
 * @param yearsOver span divided by the sag allowed after years
 * @param stress allowed in bending for years, MPa; only where breaking is to be feared: glass
 */
public record ShelfLimits(
    Sourced creep, Sourced firstOver, Sourced yearsOver, Optional<Sourced> stress) {

  private static final int MOST_STEPS = 60;
  private static final double CLOSE_ENOUGH = 1e-9;

  /** Longer ones are not looked for. */
  static final double LONGEST_SPAN_MM = 10_000;

  /** Sag allowed at first, mm. */
  public double firstLimit(LoadedShelf shelf) {
    return shelf.span() / firstOver.number();
  }

  /** Sag allowed after years, mm. */
  public double yearsLimit(LoadedShelf shelf) {
    return shelf.span() / yearsOver.number();
  }

  /** Sag allowed at once, so that it is within both limits, mm. */
  double sagAllowed(double span) {
    return span / Math.max(firstOver.number(), creep.number() * yearsOver.number());
  }

  /** How much of what is allowed a shelf uses as a beam, by the nearest limit; over 1 it fails. */
  public double use(LoadedShelf shelf) {
    return Math.max(sagUse(shelf.sag(), shelf.span()), stressUse(shelf.stress()));
  }

  double sagUse(double sag, double span) {
    return sag / sagAllowed(span);
  }

  double stressUse(double bending) {
    return stress.map(allowed -> bending / allowed.number()).orElse(0.0);
  }

  /** Glass stands more for a minute than for years, MPa. */
  Optional<Sourced> stressAllowed(LoadCase of) {
    double times =
        of instanceof LoadCase.Hand ? Reference.constant("glass for a minute").value() : 1;
    return stress.map(
        s -> new Sourced(Quantity.of(times * s.number(), s.value().unit()), s.source()));
  }

  public boolean holds(LoadedShelf shelf) {
    return use(shelf) <= 1;
  }

  /**
   * The longest span within all limits at the shelf's load as a beam, with the supports at its
   * ends, up to ten metres, mm. Sag over span grows almost with the cube of the span, so that the
   * cube root of what is used leads to it in a few steps.
   *
   * @param times how many times as much it uses as its beam
   */
  public double longestSpan(LoadedShelf shelf, double times) {
    LoadedShelf tried = new LoadedShelf(shelf.section(), shelf.span(), 0, shelf.load());
    double use = times * use(tried);
    for (int i = 0; i < MOST_STEPS && Math.abs(use - 1) > CLOSE_ENOUGH; i++) {
      tried = tried.over(Math.min(LONGEST_SPAN_MM, tried.span() / Math.cbrt(use)));
      use = times * use(tried);
    }
    return tried.span();
  }
}
