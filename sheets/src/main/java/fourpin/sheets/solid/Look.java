package fourpin.sheets.solid;

import fourpin.job.Material;
import fourpin.reference.Colour;
import fourpin.reference.Reference;
import fourpin.reference.Substance;

/**
 * What a surface looks like.
 *
 * @param name what it is of, in words
 * @param opacity from 0, not seen at all, to 1
 */
public record Look(String name, Colour colour, double opacity) {

  /** Things behind glass, and behind doors that nobody has planned, stay in sight. */
  private static final double GLASS = 0.35;

  private static final double DOOR = 0.5;

  static Look of(Material material) {
    Substance substance = Reference.substances().get(material.of());
    return new Look(
        material.name() + ": " + substance.name(),
        Reference.colourOf(substance),
        substance.family() == Substance.Family.GLASS ? GLASS : 1);
  }

  static Look edging(String what) {
    return new Look("edging: " + what, Reference.colours().get("edging"), 1);
  }

  static Look door() {
    return new Look("door: room only, not planned", Reference.colours().get("door"), DOOR);
  }

  static Look hole() {
    return new Look("hole", Reference.colours().get("hole"), 1);
  }
}
