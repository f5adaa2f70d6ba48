package fourpin.strength;

import fourpin.measure.Quantity;
import fourpin.measure.Source;

/**
 * What one support may carry.
 *
 * @param most for years, N
 * @param brief for minutes, N: wood stands more then, metal does not
 * @param by whom, with its preposition: "by the NDS"
 * @param source of {@code most}
 */
record SupportLimit(Quantity most, Quantity brief, String by, Source source) {

  boolean isPassedBy(double push) {
    return push > most.value();
  }
}
