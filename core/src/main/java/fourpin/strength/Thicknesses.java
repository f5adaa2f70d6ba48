package fourpin.strength;

import fourpin.job.Job;
import fourpin.job.Material;
import fourpin.job.Material.Kind;
import fourpin.measure.Length;
import fourpin.measure.Unit;
import fourpin.reference.GlassThickness;
import fourpin.reference.Reference;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.DoublePredicate;
import java.util.stream.Stream;

/** A material of a job in thicknesses that the job does not list, thinnest first. */
final class Thicknesses {

  private Thicknesses() {}

  /** Thicker than it is; none of a panel of layers, which would be another panel. */
  static Stream<Material> above(Material material, Unit unit) {
    return material.layers().isEmpty()
        ? lengths(material, unit).map(thick -> as(material, thick))
        : Stream.of();
  }

  /** The thinnest that does: of the job's own materials alike it, else such a one. */
  static Optional<Material> first(Job job, Material now, DoublePredicate holds) {
    return Stream.concat(listed(job, now), above(now, job.unit()))
        .filter(thick -> holds.test(thick.thickness().mm()))
        .findFirst();
  }

  private static Stream<Material> listed(Job job, Material now) {
    return job.materials().stream()
        .filter(m -> m.kind() == now.kind() && m.of().equals(now.of()))
        .filter(m -> m.stiffness().equals(now.stiffness()) && m.layers().equals(List.of()))
        .filter(m -> m.strength().equals(now.strength()))
        .filter(m -> m.thickness().isMoreThan(now.thickness()) && now.layers().isEmpty())
        .sorted(Comparator.comparing(Material::thickness));
  }

  /** What to do with a part that can't be of another material than its case. */
  static String words(Job job, String part, Material thick) {
    String thickness = job.style().text(thick.thickness());
    return job.materials().contains(thick)
        ? "make %s as thick as '%s', %s".formatted(part, thick.name(), thickness)
        : "make %s at least %s thick, of the same material, which the job does not list yet"
            .formatted(part, thickness);
  }

  /** Glass is made in some thicknesses only. */
  private static Stream<Length> lengths(Material material, Unit unit) {
    return material.kind() == Kind.GLASS
        ? Reference.glassThicknesses().rows().stream()
            .map(GlassThickness::thickness)
            .filter(t -> t.unit().customary() == unit.customary())
            .filter(t -> t.isMoreThan(material.thickness()))
        : LeastThickness.steps(material.thickness().mm(), unit);
  }

  private static Material as(Material material, Length thickness) {
    return new Material(
        material.name(),
        material.kind(),
        material.of(),
        thickness,
        Optional.empty(),
        material.grain(),
        material.stiffness(),
        material.density(),
        material.strength(),
        List.of());
  }

  /** What to do, in words. */
  static String words(Material thick, String thickness) {
    return (thick.kind() == Kind.GLASS
            ? "take glass of %s, which the job does not list yet"
            : "make it of the same material, but at least %s thick, which the job does not list yet")
        .formatted(thickness);
  }
}
