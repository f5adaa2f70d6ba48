package fourpin.plan;

import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.casework.Place;
import fourpin.job.Job;
import fourpin.job.Material;
import java.util.List;

/** What the maker has not said of the materials, though joints and lengths hang on it. */
final class MaterialChecks {

  private MaterialChecks() {}

  /** A note for all sheet goods in the cut list that are planned at the size they are sold by. */
  static List<Finding> of(Job job, List<CutItem> cutList) {
    List<String> unmeasured =
        job.materials().stream()
            .filter(m -> m.kind() == Material.Kind.SHEET && m.measured().isEmpty())
            .filter(m -> !m.isCutInLayers())
            .filter(m -> cutList.stream().anyMatch(i -> i.material().equals(m.name())))
            .map(m -> m.name() + " (" + job.style().text(m.nominal()) + ")")
            .toList();
    return unmeasured.isEmpty() ? List.of() : List.of(note(String.join(", ", unmeasured)));
  }

  private static Finding note(String materials) {
    return new Finding(
        Severity.NOTE,
        "unmeasured",
        "planned at the thickness that it is sold by: "
            + materials
            + "; sheets are often thinner, and every joint and length follows the thickness",
        List.of(),
        Place.JOB,
        List.of(new Remedy("state what a calliper says as measured", "a minute a sheet")));
  }
}
