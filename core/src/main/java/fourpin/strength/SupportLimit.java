package fourpin.strength;

import fourpin.measure.Quantity;
import fourpin.measure.Source;

/**
 * What one support may carry for years.
 *
 * @param most in N
 * @param by whom, with its preposition: "by the NDS"
 * @param source of {@code most}
 */
record SupportLimit(Quantity most, String by, Source source) {

  boolean isPassedBy(double push) {
    return push > most.value();
  }
}
