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
 */
record PinInSide(
    Sourced diameter,
    Sourced stem,
    Sourced depth,
    Sourced reach,
    Sourced gap,
    double edge,
    Material side) {

  /** From the side's face to the middle of what lies on the pin, mm. */
  double lever() {
    return (reach.number() + Math.min(gap.number(), reach.number())) / 2;
  }

  DowelInWood dowel() {
    return new DowelInWood(diameter.number(), depth.number(), lever());
  }
}
