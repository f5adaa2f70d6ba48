package fourpin.strength;

import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Stated;
import fourpin.casework.Part;
import fourpin.job.Job;
import fourpin.job.Setting;
import fourpin.measure.Length;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Sourced;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** What would keep enough of a pin under the end of a shelf for years, each worked out anew. */
final class SlippingCures {

  private static final Length STEP_INCHES = Length.inches(1, 32);
  private static final Length STEP_METRIC = Length.mm(1);

  /** Pins that reach farther than so many times what they do are other hardware. */
  private static final int FARTHEST = 2;

  /** More fixed shelves than these leave no room to move any. */
  private static final int MOST_FIXED = 3;

  private static final Remedy HELD =
      new Remedy("carry the shelf on cleats or standards, which reach under it", "another case");

  private final Job job;
  private final SupportReader supports;
  private final SideBow bow;
  private final Part shelf;
  private final Verdict verdict;
  private final PlateBending.Memory plates;
  private final Engagement now;
  private final double least;

  SlippingCures(
      Job job,
      SupportReader supports,
      SideBow bow,
      Part shelf,
      Verdict verdict,
      PlateBending.Memory plates,
      Engagement now) {
    this.job = job;
    this.supports = supports;
    this.bow = bow;
    this.shelf = shelf;
    this.verdict = verdict;
    this.plates = plates;
    this.now = now;
    this.least = supports.leastEngagement().number();
  }

  /**
   * A shelf as it might be held.
   *
   * @param beam of the shelf on those pins
   * @param panels more that are fixed to its sides
   * @param stiffness whether it may have to sag less
   * @param cost may be empty
   * @param stated how the job says so; nothing where it can't
   */
  private record Way(
      PinInSide pin,
      LoadedShelf beam,
      int panels,
      Stiffness stiffness,
      String what,
      String cost,
      Optional<Stated> stated) {

    /** And something more; two together no job says. */
    Way with(String how, String costs, Optional<Stated> saying) {
      return new Way(
          pin,
          beam,
          panels,
          stiffness,
          what.isEmpty() ? how : what + ", and " + how,
          cost.isEmpty() ? costs : cost + "; " + costs,
          what.isEmpty() ? saying : Optional.empty());
    }

    Way on(PinInSide other, LoadedShelf longer) {
      return new Way(other, longer, panels, stiffness, what, cost, stated);
    }

    Way divided(int count) {
      return new Way(pin, beam, count, stiffness, what, cost, stated);
    }

    Way stiffened() {
      return new Way(pin, beam, panels, Stiffness.AS_NEEDED, what, cost, stated);
    }
  }

  /** How far a shelf may sag. */
  private enum Stiffness {
    AS_IT_IS,
    /** So little that it holds, if that is no less than other limits ask of it. */
    AS_NEEDED
  }

  /** Of each kind the least that does; two changes at once only where one alone does not do. */
  List<Remedy> all() {
    Way way =
        new Way(now.pin(), verdict.shelf().beam(), 0, Stiffness.AS_IT_IS, "", "", Optional.empty());
    List<Remedy> alone =
        Stream.concat(
                Stream.of(closer(way), farther(way), divided(way)).flatMap(this::first),
                stiffer().stream())
            .toList();
    List<Remedy> all = alone.isEmpty() ? both(way).flatMap(this::first).toList() : alone;
    return all.isEmpty() ? List.of(HELD) : all;
  }

  private Stream<Stream<Way>> both(Way now) {
    return Stream.of(
        closer(now).flatMap(this::farther),
        closer(now).flatMap(this::divided),
        closer(now).flatMap(this::stiffened),
        farther(now).flatMap(this::divided),
        farther(now).flatMap(this::stiffened),
        divided(now).flatMap(this::stiffened));
  }

  private Stream<Remedy> first(Stream<Way> ways) {
    return ways.filter(this::holds).findFirst().map(this::remedy).stream();
  }

  /** Unless wood or pin are then loaded beyond what is allowed. */
  private boolean holds(Way way) {
    return engaged(way).left() >= least && bears(way.pin());
  }

  private Length step() {
    return job.unit().customary() ? STEP_INCHES : STEP_METRIC;
  }

  /** The least closer first. */
  private Stream<Way> closer(Way from) {
    Length play = supports.endPlay();
    return Stream.iterate(play.minus(step()), p -> p.isAtLeast(step()), p -> p.minus(step()))
        .map(p -> closer(from, play, p));
  }

  private Way closer(Way from, Length play, Length less) {
    String stated = job.style().text(less);
    return from.on(from.pin().closer(stated(less)), from.beam().longer(play.minus(less).mm()))
        .with(
            "cut the shelves closer, for an end-play of " + stated,
            "care",
            Optional.of(new Stated.OfSetting(Setting.END_PLAY, stated)));
  }

  /** The least farther first. */
  private Stream<Way> farther(Way from) {
    double reach = now.pin().reach().number();
    return IntStream.iterate(1, n -> n * step().mm() <= (FARTHEST - 1) * reach, n -> n + 1)
        .mapToObj(n -> farther(from, n * step().mm()));
  }

  private Way farther(Way from, double more) {
    double reach = now.pin().reach().number() + more;
    return from.on(from.pin().reaching(mm(reach)), from.beam().inward(more))
        .with(
            "use pins that reach %s out of the side".formatted(text(reach)),
            "other pins, at no price stated",
            Optional.empty());
  }

  /** What carries too much already has cures of its own. */
  private boolean bears(PinInSide pin) {
    return !isPassed(pin) || isPassed(now.pin());
  }

  private boolean isPassed(PinInSide pin) {
    return supports.limits(Optional.of(pin)).stream()
        .anyMatch(limit -> limit.isPassedBy(verdict.push()));
  }

  /** The fewest fixed shelves first. */
  private Stream<Way> divided(Way from) {
    return IntStream.rangeClosed(1, MOST_FIXED).mapToObj(count -> divided(from, count));
  }

  private Way divided(Way from, int count) {
    return from.divided(count)
        .with(
            "fix %s between the sides, spread evenly where these shelves stand"
                .formatted(count == 1 ? "a shelf" : count + " shelves"),
            count == 1 ? "a shelf that can't be moved" : "shelves that can't be moved",
            Optional.empty());
  }

  /** Where what its sag draws in is all that is missing. */
  private Optional<Remedy> stiffer() {
    return mostSag(now, verdict.shelf().beam())
        .map(sag -> new Remedy(stiffen(sag), "wood and weight"));
  }

  private String stiffen(double sag) {
    return "stiffen the shelves, until they sag by %s after years at the most".formatted(text(sag));
  }

  /** After years, with which enough is left; nothing where none does. */
  private Optional<Double> mostSag(Engagement then, LoadedShelf beam) {
    double may = then.drawn() - (least - then.left());
    return Optional.of(may).filter(m -> m >= 0).map(m -> Math.sqrt(m * 3 * beam.span() / 8));
  }

  /** A shelf that sags farther than it may has to be stiffer anyway, and is taken for that. */
  private Stream<Way> stiffened(Way from) {
    return Stream.of(from.stiffened())
        .filter(way -> sagInYears(from.beam()) > allowed(from.beam()))
        .flatMap(way -> mostSag(engaged(way), way.beam()).stream().map(sag -> told(way, sag)));
  }

  private Way told(Way way, double sag) {
    return way.with(stiffen(sag), "wood and weight", Optional.empty());
  }

  private Engagement engaged(Way way) {
    double draws =
        switch (way.stiffness()) {
          case AS_IT_IS -> sagInYears(way.beam());
          case AS_NEEDED -> allowed(way.beam());
        };
    double drawn = 8 * draws * draws / (3 * way.beam().span());
    return new Engagement(way.pin(), bowInYears(way), now.breath(), drawn);
  }

  private double bowInYears(Way way) {
    double times = now.times(way.pin()) * way.beam().reaction() / verdict.shelf().beam().reaction();
    double bows =
        way.panels() == 0 ? bow.turned(shelf, times) : bow.divided(shelf, way.panels(), times);
    return bows * bow.creep(shelf).number();
  }

  private double sagInYears(LoadedShelf beam) {
    Candidate then = verdict.shelf().with(beam);
    return new Verdict(then, plates).loaded().sag() * then.limits().creep().number();
  }

  private double allowed(LoadedShelf beam) {
    ShelfLimits limits = verdict.shelf().limits();
    return limits.sagAllowed(beam.span()) * limits.creep().number();
  }

  /** Of shelves that sag as far as they then may. */
  private double left(Way way) {
    return switch (way.stiffness()) {
      case AS_IT_IS -> engaged(way).left();
      case AS_NEEDED -> least;
    };
  }

  private Remedy remedy(Way way) {
    return new Remedy(
        "%s: then %s of the pins lie under it after years".formatted(way.what(), text(left(way))),
        way.cost(),
        way.stated());
  }

  private String text(double mm) {
    return Quantity.of(mm, QuantityUnit.LENGTH).text(job.unit());
  }

  private static Sourced stated(Length length) {
    return Sourced.stated(Quantity.of(length));
  }

  private static Sourced mm(double value) {
    return Sourced.stated(Quantity.of(value, QuantityUnit.LENGTH));
  }
}
