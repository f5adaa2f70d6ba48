package fourpin.shop.cut;

import fourpin.cutting.Allowance;
import fourpin.cutting.SawLimits.FirstCut;
import fourpin.measure.Length;
import java.util.Optional;

/**
 * How the boards of one material are sold, and what is taken off them.
 *
 * @param thickness as sold, where it is stated
 * @param first which way the first cut of sheets and boards runs, where it is stated
 * @param planed how much planing takes off the thickness
 */
record Rough(
    Optional<Length> thickness, Optional<FirstCut> first, Length planed, Allowance allowance) {

  /** As thick as planed boards are. */
  Optional<Length> left() {
    return thickness.map(all -> all.minus(planed));
  }
}
