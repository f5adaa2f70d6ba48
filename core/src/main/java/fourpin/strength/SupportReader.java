package fourpin.strength;

import fourpin.casework.Axis;
import fourpin.casework.BaySpace;
import fourpin.casework.BuiltCase;
import fourpin.casework.Part;
import fourpin.job.Job;
import fourpin.job.Setting;
import fourpin.job.Settings;
import fourpin.job.Support;
import fourpin.measure.Length;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Sourced;
import fourpin.strength.ShelfOnSupports.Bearing;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Sees what the supports of a shelf are, and what they are in. */
final class SupportReader {

  private final Job job;
  private final BuiltCase built;
  private final Settings settings;

  SupportReader(Job job, BuiltCase built) {
    this.job = job;
    this.built = built;
    this.settings = built.order().settings();
  }

  /** Nothing for shelves on other supports, and for those whose rows do not fit under them. */
  Optional<PinInSide> pin(Part shelf, ShelfReader reader) {
    return reader.support(shelf).flatMap(support -> pin(shelf, reader, support));
  }

  private Optional<PinInSide> pin(Part shelf, ShelfReader reader, Support support) {
    return switch (support) {
      case Support.Pins pins -> pin(shelf, reader, pins, stated(pins.diameter()), stemInHole(pins));
      case Support.Sleeved sleeved ->
          pin(shelf, reader, sleeved.pins(), stated(sleeved.outside()), stated(sleeved.length()));
      case Support.Standards _, Support.Cleats _ -> Optional.empty();
    };
  }

  /** Whether a shelf on supports lies on loose cleats, which are made with the case. */
  boolean areCleats(Part shelf) {
    return built.bays().stream()
        .filter(bay -> bay.clear().overlaps(shelf.box()))
        .flatMap(bay -> built.order().bays().get(bay.number() - 1).supports().stream())
        .anyMatch(Support.Cleats.class::isInstance);
  }

  Length endPlay() {
    return settings.length(Setting.END_PLAY);
  }

  /** What is allowed on a support of a shelf. */
  List<SupportLimit> limits(Part shelf, ShelfReader reader) {
    return limits(pin(shelf, reader));
  }

  /** The same on such a pin; nothing where it is none. */
  List<SupportLimit> limits(Optional<PinInSide> pin) {
    return Stream.concat(
            pin.stream().flatMap(in -> PinAllowances.limits(in, pinStress()).stream()),
            rating().stream()
                .map(
                    r ->
                        new SupportLimit(
                            r.value(), r.value(), "by the rating of its maker", r.source())))
        .toList();
  }

  private Sourced stemInHole(Support.Pins pins) {
    return settings.length(Setting.HOLE_DEPTH).isLessThan(pins.stem())
        ? setting(Setting.HOLE_DEPTH)
        : stated(pins.stem());
  }

  private Optional<PinInSide> pin(
      Part shelf, ShelfReader reader, Support.Pins pins, Sourced diameter, Sourced depth) {
    Part side = built.part(reader.space(shelf).left());
    return reader.read(shelf).bearing() instanceof Bearing.Rows rows
        ? Optional.of(
            new PinInSide(
                diameter,
                stated(pins.diameter()),
                depth,
                stated(pins.reach()),
                setting(Setting.END_PLAY),
                front(shelf) - front(side) + rows.front().number(),
                job.material(side.material()),
                ServiceClass.of(settings)))
        : Optional.empty();
  }

  /** How deep holes may be in both uprights of a bay; partitions are bored from both faces. */
  Length room(BaySpace bay) {
    return Length.min(room(bay.left()), room(bay.right()));
  }

  private Length room(String upright) {
    Part part = built.part(upright);
    Length thickness = job.material(part.material()).thickness();
    Length point = settings.length(Setting.BIT_POINT);
    Length behind = thickness.minus(settings.length(Setting.LEAST_FLOOR));
    return part.role() == Part.Role.PARTITION
        ? Uprights.boredFromBothFaces(thickness, settings)
        : behind.minus(point);
  }

  private static double front(Part part) {
    return part.box().low().along(Axis.Y).mm();
  }

  private static Sourced stated(Length length) {
    return Sourced.stated(Quantity.of(length));
  }

  private Sourced setting(Setting setting) {
    return new Sourced(Quantity.of(settings.length(setting)), settings.source(setting));
  }

  Sourced leastEngagement() {
    return setting(Setting.LEAST_ENGAGEMENT);
  }

  /** Bending stress allowed in a pin. */
  Sourced pinStress() {
    return new Sourced(
        Quantity.of(settings.number(Setting.PIN_STRESS), QuantityUnit.STRESS),
        settings.source(Setting.PIN_STRESS));
  }

  /** What the maker of the supports rates one of them for, where it is stated. */
  Optional<Sourced> rating() {
    return settings
        .optionalNumber(Setting.SUPPORT_RATING)
        .map(
            n ->
                new Sourced(
                    Quantity.of(n, QuantityUnit.FORCE), settings.source(Setting.SUPPORT_RATING)));
  }
}
