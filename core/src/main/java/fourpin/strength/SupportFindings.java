package fourpin.strength;

import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.casework.Part;
import fourpin.job.Job;
import fourpin.measure.Figure;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Sourced;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Supports that carry more than wood, metal or their maker's rating allow, however the load lies.
 */
final class SupportFindings {

  private final Job job;
  private final AlikeShelves alike;
  private final SupportFigures figures;
  private final SupportReader supports;
  private final Optional<PinInSide> pin;
  private final Ways cures;

  /**
   * What would help, looked into only where it is asked for.
   *
   * @param borne where a support carries too much
   * @param held where too little of a pin lies under the shelf
   */
  record Ways(List<Remedy> borne, List<Remedy> held) {}

  /**
   * @param shelves alike; at least one
   */
  SupportFindings(
      Job job,
      List<Part> shelves,
      ShelfOnSupports read,
      SupportFigures figures,
      SupportReader supports,
      Optional<PinInSide> pin,
      Ways cures) {
    this.job = job;
    this.alike = new AlikeShelves(job, shelves, read.caseName());
    this.figures = figures;
    this.supports = supports;
    this.pin = pin;
    this.cures = cures;
  }

  List<Finding> all() {
    List<Finding> all = new ArrayList<>();
    figures
        .push()
        .ifPresent(
            push -> {
              pin.flatMap(p -> crushes(p, push)).ifPresent(all::add);
              supports.rating().flatMap(r -> overRated(r, push)).ifPresent(all::add);
            });
    figures.handPush().flatMap(this::pressedByHand).ifPresent(all::add);
    if (pin.isEmpty() && supports.rating().isEmpty()) {
      figures.push().flatMap(this::unrated).ifPresent(all::add);
    }
    pin.flatMap(figures::stress).flatMap(this::bends).ifPresent(all::add);
    pin.flatMap(this::slips).ifPresent(all::add);
    return all;
  }

  /** Standards, clips and cleats, of which no code says what they bear; nothing in joints. */
  private Optional<Finding> unrated(Figure push) {
    return value(push) > 0
        ? Optional.of(
            alike.finding(
                Severity.NOTE,
                "support-unrated",
                "%s: %sa support carries %s; no rating of its maker is stated, and nothing was held against it"
                    .formatted(alike.names(), lying(), alike.text(push)),
                List.of(push),
                List.of(rated())))
        : Optional.empty();
  }

  /** Of wooden cleats the reader is the maker. */
  private Remedy rated() {
    return supports.areCleats(alike.shelves().getFirst())
        ? new Remedy(
            "no code says what shop-made cleats bear: load a pair on a scrap of the side until it"
                + " gives way, with nobody near, and set support-rating to a third of what one of"
                + " them bore",
            "a trial pair")
        : new Remedy("ask its maker what one of them bears, and set support-rating", "nothing");
  }

  private Optional<Finding> pressedByHand(Figure push) {
    String passed =
        figures.passedByHand().stream()
            .map(limit -> limit.brief().text(job.unit()) + " " + limit.by())
            .collect(Collectors.joining(" and "));
    return passed.isEmpty()
        ? Optional.empty()
        : Optional.of(
            alike.finding(
                figures.allPassedByHand() ? Severity.ERROR : Severity.DOUBT,
                "hand-presses",
                "%s: a hand that pushes on the front edge above a support brings %s on it, and nothing else stands there; %s are allowed for minutes"
                    .formatted(alike.names(), alike.text(push), passed),
                List.of(push),
                cures.borne()));
  }

  /** Over all codes that speak it fails; over one of two it is a doubt. */
  private Optional<Finding> crushes(PinInSide in, Figure push) {
    List<Figure> allowed = figures.allowed(in);
    long over = allowed.stream().filter(a -> value(push) > value(a)).count();
    return over == 0
        ? Optional.empty()
        : Optional.of(
            crushes(push, allowed, over == allowed.size() ? Severity.ERROR : Severity.DOUBT));
  }

  private Finding crushes(Figure push, List<Figure> allowed, Severity severity) {
    String limits =
        allowed.stream()
            .map(a -> alike.text(a) + a.title().substring(a.title().indexOf(", by ") + 1))
            .collect(Collectors.joining(" and "));
    return alike.finding(
        severity,
        "support-crushes",
        "%s: %sa support carries %s and may crush the wood of its hole; %s are allowed for loads that stay%s"
            .formatted(alike.names(), lying(), alike.text(push), limits, evenly()),
        Stream.of(List.of(push), even(), allowed).flatMap(List::stream).toList(),
        cures.borne());
  }

  private Optional<Finding> bends(Figure stress) {
    Sourced allowed = supports.pinStress();
    return value(stress) <= allowed.number()
        ? Optional.empty()
        : Optional.of(
            alike.finding(
                Severity.DOUBT,
                "pin-bends",
                "%s: %sthe most loaded pin is bent to %s; %s are taken as allowed"
                    .formatted(
                        alike.names(),
                        lying(),
                        stress.value().textBeside(allowed.value(), job.unit()),
                        allowed.value().textBeside(stress.value(), job.unit())),
                List.of(stress),
                cures.borne()));
  }

  /** Shelves that are short at once are found fault with where they are fitted. */
  private Optional<Finding> slips(PinInSide in) {
    Figure engagement = figures.engagement(in);
    Sourced least = supports.leastEngagement();
    double atOnce = in.reach().number() - in.gap().number();
    return value(engagement) >= least.number() || atOnce < least.number()
        ? Optional.empty()
        : Optional.of(
            alike.finding(
                value(engagement) > 0 ? Severity.DOUBT : Severity.ERROR,
                "engagement-years",
                "%s: pushed to one side, after years %s; %s are asked for"
                    .formatted(alike.names(), lying(engagement), least.value().text(job.unit())),
                List.of(engagement),
                cures.held()));
  }

  private String lying(Figure engagement) {
    Quantity missing = Quantity.of(-value(engagement), QuantityUnit.LENGTH);
    return value(engagement) > 0
        ? "only %s of the pins at the other end lie under it".formatted(alike.text(engagement))
        : "its other end lies %s beyond its pins, and it drops".formatted(missing.text(job.unit()));
  }

  private Optional<Finding> overRated(Sourced rating, Figure push) {
    return value(push) <= rating.number()
        ? Optional.empty()
        : Optional.of(
            alike.finding(
                Severity.ERROR,
                "support-rating",
                "%s: %sa support carries %s; its maker rates it for %s%s"
                    .formatted(
                        alike.names(),
                        lying(),
                        alike.text(push),
                        rating.value().text(job.unit()),
                        evenly()),
                Stream.concat(Stream.of(push), even().stream()).toList(),
                cures.borne()));
  }

  /** How its load lies where it presses hardest, if not evenly. */
  private Optional<LoadCase> unevenly() {
    return figures.pressing().filter(of -> !of.equals(LoadCase.EVEN));
  }

  private String lying() {
    return unevenly().map(of -> "with " + of.words(job.unit()) + " ").orElse("");
  }

  private String evenly() {
    return even().stream()
        .map(push -> ". Spread evenly that load brings " + alike.text(push) + " on it")
        .collect(Collectors.joining());
  }

  /** What the load brings where it is spread evenly, beside a larger push. */
  private List<Figure> even() {
    return unevenly().flatMap(_ -> figures.evenPush()).stream().toList();
  }

  private static double value(Figure figure) {
    return figure.value().value();
  }
}
