package fourpin.strength;

import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.casework.Part;
import fourpin.casework.Place;
import fourpin.job.Job;
import fourpin.measure.Figure;
import fourpin.measure.Lazy;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.strength.PlateAnswer.Bends;
import fourpin.strength.Use.Limit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Shelves that hold their load spread evenly, and not where it may lie as well. */
final class UnevenFindings {

  private final Job job;
  private final List<Part> shelves;
  private final ShelfOnSupports read;
  private final Verdict verdict;
  private final LoadCase of;
  private final List<Remedy> ofShelf;
  private final List<Remedy> ofSupports;

  /**
   * @param shelves alike; at least one
   * @param of how the load lies: in a row, or on one half
   * @param ofShelf what cures the shelf, and {@code ofSupports} what they carry; both looked into
   *     only where something is wrong
   */
  UnevenFindings(
      Job job,
      List<Part> shelves,
      ShelfOnSupports read,
      Verdict verdict,
      LoadCase of,
      List<Remedy> ofShelf,
      List<Remedy> ofSupports) {
    this.job = job;
    this.shelves = shelves;
    this.read = read;
    this.verdict = verdict;
    this.of = of;
    this.ofShelf = ofShelf;
    this.ofSupports = ofSupports;
  }

  /** What is wrong with its load spread evenly is told as such. */
  List<Finding> all() {
    List<Finding> all = new ArrayList<>();
    Optional<UnevenLoad> load = PlateFigures.of(read, verdict).map(f -> f.unevenly(of));
    verdict
        .under(of)
        .ifPresent(
            bends -> {
              if (isNew(Limit.SAG)) {
                load.flatMap(UnevenLoad::sag).map(this::sags).ifPresent(all::add);
              }
              if (isNew(Limit.STRESS)) {
                all.add(breaks(bends));
              }
              if (isNew(Limit.SUPPORTS)) {
                load.flatMap(UnevenLoad::push).map(this::crushes).ifPresent(all::add);
              }
            });
    return all;
  }

  private boolean isNew(Limit limit) {
    return verdict.holds(LoadCase.EVEN, limit) && !verdict.holds(of, limit);
  }

  private String kind(String what) {
    return (of.equals(LoadCase.ONE_HALF) ? "half-" : "row-") + what;
  }

  private Finding sags(Figure sag) {
    ShelfFigures figures = new ShelfFigures(read, verdict);
    ShelfAnswer answer = figures.answer(List.of(), Lazy.of(() -> figures.rest(List.of())));
    String what =
        "%s: with %s it sags by %s now and %s after years; %s and %s are allowed. Spread evenly that"
            + " load sags it by %s and %s, within both";
    return finding(
        Severity.DOUBT,
        kind("sags"),
        what.formatted(
            names(),
            of.words(job.unit()),
            text(sag),
            years(sag),
            text(answer.limitNow()),
            text(answer.limitYears()),
            text(answer.sagNow()),
            text(answer.sagYears())),
        List.of(sag, answer.limitNow(), answer.limitYears(), answer.sagNow(), answer.sagYears()),
        ofShelf);
  }

  private String years(Figure sag) {
    double after = sag.value().value() * read.limits().creep().number();
    return Quantity.of(after, QuantityUnit.LENGTH).text(job.unit());
  }

  /** Only of glass, which breaks without warning. */
  private Finding breaks(Bends bends) {
    ShelfFigures figures = new ShelfFigures(read, verdict);
    Figure even = figures.stressNow();
    String most = Quantity.of(bends.stress().get().all(), QuantityUnit.STRESS).text(job.unit());
    String allowed = read.limits().stress().orElseThrow().value().text(job.unit());
    return finding(
        Severity.ERROR,
        kind("breaks"),
        "%s of glass: with %s it is stressed to %s; %s are taken as allowed for years. Spread evenly that load stresses it to %s"
            .formatted(names(), of.words(job.unit()), most, allowed, text(even)),
        List.of(even),
        ofShelf);
  }

  private Finding crushes(Figure push) {
    Optional<Figure> even = PlateFigures.of(read, verdict).flatMap(PlateFigures::push);
    String limits =
        verdict.shelf().supports().stream()
            .filter(limit -> limit.isPassedBy(push.value().value()))
            .map(limit -> limit.most().text(job.unit()) + " " + limit.by())
            .collect(Collectors.joining(" and "));
    return finding(
        Severity.DOUBT,
        kind("crushes"),
        "%s: with %s a support carries %s; %s are allowed for loads that stay. Spread evenly that load brings %s on it, within that"
            .formatted(
                names(),
                of.words(job.unit()),
                text(push),
                limits,
                even.map(this::text).orElse("less")),
        Stream.concat(Stream.of(push), even.stream()).toList(),
        ofSupports);
  }

  private Finding finding(
      Severity severity, String kind, String what, List<Figure> shown, List<Remedy> remedies) {
    Part first = shelves.getFirst();
    Place place = Place.of(read.caseName(), first.mark(), first.box());
    return new Finding(severity, kind, what, shown, place, remedies);
  }

  private String names() {
    String marks = shelves.stream().map(Part::mark).collect(Collectors.joining(", "));
    return (shelves.size() == 1 ? "shelf " : "shelves ") + marks;
  }

  private String text(Figure figure) {
    return figure.value().text(job.unit());
  }
}
