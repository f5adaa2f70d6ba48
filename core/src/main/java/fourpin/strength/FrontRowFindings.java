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
import fourpin.strength.FrontRow.Crushing;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Shelves that hold their load spread evenly, and not in a row along the front edge. */
final class FrontRowFindings {

  private static final Remedy SPREAD =
      new Remedy(
          "put deep or heavy things against the back, or spread them over the depth", "care");

  private final Job job;
  private final List<Part> shelves;
  private final ShelfOnSupports read;
  private final Verdict verdict;
  private final FrontRow row;

  /**
   * @param shelves alike; at least one
   */
  FrontRowFindings(
      Job job, List<Part> shelves, ShelfOnSupports read, Verdict verdict, FrontRow row) {
    this.job = job;
    this.shelves = shelves;
    this.read = read;
    this.verdict = verdict;
    this.row = row;
  }

  List<Finding> all() {
    List<Finding> all = new ArrayList<>();
    row.sagging().map(this::sags).ifPresent(all::add);
    row.crushing().map(this::crushes).ifPresent(all::add);
    return all;
  }

  private Finding sags(Figure sag) {
    ShelfAnswer answer = new ShelfFigures(read, verdict).answer(List.of());
    String what =
        "%s: with %s it sags by %s now and %s after years; %s and %s are allowed. Spread evenly that"
            + " load sags it by %s and %s, within both";
    return finding(
        "row-sags",
        what.formatted(
            names(),
            row.words(),
            text(sag),
            years(sag),
            text(answer.limitNow()),
            text(answer.limitYears()),
            text(answer.sagNow()),
            text(answer.sagYears())),
        List.of(sag, answer.limitNow(), answer.limitYears(), answer.sagNow(), answer.sagYears()),
        List.of(
            SPREAD,
            new Remedy(
                "glue a higher strip to its front edge, or make it thicker, and plan again",
                "wood and weight")));
  }

  private String years(Figure sag) {
    double after = sag.value().value() * read.limits().creep().number();
    return Quantity.of(after, QuantityUnit.LENGTH).text(job.unit());
  }

  private Finding crushes(Crushing crushing) {
    String what =
        "%s: with %s a support carries %s; %s are allowed for loads that stay. Spread evenly that load"
            + " brings %s on it, within that";
    return finding(
        "row-crushes",
        what.formatted(
            names(),
            row.words(),
            text(crushing.push()),
            String.join(" and ", crushing.limits()),
            text(crushing.even())),
        List.of(crushing.push(), crushing.even()),
        List.of(
            SPREAD,
            new Remedy("use sleeves: more wood bears them", "a larger hole; sleeves"),
            new Remedy(
                "use pins that go deeper into the side, or supports of a higher rating",
                "deeper holes, or other supports")));
  }

  private Finding finding(String kind, String what, List<Figure> shown, List<Remedy> remedies) {
    Part first = shelves.getFirst();
    Place place = Place.of(read.caseName(), first.mark(), first.box());
    return new Finding(Severity.DOUBT, kind, what, shown, place, remedies);
  }

  private String names() {
    String marks = shelves.stream().map(Part::mark).collect(Collectors.joining(", "));
    return (shelves.size() == 1 ? "shelf " : "shelves ") + marks;
  }

  private String text(Figure figure) {
    return figure.value().text(job.unit());
  }
}
