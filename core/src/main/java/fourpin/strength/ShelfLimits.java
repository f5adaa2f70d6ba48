package fourpin.strength;

import fourpin.measure.Sourced;
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
  private static final double CLOSE_ENOUGH = 1e-12;
  private static final double LONGEST_SPAN_MM = 10_000;

  /** Sag allowed at first, mm. */
  public double firstLimit(LoadedShelf shelf) {
    return shelf.span() / firstOver.number();
  }

  /** Sag allowed after years, mm. */
  public double yearsLimit(LoadedShelf shelf) {
    return shelf.span() / yearsOver.number();
  }

  /** How much of what is allowed a shelf uses, by the nearest limit; over 1 it fails. */
  public double use(LoadedShelf shelf) {
    return Math.max(sagUse(shelf), stressUse(shelf));
  }

  private double sagUse(LoadedShelf shelf) {
    double sag = shelf.sag();
    return Math.max(sag / firstLimit(shelf), sag * creep.number() / yearsLimit(shelf));
  }

  private double stressUse(LoadedShelf shelf) {
    return stress.map(allowed -> shelf.stress() / allowed.number()).orElse(0.0);
  }

  public boolean holds(LoadedShelf shelf) {
    return use(shelf) <= 1;
  }

  public boolean sagHolds(LoadedShelf shelf) {
    return sagUse(shelf) <= 1;
  }

  public boolean stressHolds(LoadedShelf shelf) {
    return stressUse(shelf) <= 1;
  }

  /** The largest load within all limits, N/mm; nothing if its own weight is too much. */
  public double largestLoad(LoadedShelf shelf) {
    return Math.max(0, shelf.total() / use(shelf) - shelf.section().weight());
  }

  /**
   * The longest span within all limits at the shelf's load, with the supports at its ends, up to
   * ten metres, mm. Sag over span grows almost with the cube of the span, so that the cube root of
   * what is used leads to it in a few steps.
   */
  public double longestSpan(LoadedShelf shelf) {
    LoadedShelf tried = new LoadedShelf(shelf.section(), shelf.span(), 0, shelf.load());
    double use = use(tried);
    for (int i = 0; i < MOST_STEPS && Math.abs(use - 1) > CLOSE_ENOUGH; i++) {
      tried = tried.over(Math.min(LONGEST_SPAN_MM, tried.span() / Math.cbrt(use)));
      use = use(tried);
    }
    return tried.span();
  }
}
