package fourpin.strength;

import fourpin.casework.Axis;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Stated;
import fourpin.casework.Part;
import fourpin.job.Job;
import fourpin.job.Setting;
import fourpin.job.Support;
import fourpin.measure.Length;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Sourced;
import fourpin.reference.Reference;
import fourpin.reference.ShelfPin;
import fourpin.strength.ShelfOnSupports.Bearing;
import fourpin.strength.Use.Limit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What would bear a shelf that presses too hard on a support, each worked out anew. */
final class SupportCures {

  private static final Length STEP_INCHES = Length.inches(1, 16);
  private static final Length STEP_METRIC = Length.mm(1);

  /** Ends are cut closer in such steps, and no closer than one of them. */
  private static final Length CLOSEST_INCHES = Length.inches(1, 32);

  private static final Length CLOSEST_METRIC = Length.mm(1);

  private static final Remedy UNBORNE =
      new Remedy(
          "carry the shelf on cleats or standards, or make thicker sides, which have room for deeper"
              + " pins",
          "another case");

  private static final Remedy TIPPING =
      new Remedy(
          "cure first that the shelf tips: what a support then carries is not worked out",
          "see there");

  private final Job job;
  private final ShelfReader reader;
  private final SupportReader supports;
  private final Part part;
  private final Optional<RowForward.Place> forward;
  private final Verdict verdict;
  private final PlateBending.Memory plates;
  private final ShelfCures ofShelf;
  private final NewRocking rocking;

  /**
   * @param rocking of the shelf as it is; where it tips, all are for one whose front row stands so
   *     far forward that it does not
   */
  SupportCures(
      Job job,
      ShelfReader reader,
      SupportReader supports,
      Part part,
      NewRocking rocking,
      PlateBending.Memory plates,
      ShelfCures ofShelf) {
    Verdict verdict = rocking.now();
    this.job = job;
    this.reader = reader;
    this.supports = supports;
    this.part = part;
    this.forward =
        verdict.tips()
            ? new RowForward(job, reader, part, verdict, plates).find()
            : Optional.empty();
    this.verdict = forward.map(RowForward.Place::there).orElse(verdict);
    this.plates = plates;
    this.ofShelf = ofShelf;
    this.rocking = rocking;
  }

  /**
   * Another way to bear it.
   *
   * @param closer the ends of the shelf are cut, both together, mm
   * @param bearing its rows
   */
  private record Borne(
      PinInSide pin,
      double closer,
      Bearing bearing,
      String what,
      String cost,
      Optional<Stated> stated) {}

  /** Those of the supports first; less load last. */
  List<Remedy> all() {
    List<Remedy> all = new ArrayList<>();
    if (verdict.tips()) {
      all.add(TIPPING);
    } else {
      supports.rating().flatMap(this::rated).ifPresent(all::add);
      supports.pin(part, reader).map(this::ofPin).ifPresent(all::addAll);
    }
    if (all.isEmpty()) {
      all.add(UNBORNE);
    }
    ofShelf.partitions().map(cure -> cure.remedy(job)).ifPresent(all::add);
    ofShelf.lessLoad().ifPresent(all::add);
    return all;
  }

  /** Rounded up, of whatever the load is and the row that it is held against needs. */
  private Optional<Remedy> rated(Sourced rating) {
    if (verdict.push() <= rating.number()) {
      return Optional.empty();
    }
    String needed = Quantity.of(verdict.push(), QuantityUnit.FORCE).textAtLeast(job.unit());
    return Optional.of(
        new Remedy(
            "use supports that are rated for %s or more%s%s"
                .formatted(needed, withTheRow(), alsoCrushed()),
            "other supports"));
  }

  private String withTheRow() {
    return forward.map(place -> ", and " + place.words() + ", or it tips").orElse("");
  }

  /** What a rating does not cure. */
  private String alsoCrushed() {
    return supports.pin(part, reader).stream()
        .flatMap(pin -> PinAllowances.limits(pin, supports.pinStress()).stream())
        .filter(limit -> limit.isPassedBy(verdict.push()))
        .min(Comparator.comparingDouble(limit -> limit.most().value()))
        .map(
            limit ->
                "; %s are allowed %s: cure that too"
                    .formatted(limit.most().text(job.unit()), limit.by()))
        .orElse("");
  }

  /** Two changes at once only where one alone does not do. */
  private List<Remedy> ofPin(PinInSide pin) {
    List<Remedy> alone =
        Stream.of(asItIs(pin), closer(pin), deeper(pin), sleeved(pin), thicker(pin), thirdRow(pin))
            .flatMap(this::first)
            .toList();
    return alone.isEmpty() ? first(both(pin)).toList() : alone;
  }

  private Stream<Remedy> first(Stream<Borne> ways) {
    return ways.filter(this::bears).findFirst().map(this::remedy).stream();
  }

  /** Where it tipped, its pins may do as they are. */
  private Stream<Borne> asItIs(PinInSide pin) {
    return forward.stream()
        .map(
            place ->
                new Borne(
                    pin,
                    0,
                    verdict.shelf().bearing(),
                    "",
                    "less wood before the row",
                    Optional.empty()));
  }

  private Stream<Borne> both(PinInSide pin) {
    return closer(pin)
        .flatMap(
            closer ->
                Stream.concat(deeper(closer.pin()), sleeved(closer.pin()))
                    .map(other -> and(closer, other)));
  }

  private static Borne and(Borne one, Borne other) {
    return new Borne(
        other.pin(),
        one.closer(),
        one.bearing(),
        other.what() + ", and " + one.what(),
        other.cost() + "; " + one.cost(),
        Optional.empty());
  }

  /** The least closer first. */
  private Stream<Borne> closer(PinInSide pin) {
    Length now = reader.settings().length(Setting.END_PLAY);
    return Stream.iterate(now.minus(closest()), play -> play.minus(closest()))
        .takeWhile(play -> play.isAtLeast(closest()))
        .map(play -> closer(pin, now, play));
  }

  private Length closest() {
    return job.unit().customary() ? CLOSEST_INCHES : CLOSEST_METRIC;
  }

  private Borne closer(PinInSide pin, Length now, Length play) {
    return new Borne(
        pin.closer(stated(play)),
        now.minus(play).mm(),
        verdict.shelf().bearing(),
        "cut the shelves closer, for an end-play of " + job.style().text(play),
        "care",
        Optional.of(new Stated.OfSetting(Setting.END_PLAY, job.style().text(play))));
  }

  /** As deep as both uprights of the bay allow, the least deep first; sleeves have their length. */
  private Stream<Borne> deeper(PinInSide pin) {
    return reader.support(part).stream()
        .filter(Support.Pins.class::isInstance)
        .map(Support.Pins.class::cast)
        .flatMap(
            pins ->
                depths()
                    .filter(depth -> depth.mm() > pin.depth().number())
                    .map(depth -> deeper(pin, pins, depth)));
  }

  private Stream<Length> depths() {
    Length step = job.unit().customary() ? STEP_INCHES : STEP_METRIC;
    Length most = supports.room(reader.space(part));
    return Stream.iterate(step, depth -> depth.plus(step)).takeWhile(most::isAtLeast);
  }

  private Borne deeper(PinInSide pin, Support.Pins pins, Length depth) {
    boolean longEnough = pins.stem().isAtLeast(depth);
    Stated bored = new Stated.OfSetting(Setting.HOLE_DEPTH, job.style().text(depth));
    return new Borne(
        pin.in(stated(depth)),
        0,
        verdict.shelf().bearing(),
        (longEnough ? "bore their holes %s deep" : "use pins that go %s deep into the side")
            .formatted(job.style().text(depth)),
        longEnough ? "deeper holes" : "deeper holes; other pins",
        Optional.of(bored).filter(_ -> longEnough));
  }

  private Stream<Borne> sleeved(PinInSide pin) {
    Length room = supports.room(reader.space(part));
    return Reference.sleeves().rows().stream()
        .filter(sleeve -> sleeve.pin().mm() == pin.stem().number())
        .filter(sleeve -> room.isAtLeast(sleeve.length()))
        .map(
            sleeve ->
                new Borne(
                    pin.sleeved(stated(sleeve.outside()), stated(sleeve.length())),
                    0,
                    verdict.shelf().bearing(),
                    "put the pins in sleeves %s in diameter, %s long"
                        .formatted(
                            job.style().text(sleeve.outside()), job.style().text(sleeve.length())),
                    "sleeves; larger holes",
                    Optional.empty()));
  }

  /** Of the diameters that are sold, the thinnest first; sleeves have pins of their own. */
  private Stream<Borne> thicker(PinInSide pin) {
    boolean bare = reader.support(part).filter(Support.Pins.class::isInstance).isPresent();
    return Reference.pins().rows().stream()
        .filter(_ -> bare)
        .filter(sold -> sold.stem().mm() > pin.stem().number())
        .sorted(Comparator.comparing(ShelfPin::stem))
        .map(
            sold ->
                new Borne(
                    pin.thick(stated(sold.stem())),
                    0,
                    verdict.shelf().bearing(),
                    "use pins of %s".formatted(sold.name()),
                    "larger holes; other pins",
                    Optional.empty()));
  }

  /** Shelves deeper than the setting says have one; it says the depth of this one. */
  private Stream<Borne> thirdRow(PinInSide pin) {
    return Stream.of(verdict.shelf().bearing())
        .filter(Bearing.Rows.class::isInstance)
        .map(Bearing.Rows.class::cast)
        .filter(rows -> rows.count() == Bearing.Count.TWO)
        .map(
            rows ->
                thirdRow(pin, new Bearing.Rows(rows.front(), rows.back(), Bearing.Count.THREE)));
  }

  private Borne thirdRow(PinInSide pin, Bearing three) {
    Length step = job.unit().customary() ? Length.inches(1) : Length.mm(10);
    Length depth = part.box().size(Axis.Y);
    Length from = step.times(depth.minus(Length.mm(1)).wholeTimes(step));
    return new Borne(
        pin,
        0,
        three,
        "bore a third row half way between front and back, with a pin in it at each end",
        "half as many holes and pins again",
        Optional.of(new Stated.OfSetting(Setting.MIDDLE_ROW_FROM, job.style().text(from))));
  }

  /** A shelf cut closer presses no less: what bears less than is carried now need not be bent. */
  private boolean bears(Borne way) {
    boolean alike = way.bearing().equals(verdict.shelf().bearing());
    return !(alike && bearsLess(way)) && verdict(way).isBorne();
  }

  private boolean bearsLess(Borne way) {
    return supports.limits(Optional.of(way.pin())).stream()
        .anyMatch(l -> l.isPassedBy(verdict.push()));
  }

  private Verdict verdict(Borne way) {
    Candidate now = verdict.shelf();
    LoadedShelf beam = now.beam();
    LoadedShelf longer =
        new LoadedShelf(
            beam.section(), beam.span(), beam.overhang() + way.closer() / 2, beam.load());
    return new Verdict(
        now.with(longer).on(way.bearing(), supports.limits(Optional.of(way.pin()))), plates);
  }

  private Remedy remedy(Borne way) {
    Verdict borne = verdict(way);
    Use most = Verdict.worst(borne.uses().stream().filter(u -> u.isBy(Limit.SUPPORTS)));
    double allowed =
        borne.shelf().supports().stream().mapToDouble(l -> l.most().value()).min().orElseThrow();
    return new Remedy(
        "%s: then %s are allowed, and a support carries %s at the most%s"
            .formatted(words(way), text(allowed), text(most.share() * allowed), rocking.by(borne)),
        way.cost(),
        stated(way));
  }

  private String words(Borne way) {
    return Stream.concat(
            Stream.of(way.what()).filter(what -> !what.isEmpty()),
            forward.stream().map(place -> place.words() + ", or it tips"))
        .collect(Collectors.joining(", and "));
  }

  private Optional<Stated> stated(Borne way) {
    if (forward.isEmpty()) {
      return way.stated();
    }
    Stated.OfSetting moved = forward.orElseThrow().stated();
    if (way.what().isEmpty()) {
      return Optional.of(moved);
    }
    return way.stated()
        .filter(Stated.OfSetting.class::isInstance)
        .map(Stated.OfSetting.class::cast)
        .map(other -> new Stated.OfSettings(List.of(moved, other)));
  }

  private String text(double newton) {
    return Quantity.of(newton, QuantityUnit.FORCE).text(job.unit());
  }

  private static Sourced stated(Length length) {
    return Sourced.stated(Quantity.of(length));
  }
}
