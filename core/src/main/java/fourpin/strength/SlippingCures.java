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
  private final Engagement now;
  private final double least;

  SlippingCures(
      Job job, SupportReader supports, SideBow bow, Part shelf, Verdict verdict, Engagement now) {
    this.job = job;
    this.supports = supports;
    this.bow = bow;
    this.shelf = shelf;
    this.verdict = verdict;
    this.now = now;
    this.least = supports.leastEngagement().number();
  }

  /** Of each kind the least that does. */
  List<Remedy> all() {
    List<Remedy> all =
        Stream.of(closer(), farther(), divided(), stiffer()).flatMap(Optional::stream).toList();
    return all.isEmpty() ? List.of(HELD) : all;
  }

  private boolean holds(Engagement then) {
    return then.left() >= least;
  }

  private Length step() {
    return job.unit().customary() ? STEP_INCHES : STEP_METRIC;
  }

  private Optional<Remedy> closer() {
    Length play = supports.endPlay();
    return Stream.iterate(play.minus(step()), p -> p.isAtLeast(step()), p -> p.minus(step()))
        .filter(p -> holds(on(now.pin().closer(stated(p)))))
        .findFirst()
        .map(
            p ->
                new Remedy(
                    "cut the shelves closer, for an end-play of %s: then %s"
                        .formatted(job.style().text(p), outcome(on(now.pin().closer(stated(p))))),
                    "care",
                    Optional.of(new Stated.OfSetting(Setting.END_PLAY, job.style().text(p)))));
  }

  /** Unless wood or pin are then loaded beyond what is allowed. */
  private Optional<Remedy> farther() {
    double reach = now.pin().reach().number();
    return IntStream.iterate(1, n -> n * step().mm() <= (FARTHEST - 1) * reach, n -> n + 1)
        .mapToObj(n -> on(now.pin().reaching(mm(reach + n * step().mm()))))
        .filter(this::holds)
        .findFirst()
        .filter(then -> bears(then.pin()))
        .map(
            then ->
                new Remedy(
                    "use pins that reach %s out of the side: then %s"
                        .formatted(text(then.pin().reach().number()), outcome(then)),
                    "other pins, at no price stated"));
  }

  /** What carries too much already has cures of its own. */
  private boolean bears(PinInSide pin) {
    return !isPassed(pin) || isPassed(now.pin());
  }

  private boolean isPassed(PinInSide pin) {
    return supports.limits(Optional.of(pin)).stream()
        .anyMatch(limit -> limit.isPassedBy(verdict.push()));
  }

  /** The fewest fixed shelves. */
  private Optional<Remedy> divided() {
    return IntStream.rangeClosed(1, MOST_FIXED)
        .boxed()
        .filter(count -> holds(divided(count)))
        .findFirst()
        .map(
            count ->
                new Remedy(
                    "fix %s between the sides, spread evenly where these shelves stand: then %s"
                        .formatted(
                            count == 1 ? "a shelf" : count + " shelves", outcome(divided(count))),
                    count == 1 ? "a shelf that can't be moved" : "shelves that can't be moved"));
  }

  private Engagement on(PinInSide pin) {
    return now.on(pin, bow.turned(shelf, now.times(pin)) * bow.creep(shelf).number());
  }

  private Engagement divided(int count) {
    return now.bowed(bow.divided(shelf, count) * bow.creep(shelf).number());
  }

  /** Where what its sag draws in is all that is missing. */
  private Optional<Remedy> stiffer() {
    double may = now.drawn() - (least - now.left());
    return may < 0
        ? Optional.empty()
        : Optional.of(
            new Remedy(
                "stiffen the shelves, until they sag by %s after years at the most"
                    .formatted(text(Math.sqrt(may * 3 * verdict.shelf().beam().span() / 8))),
                "wood and weight"));
  }

  private String outcome(Engagement then) {
    return text(then.left()) + " of the pins lie under it after years";
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
