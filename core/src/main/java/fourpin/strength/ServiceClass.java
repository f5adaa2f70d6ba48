package fourpin.strength;

import fourpin.job.Setting;
import fourpin.job.Settings;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Sourced;
import fourpin.reference.Reference;

/** How damp the air of a place is, by EN 1995-1-1, 2.3.1.3, as of its dampest month. */
enum ServiceClass {
  FIRST,
  SECOND,
  THIRD;

  static ServiceClass of(Settings settings) {
    double humidity = settings.number(Setting.HUMIDITY_HIGH);
    return isUpTo("humidity of service class 1", humidity)
        ? FIRST
        : isUpTo("humidity of service class 2", humidity) ? SECOND : THIRD;
  }

  private static boolean isUpTo(String limit, double humidity) {
    return humidity <= Reference.constant(limit).value();
  }

  /** Behind the names of factors that hold of it; the first is not named. */
  String inNames() {
    return this == FIRST ? "" : ", service class " + number();
  }

  /**
   * C_M of the NDS for what is fastened by dowels and screws. Air of the third class is taken to
   * bring wood over the 19 % of moisture from which it counts.
   */
  Sourced wetService() {
    return this == THIRD
        ? Reference.constant("NDS wet service").sourced()
        : new Sourced(
            Quantity.of(1, QuantityUnit.RATIO), Reference.constant("NDS wet service").source());
  }

  String wetWords() {
    return "for wood in service class "
        + number()
        + ", taken as "
        + (this == THIRD ? "wet" : "dry");
  }

  /** As the condition of a factor. */
  String words() {
    return "for loads that stay, in service class " + number();
  }

  int number() {
    return ordinal() + 1;
  }
}
