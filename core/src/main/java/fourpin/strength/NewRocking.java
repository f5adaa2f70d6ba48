package fourpin.strength;

import fourpin.job.Job;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.strength.ShelfPlate.Prop;

/**
 * Whether a shelf that lies still on one low support begins to rock with a cure: what is stiffer or
 * bears less settles less onto the low one.
 *
 * @param low how far it lies low, mm
 * @param now the shelf as it is
 */
record NewRocking(Job job, double low, Verdict now) {

  /** What more there is to say of the cure. */
  String by(Verdict then) {
    return by(then, then.shelf().beam().load());
  }

  /**
   * The same under another load.
   *
   * @param load along it, N/mm
   */
  String by(Verdict then, double load) {
    return !rocks(now, now.shelf().beam().load())
            && then.shelf().prop() == Prop.NONE
            && rocks(then, load)
        ? "; with one support %s low it then rocks under its load"
            .formatted(Quantity.of(low, QuantityUnit.LENGTH).text(job.unit()))
        : "";
  }

  private boolean rocks(Verdict shelf, double load) {
    double stands = load * shelf.shelf().beam().length();
    return shelf.restsFrom(low).filter(from -> from > stands).isPresent();
  }
}
