package fourpin.strength;

import fourpin.casework.BuiltCase;
import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.casework.Place;
import fourpin.job.Job;
import fourpin.job.Material;
import fourpin.measure.Figure;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** What is to be known of materials that are unlike both ways, and whose parts may lie either. */
final class EitherWay {

  private final Job job;
  private final Set<String> used;

  EitherWay(Job job, List<BuiltCase> cases) {
    this.job = job;
    this.used =
        cases.stream()
            .flatMap(c -> c.parts().stream())
            .map(p -> p.material())
            .collect(Collectors.toSet());
  }

  /** One for each that a part is made of. */
  List<Finding> findings() {
    return job.materials().stream()
        .filter(m -> used.contains(m.name()))
        .filter(Matters::isCutEitherWay)
        .map(this::finding)
        .toList();
  }

  private Finding finding(Material material) {
    Figure weaker = weaker(material);
    return new Finding(
        Severity.NOTE,
        "either-way",
        "'%s' has grain: none, so that its parts may be cut with its grain along them or across; all of them are taken to be as stiff as the weaker way, %s"
            .formatted(material.name(), weaker.value().text(job.unit())),
        List.of(weaker),
        Place.JOB,
        List.of(
            new Remedy(
                "state 'grain: lengthwise' for '%s', so that its grain runs along its parts: they then count with %s along them"
                    .formatted(
                        material.name(),
                        Matters.asLaid(material).modulus().value().text(job.unit())),
                "parts that are not turned on the sheet")));
  }

  private static Figure weaker(Material material) {
    Flat flat = Matters.asLaid(material).flat();
    return new Figure(
        Figure.id("materials", material.name(), "weaker-way"),
        "modulus of elasticity of the weaker way of " + material.name(),
        Matters.of(material).modulus().value(),
        "the less of E₁ and E₂",
        List.of(
            flat.along().input("E₁", "modulus of elasticity along its grain"),
            flat.across().input("E₂", "modulus of elasticity across it")),
        Matters.of(material).modulus().source());
  }
}
