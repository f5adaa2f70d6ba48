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
          "fix the shelf in dadoes, or make thicker sides, which have room for deeper pins; neither is"
              + " worked out",
          "another case");

  private static final Remedy TIPPING =
      new Remedy(
          "cure first that the shelf tips: what a support then carries is not worked out",
          "see there");

  private final Job job;
  private final ShelfReader reader;
  private final SupportReader supports;
  private final Part part;
  private final Optional<RowOutward.Place> forward;
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
            ? new RowOutward(job, reader, part, Over.FRONT, verdict, plates).find()
            : Optional.empty();
    this.verdict = forward.map(RowOutward.Place::there).orElse(verdict);
    this.plates = plates;
    this.ofShelf = ofShelf;
    this.rocking = rocking;
  }

  /**
   * Another way to bear it.
   *
   * @param closer the ends of the shelf are cut, both together, mm
   * @param bearing its rows
   * @param stated settings that say so; nothing where they can't
   */
  private record Borne(
      PinInSide pin,
      double closer,
      Bearing bearing,
      String what,
      String cost,
      Optional<List<Stated.OfSetting>> stated) {

    /** With other pins or holes. */
    Borne with(PinInSide other, String how, String costs, Optional<Stated.OfSetting> setting) {
      return new Borne(
          other,
          closer,
          bearing,
          joined(how, ", and ", what),
          joined(costs, "; ", cost),
          stated.flatMap(before -> setting.map(more -> joined(before, more))));
    }

    private static String joined(String more, String by, String before) {
      return before.isEmpty() ? more : more + by + before;
    }

    private static List<Stated.OfSetting> joined(
        List<Stated.OfSetting> before, Stated.OfSetting more) {
      return Stream.concat(before.stream(), Stream.of(more)).toList();
    }

    Borne costing(String costs) {
      return new Borne(pin, closer, bearing, what, costs, stated);
    }

    Borne cut(double closerBy) {
      return new Borne(pin, closerBy, bearing, what, cost, stated);
    }

    Borne on(Bearing other) {
      return new Borne(pin, closer, other, what, cost, stated);
    }
  }

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
      onStandards().ifPresent(all::add);
    }
    ofShelf.partitions().map(cure -> cure.remedy(job)).ifPresent(all::add);
    ofShelf.lessLoad().ifPresent(all::add);
    return all.isEmpty() ? List.of(UNBORNE) : all;
  }

  /** Of metal, which crush no holes; where they stand by the settings, and as far apart as now. */
  private Optional<Remedy> onStandards() {
    Length setback = reader.settings().length(Setting.STANDARD_SETBACK);
    Bearing rows = new Bearing.Rows(stated(setback), stated(setback), Bearing.Count.TWO);
    return Optional.of(new Verdict(verdict.shelf().on(rows, List.of()), plates))
        .filter(there -> there.by() == Verdict.By.PLATE && !there.tips())
        .map(there -> onStandards(setback, there));
  }

  private Remedy onStandards(Length setback, Verdict there) {
    double most = Math.max(there.push(), there.handPush().orElse(0.0));
    return new Remedy(
        "carry the shelf on clips in standards, %s from its edges, that their maker rates for %s or more each, and set support-rating%s"
            .formatted(job.style().text(setback), needed(most), rocking.by(there)),
        "standards and clips, and no holes");
  }

  /** Rounded up, of whatever the load is and the row that it is held against needs. */
  private Optional<Remedy> rated(Sourced rating) {
    if (verdict.push() <= rating.number()) {
      return Optional.empty();
    }
    return Optional.of(
        new Remedy(
            "use supports that are rated for %s or more%s%s"
                .formatted(needed(verdict.push()), withTheRow(), alsoCrushed()),
            "other supports"));
  }

  private String needed(double newton) {
    return Quantity.of(newton, QuantityUnit.FORCE).textAtLeast(job.unit());
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

  /** Two changes at once only where one alone does not do, of each two the first that do. */
  private List<Remedy> ofPin(PinInSide pin) {
    Borne now = new Borne(pin, 0, verdict.shelf().bearing(), "", "", Optional.of(List.of()));
    List<Remedy> alone =
        Stream.of(asItIs(now), closer(now), deeper(now), sleeved(now), thicker(now), thirdRow(now))
            .flatMap(this::first)
            .toList();
    return alone.isEmpty() ? both(now).flatMap(this::first).toList() : alone;
  }

  private Stream<Stream<Borne>> both(Borne now) {
    return Stream.of(
        closer(now).flatMap(this::deeper),
        closer(now).flatMap(this::sleeved),
        closer(now).flatMap(this::thicker),
        closer(now).flatMap(this::thirdRow),
        thicker(now).flatMap(this::deeper),
        deeper(now).flatMap(this::thirdRow),
        sleeved(now).flatMap(this::thirdRow),
        thicker(now).flatMap(this::thirdRow));
  }

  private Stream<Remedy> first(Stream<Borne> ways) {
    return ways.filter(this::bears).findFirst().map(this::remedy).stream();
  }

  /** Where it tipped, its pins may do as they are. */
  private Stream<Borne> asItIs(Borne now) {
    return forward.stream().map(_ -> now.costing("less wood before the row"));
  }

  /** The least closer first. */
  private Stream<Borne> closer(Borne from) {
    Length now = reader.settings().length(Setting.END_PLAY);
    return Stream.iterate(now.minus(closest()), play -> play.minus(closest()))
        .takeWhile(play -> play.isAtLeast(closest()))
        .map(play -> closer(from, now, play));
  }

  private Length closest() {
    return job.unit().customary() ? CLOSEST_INCHES : CLOSEST_METRIC;
  }

  private Borne closer(Borne from, Length now, Length play) {
    String stated = job.style().text(play);
    return from.with(
            from.pin().closer(stated(play)),
            "cut the shelves closer, for an end-play of " + stated,
            "care",
            Optional.of(new Stated.OfSetting(Setting.END_PLAY, stated)))
        .cut(now.minus(play).mm());
  }

  /** As deep as both uprights of the bay allow, the least deep first; sleeves have their length. */
  private Stream<Borne> deeper(Borne from) {
    return reader.support(part).stream()
        .filter(Support.Pins.class::isInstance)
        .map(Support.Pins.class::cast)
        .flatMap(
            pins ->
                depths()
                    .filter(depth -> depth.mm() > from.pin().depth().number())
                    .map(depth -> deeper(from, pins, depth)));
  }

  private Stream<Length> depths() {
    Length step = job.unit().customary() ? STEP_INCHES : STEP_METRIC;
    Length most = supports.room(reader.space(part));
    return Stream.iterate(step, depth -> depth.plus(step)).takeWhile(most::isAtLeast);
  }

  private Borne deeper(Borne from, Support.Pins pins, Length depth) {
    boolean longEnough = pins.stem().isAtLeast(depth);
    Stated.OfSetting bored = new Stated.OfSetting(Setting.HOLE_DEPTH, job.style().text(depth));
    return from.with(
        from.pin().in(stated(depth)),
        (longEnough ? "bore their holes %s deep" : "use pins that go %s deep into the side")
            .formatted(job.style().text(depth)),
        longEnough ? "deeper holes" : "deeper holes; other pins, at no price stated",
        Optional.of(bored).filter(_ -> longEnough));
  }

  private Stream<Borne> sleeved(Borne from) {
    Length room = supports.room(reader.space(part));
    return Reference.sleeves().rows().stream()
        .filter(sleeve -> sleeve.pin().mm() == from.pin().stem().number())
        .filter(sleeve -> room.isAtLeast(sleeve.length()))
        .map(
            sleeve ->
                from.with(
                    from.pin().sleeved(stated(sleeve.outside()), stated(sleeve.length())),
                    "put the pins in sleeves %s in diameter, %s long"
                        .formatted(
                            job.style().text(sleeve.outside()), job.style().text(sleeve.length())),
                    "larger holes; sleeves, at no price stated",
                    Optional.empty()));
  }

  /** Of the diameters that are sold, the thinnest first; sleeves have pins of their own. */
  private Stream<Borne> thicker(Borne from) {
    boolean bare = reader.support(part).filter(Support.Pins.class::isInstance).isPresent();
    return Reference.pins().rows().stream()
        .filter(_ -> bare)
        .filter(sold -> sold.stem().mm() > from.pin().stem().number())
        .sorted(Comparator.comparing(ShelfPin::stem))
        .map(
            sold ->
                from.with(
                    from.pin().thick(stated(sold.stem())),
                    "use pins of %s".formatted(sold.name()),
                    "larger holes; other pins, at no price stated",
                    Optional.empty()));
  }

  /** Shelves deeper than the setting says have one; it says the depth of this one. */
  private Stream<Borne> thirdRow(Borne from) {
    return Stream.of(verdict.shelf().bearing())
        .filter(Bearing.Rows.class::isInstance)
        .map(Bearing.Rows.class::cast)
        .filter(rows -> rows.count() == Bearing.Count.TWO)
        .map(rows -> new Bearing.Rows(rows.front(), rows.back(), Bearing.Count.THREE))
        .map(three -> thirdRow(from, three));
  }

  private Borne thirdRow(Borne from, Bearing three) {
    Length step = job.unit().customary() ? Length.inches(1) : Length.mm(10);
    Length depth = part.box().size(Axis.Y);
    Length least = step.times(depth.minus(Length.mm(1)).wholeTimes(step));
    return from.with(
            from.pin(),
            "bore a third row half way between front and back, with a pin in it at each end",
            "half as many holes and pins again",
            Optional.of(new Stated.OfSetting(Setting.MIDDLE_ROW_FROM, job.style().text(least))))
        .on(three);
  }

  /** A shelf cut closer presses no less: what bears less than is carried now need not be bent. */
  private boolean bears(Borne way) {
    boolean alike = way.bearing().equals(verdict.shelf().bearing());
    return !(alike && bearsLess(way))
        && !LeastPush.isTooMuch(candidate(way))
        && verdict(way).isBorne();
  }

  private boolean bearsLess(Borne way) {
    return supports.limits(Optional.of(way.pin())).stream()
        .anyMatch(l -> l.isPassedBy(verdict.push()));
  }

  private Verdict verdict(Borne way) {
    return new Verdict(candidate(way), plates);
  }

  private Candidate candidate(Borne way) {
    Candidate now = verdict.shelf();
    return now.with(now.beam().longer(way.closer()))
        .on(way.bearing(), supports.limits(Optional.of(way.pin())));
  }

  private Remedy remedy(Borne way) {
    Verdict borne = verdict(way);
    Use most =
        Verdict.worst(
            borne.uses().stream()
                .filter(
                    u -> u.isBy(Limit.SUPPORTS) && !u.of().equals(borne.shelf().cases().empty())));
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
    List<Stated.OfSetting> moved = forward.map(RowOutward.Place::stated).stream().toList();
    return way.stated()
        .map(others -> Stream.concat(moved.stream(), others.stream()).toList())
        .filter(all -> !all.isEmpty())
        .map(all -> all.size() == 1 ? all.getFirst() : new Stated.OfSettings(all));
  }

  private String text(double newton) {
    return Quantity.of(newton, QuantityUnit.FORCE).text(job.unit());
  }

  private static Sourced stated(Length length) {
    return Sourced.stated(Quantity.of(length));
  }
}
