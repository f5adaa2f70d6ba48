package fourpin.strength;

import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.casework.Part;
import fourpin.casework.Place;
import fourpin.job.Job;
import fourpin.measure.Figure;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Shelves that are found fault with together.
 *
 * @param shelves alike; at least one
 * @param caseName whose they are
 */
record AlikeShelves(Job job, List<Part> shelves, String caseName) {

  AlikeShelves {
    shelves = List.copyOf(shelves);
  }

  /** At the first of them. */
  Finding finding(
      Severity severity, String kind, String what, List<Figure> shown, List<Remedy> remedies) {
    Part first = shelves.getFirst();
    Place place = Place.of(caseName, first.mark(), first.box());
    return new Finding(severity, kind, what, shown, place, remedies);
  }

  /** With their marks, at the beginning of what is said of them. */
  String names() {
    String marks = shelves.stream().map(Part::mark).collect(Collectors.joining(", "));
    return (shelves.size() == 1 ? "shelf " : "shelves ") + marks;
  }

  String text(Figure figure) {
    return figure.value().text(job.unit());
  }

  /** So that it is told from what it is held against. */
  String text(Figure figure, Figure against) {
    return figure.value().textBeside(against.value(), job.unit());
  }
}
