package fourpin.strength;

import fourpin.measure.Quantity;
import fourpin.measure.Sourced;
import fourpin.reference.Reference;
import fourpin.strength.PlateAnswer.Stress;
import fourpin.strength.Section.Layer;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * How far a shelf may sag, and how far it may be stressed.
 *
 * @param creep sag after years over sag at first
 * @param firstOver span divided by the sag allowed at first loading
 * @param yearsOver span divided by the sag allowed after years
 * @param stress allowed in bending for years, MPa, of glass; what else it is made of has a strength
 *     of its own
 * @param air in which it stands
 */
public record ShelfLimits(
    Sourced creep,
    Sourced firstOver,
    Sourced yearsOver,
    Optional<Sourced> stress,
    ServiceClass air) {

  private static final int MOST_STEPS = 60;
  private static final double CLOSE_ENOUGH = 1e-9;

  /** Longer ones are not looked for. */
  static final double LONGEST_SPAN_MM = 10_000;

  /** In dry air. */
  public ShelfLimits(
      Sourced creep, Sourced firstOver, Sourced yearsOver, Optional<Sourced> stress) {
    this(creep, firstOver, yearsOver, stress, ServiceClass.FIRST);
  }

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
    return Math.max(
        sagUse(shelf.sag(), shelf.span()),
        stressUse(shelf.stresses(shelf.moment()), LoadCase.EVEN));
  }

  double sagUse(double sag, double span) {
    return sag / sagAllowed(span);
  }

  /** Of what is nearest to breaking; nothing where no strength is known. */
  double stressUse(List<Stress> stresses, LoadCase of) {
    return stresses.stream().mapToDouble(s -> use(s, of)).max().orElse(0);
  }

  private double use(Stress of, LoadCase how) {
    return stressAllowed(of.layer(), how).map(a -> of.all() / a.number()).orElse(0.0);
  }

  /** What is nearest to breaking; where no strength is known, what is stressed most. */
  Stress worst(List<Stress> stresses, LoadCase of) {
    return Collections.max(
        stresses,
        Comparator.<Stress>comparingDouble(s -> use(s, of)).thenComparingDouble(Stress::all));
  }

  /** Whether some part of it has a strength that is known. */
  boolean judgesStress(Section section) {
    return section.layers().stream()
        .anyMatch(layer -> stressAllowed(layer, LoadCase.EVEN).isPresent());
  }

  /** What may stress a layer of it, MPa. */
  Optional<Sourced> stressAllowed(Layer layer, LoadCase of) {
    return stress.isPresent()
        ? glass(of)
        : layer.matter().breaking().map(breaking -> breaking.allowed(air, of));
  }

  /** Glass stands more for a minute than for years, MPa. */
  private Optional<Sourced> glass(LoadCase of) {
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
