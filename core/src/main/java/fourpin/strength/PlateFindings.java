package fourpin.strength;

import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.casework.Part;
import fourpin.casework.Place;
import fourpin.job.Job;
import fourpin.measure.Figure;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Sourced;
import fourpin.strength.PlateAnswer.Bends;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Shelves that tip or rock on their supports, or whose edges sag more than their beam. */
final class PlateFindings {

  private static final double GRAVITY = 9.80665;

  private final Job job;
  private final List<Part> shelves;
  private final ShelfOnSupports read;
  private final PlateAnswer answer;
  private final PlateFigures figures;

  /**
   * @param shelves alike; at least one
   */
  PlateFindings(Job job, List<Part> shelves, ShelfOnSupports read, PlateAnswer answer) {
    this.job = job;
    this.shelves = shelves;
    this.read = read;
    this.answer = answer;
    this.figures = new PlateFigures(read, answer);
  }

  List<Finding> all() {
    List<Finding> findings = new ArrayList<>();
    if (answer.hand().isEmpty() || answer.loaded().isEmpty()) {
      findings.add(tips());
    }
    rocks().ifPresent(findings::add);
    answer.loaded().flatMap(this::edge).ifPresent(findings::add);
    return findings;
  }

  /** Where the beam sum holds, which takes all of the depth to sag alike, and an edge does not. */
  private Optional<Finding> edge(Bends bends) {
    double sag = most(bends);
    return read.limits().sagHolds(read.loaded()) && sag > allowed()
        ? Optional.of(edge(bends, sag))
        : Optional.empty();
  }

  private static double most(Bends bends) {
    return Math.max(bends.middle(), Math.max(bends.front(), bends.back()));
  }

  private Finding edge(Bends bends, double sag) {
    String place = sag == bends.back() ? "back" : sag == bends.front() ? "front" : "middle";
    String what =
        "%s: as a plate, the %s sags by %s now and %s after years, more than the beam sum says;"
            + " %s and %s are allowed";
    return finding(
        Severity.DOUBT,
        "edge-sags",
        what.formatted(
            names(),
            place.equals("middle") ? "middle of the depth" : place + " edge",
            length(sag),
            length(sag * read.limits().creep().number()),
            length(read.limits().firstLimit(read.loaded())),
            length(read.limits().yearsLimit(read.loaded()))),
        figures.all().stream().filter(f -> f.id().endsWith("/plate-" + place)).toList(),
        edgeCures(sag));
  }

  /** Sag allowed at first, so that it is within both limits. */
  private double allowed() {
    ShelfLimits limits = read.limits();
    double years = limits.yearsLimit(read.loaded()) / limits.creep().number();
    return Math.min(limits.firstLimit(read.loaded()), years);
  }

  private List<Remedy> edgeCures(double sag) {
    List<Remedy> cures = new ArrayList<>();
    otherStrip().ifPresent(cures::add);
    double load = read.loaded().total() * allowed() / sag - read.section().weight();
    if (load > 0) {
      Quantity most = Quantity.of(load, QuantityUnit.LINE_LOAD);
      cures.add(new Remedy("keep the load to " + most.textAtMost(job.unit()), "room for less"));
    }
    return cures;
  }

  /** The same strip on the other edge, if the shelf then holds as a plate. */
  private Optional<Remedy> otherStrip() {
    return read.withStripsOnBothEdges()
        .flatMap(ShelfPlate::of)
        .flatMap(plate -> PlateBending.of(plate).loaded())
        .map(PlateFindings::most)
        .filter(sag -> sag <= allowed())
        .map(
            sag ->
                new Remedy(
                    "give the other edge the same strip: no place sags by more than "
                        + length(sag)
                        + " now",
                    "one more strip for each shelf"));
  }

  private Finding tips() {
    String under =
        answer.loaded().isEmpty()
            ? "its load"
            : "a hand that pushes " + text(read.doubt().hand()) + " on the front edge";
    return finding(
        Severity.ERROR,
        "shelf-tips",
        names() + ", empty, tips off the back supports under " + under,
        new ShelfFigures(read).tipping().stream().toList(),
        List.of(
            new Remedy("move the front row nearer to the front edge", "less wood before the row"),
            new Remedy("hold the shelf down at the back: a clip, or a pin above it", "a few parts"),
            new Remedy("make the shelf of something heavier or thicker", "wood and weight")));
  }

  /** A shelf that rocks only while little stands on it is no fault. */
  private Optional<Finding> rocks() {
    return figures
        .lowLoad()
        .filter(load -> load.value().value() * GRAVITY > figures.load())
        .flatMap(load -> figures.lowClosed().map(closed -> rocks(load, closed)));
  }

  private Finding rocks(Figure load, Figure closed) {
    Quantity stated = Quantity.of(figures.load() / GRAVITY, QuantityUnit.MASS);
    String what =
        "%s: with one support %s low, it rocks until %s stand on it, spread evenly; %s are stated";
    return finding(
        Severity.DOUBT,
        "shelf-rocks",
        what.formatted(
            names(),
            text(read.doubt().low()),
            load.value().text(job.unit()),
            stated.text(job.unit())),
        List.of(load, closed),
        List.of(
            new Remedy(
                "bore so that all its supports lie within "
                    + closed.value().textAtMost(job.unit())
                    + " of one plane, and try with a flat board before finishing",
                "care"),
            new Remedy("put a slip of card or veneer on the low support", "nothing")));
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

  private String length(double mm) {
    return Quantity.of(mm, QuantityUnit.LENGTH).text(job.unit());
  }

  private String text(Sourced value) {
    return value.value().text(job.unit());
  }
}
