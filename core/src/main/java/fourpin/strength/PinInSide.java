package fourpin.strength;

import fourpin.job.Material;
import fourpin.measure.Sourced;
import fourpin.strength.wood.DowelInWood;

/**
 * A pin, or a pin in a sleeve, in the side of a bay.
 *
 * @param diameter of what presses on the wood: pin or sleeve
 * @param stem diameter of the pin itself
 * @param depth of pin or sleeve in the wood
 * @param reach how far the pin stands out of the side
 * @param gap between the side and the shelf's end, the shelf pushed to the other side
 * @param edge from the middle of the hole to the front edge of the side, mm
 * @param side what the side is of
 * @param air how damp it is there
 */
record PinInSide(
    Sourced diameter,
    Sourced stem,
    Sourced depth,
    Sourced reach,
    Sourced gap,
    double edge,
    Material side,
    ServiceClass air) {

  /** Plastic section modulus of a round bar, d³ / 6 (EN 1995-1-1, 8.5.1.1; NDS, appendix I). */
  private static final double PLASTIC = 6;

  /**
   * From the side's face to the middle of what lies on the pin, mm. A shelf that sags bears on the
   * tip first. What is allowed is a part of what makes pin or wood yield, and before that the pin
   * turns by some hundredths, the end of a shelf within its limits by a hundredth at the most: it
   * then bears nearer the side than taken here.
   */
  double lever() {
    return (reach.number() + Math.min(gap.number(), reach.number())) / 2;
  }

  /** The bending that stresses the pin so far, N·mm. */
  double mostMoment(double stress) {
    return stress * Math.pow(stem.number(), 3) / PLASTIC;
  }

  /** Bending stress in the pin, MPa. */
  double stress(double moment) {
    return moment * PLASTIC / Math.pow(stem.number(), 3);
  }

  DowelInWood dowel() {
    return new DowelInWood(diameter.number(), depth.number(), lever());
  }

  /** Of a stem so deep in the wood. */
  PinInSide in(Sourced other) {
    return new PinInSide(diameter, stem, other, reach, gap, edge, side, air);
  }

  /** Of another diameter, in no sleeve. */
  PinInSide thick(Sourced other) {
    return new PinInSide(other, other, depth, reach, gap, edge, side, air);
  }

  /** In a sleeve. */
  PinInSide sleeved(Sourced outside, Sourced length) {
    return new PinInSide(outside, stem, length, reach, gap, edge, side, air);
  }

  /** Reaching so far out of the side. */
  PinInSide reaching(Sourced other) {
    return new PinInSide(diameter, stem, depth, other, gap, edge, side, air);
  }

  /** Under a shelf that is cut closer. */
  PinInSide closer(Sourced play) {
    return new PinInSide(diameter, stem, depth, reach, play, edge, side, air);
  }
}
