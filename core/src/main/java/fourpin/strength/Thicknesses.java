package fourpin.strength;

import fourpin.job.Material;
import fourpin.job.Material.Kind;
import fourpin.measure.Length;
import fourpin.measure.Unit;
import fourpin.reference.GlassThickness;
import fourpin.reference.Reference;
import java.util.Optional;
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
        material.density());
  }

  /** What to do, in words. */
  static String words(Material thick, String thickness) {
    return (thick.kind() == Kind.GLASS
            ? "take glass of %s, which the job does not list yet"
            : "make it of the same material, but at least %s thick, which the job does not list yet")
        .formatted(thickness);
  }
}
