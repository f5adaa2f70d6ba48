package fourpin.plan;

import fourpin.casework.BuiltCase;
import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.casework.Finding.Stated;
import fourpin.casework.Part;
import fourpin.casework.Place;
import fourpin.job.Job;
import fourpin.job.Material;
import fourpin.job.Setting;
import fourpin.job.Settings;
import java.util.List;
import java.util.Optional;

/** Which kind of glass is ordered: what a material says it is, else what the setting says. */
final class GlassKinds {

  private final Job job;
  private final BuiltCase built;

  GlassKinds(Job job, BuiltCase built) {
    this.job = job;
    this.built = built;
  }

  String of(Material glass) {
    return stated(glass).orElseGet(this::set);
  }

  /** Nothing where the material is glass of no kind in particular. */
  private static Optional<String> stated(Material glass) {
    return Setting.GLASS.choices().stream().filter(glass.of()::endsWith).findFirst();
  }

  private String set() {
    return settings().choice(Setting.GLASS);
  }

  private Settings settings() {
    return built.order().settings();
  }

  /** Panes of another kind than someone has set; a default is nobody's wish. */
  List<Finding> findings() {
    return settings().source(Setting.GLASS).isStated()
        ? built.parts().stream()
            .filter(part -> isOther(job.material(part.material())))
            .findFirst()
            .map(this::finding)
            .stream()
            .toList()
        : List.of();
  }

  private boolean isOther(Material material) {
    return material.kind() == Material.Kind.GLASS && !of(material).equals(set());
  }

  private Finding finding(Part part) {
    Material material = job.material(part.material());
    return new Finding(
        Severity.DOUBT,
        "glass-kind",
        "'%s' is of '%s', and the setting glass says %s: %s glass is ordered, as the material says"
            .formatted(material.name(), material.of(), set(), of(material)),
        List.of(),
        Place.of(built.order().name(), part.mark(), part.box()),
        List.of(
            new Remedy(
                "set glass: " + of(material),
                "nothing",
                Optional.of(new Stated.OfSetting(Setting.GLASS, of(material)))),
            new Remedy("state '%s' of 'glass, %s'".formatted(material.name(), set()), "nothing")));
  }
}
