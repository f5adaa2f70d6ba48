package fourpin.strength;

import fourpin.measure.Sourced;
import fourpin.strength.PlateAnswer.Bends;
import fourpin.strength.ShelfOnSupports.Bearing;
import fourpin.strength.ShelfPlate.Prop;
import java.util.Optional;

/**
 * A shelf held against what is allowed: by the plate, which knows front and back edge apart, where
 * that can be bent; else by the beam.
 */
final class Verdict {

  private final LoadedShelf beam;
  private final Bearing bearing;
  private final Prop prop;
  private final ShelfLimits limits;
  private final PlateBending.Memory plates;
  private final double span;
  private final int props;
  private final Optional<PlateBending> plate;
  private final Optional<Bends> bends;
  private final By by;
  private final Deflection loaded;

  /** What it rests on. */
  enum By {
    PLATE,
    BEAM
  }

  /**
   * @param plates those that are bent already
   */
  Verdict(
      LoadedShelf beam,
      Bearing bearing,
      Prop prop,
      ShelfLimits limits,
      PlateBending.Memory plates) {
    this.beam = beam;
    this.bearing = bearing;
    this.prop = prop;
    this.limits = limits;
    this.plates = plates;
    this.span = prop == Prop.FRONT_AND_BACK ? beam.span() / 2 : beam.span();
    this.props =
        switch (prop) {
          case NONE -> 0;
          case BACK -> 1;
          case FRONT_AND_BACK -> 2;
        };
    this.plate = ShelfPlate.of(beam, bearing, prop).map(plates::of);
    this.bends = plate.flatMap(p -> p.under(beam.load()));
    this.by = bends.isPresent() ? By.PLATE : By.BEAM;
    this.loaded = bends.map(Deflection::of).orElseGet(() -> Deflection.of(beam));
  }

  static Verdict of(ShelfOnSupports shelf, PlateBending.Memory plates) {
    return new Verdict(shelf.loaded(), shelf.bearing(), Prop.NONE, shelf.limits(), plates);
  }

  By by() {
    return by;
  }

  /** The plate, if the shelf is one. */
  Optional<PlateBending> plate() {
    return plate;
  }

  /** As a plate under its load; nothing if it is none, or tips. */
  Optional<Bends> bends() {
    return bends;
  }

  Deflection loaded() {
    return loaded;
  }

  /** How hard the support pushes most that carries it in the middle of its span, N. */
  double propPush() {
    return bends.stream()
        .map(Bends::pushes)
        .flatMap(p -> p.subList(p.size() - props, p.size()).stream())
        .max(Double::compare)
        .orElse(0.0);
  }

  /** Whether it lifts off all supports of an end with its load on the other half alone. */
  boolean seeSaws(ShelfOnSupports shelf) {
    int ofAnEnd = bends.map(b -> (b.pushes().size() - props) / 2).orElse(0);
    return ofAnEnd > 0
        && plate
            .flatMap(p -> p.asked(shelf).half())
            .filter(half -> half.lifted() >= ofAnEnd)
            .isPresent();
  }

  /** Under its own weight. */
  Deflection empty() {
    return under(0);
  }

  /**
   * Under its own weight and another load of its kind; a plate that would tip off its supports is
   * taken to bend as under its own load.
   *
   * @param load along it, N/mm
   */
  Deflection under(double load) {
    double share = (load + beam.section().weight()) / beam.total();
    return by == By.BEAM
        ? loaded.times(share)
        : plate
            .flatMap(p -> p.under(load))
            .map(Deflection::of)
            .orElseGet(() -> loaded.times(share));
  }

  boolean sagHolds() {
    return sagUse() <= 1;
  }

  /** How much of the allowed sag it uses. */
  double sagUse() {
    return limits.sagUse(loaded.sag(), span);
  }

  /** Whether it may sag so far at once, in mm. */
  boolean allows(double sag) {
    return limits.sagUse(sag, span) <= 1;
  }

  boolean stressHolds() {
    return limits.stressUse(loaded.stress()) <= 1;
  }

  boolean holds() {
    return use() <= 1;
  }

  /** How much of what is allowed it uses, by the nearest limit. */
  double use() {
    return use(loaded);
  }

  /** Whether it carries itself. */
  boolean holdsEmpty() {
    return use(empty()) <= 1;
  }

  private double use(Deflection deflection) {
    return Math.max(limits.sagUse(deflection.sag(), span), limits.stressUse(deflection.stress()));
  }

  /** Sag allowed at once, mm. */
  double allowed() {
    return limits.sagAllowed(span);
  }

  /**
   * The largest load within all limits, N/mm; nothing if its own weight is too much. Each line sags
   * evenly with the load.
   */
  double largestLoad() {
    double load = beam.load() > 0 ? beam.load() : 1;
    Deflection empty = empty();
    Deflection then = under(load);
    double most = share(empty.stress(), then.stress(), limits.stress().map(Sourced::number));
    for (Spot spot : Spot.values()) {
      double sag = then.at(spot);
      most = Math.min(most, share(empty.at(spot), sag, Optional.of(allowed())));
    }
    return Math.max(0, load * most);
  }

  /** How many times the load leads from a value under own weight to the one that is allowed. */
  private static double share(double own, double now, Optional<Double> allowed) {
    return allowed.map(most -> (most - own) / (now - own)).orElse(Double.POSITIVE_INFINITY);
  }

  /**
   * About the longest span within all limits; nothing if there is none. Guessed from the beam's and
   * what the plate has over it here.
   */
  Optional<Double> longestSpan() {
    double guess = limits.longestSpan(beam, use() / limits.use(beam));
    double tooLong = Math.max(guess, limits.longestSpan(beam, 1));
    return new LongestSpan(other -> over(other).use()).find(guess, tooLong);
  }

  /** The same over another span, by a rough plate. */
  private Verdict over(double other) {
    return new Verdict(beam.over(other), bearing, prop, limits, plates.rough());
  }
}
