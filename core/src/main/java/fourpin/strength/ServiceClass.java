package fourpin.strength;

import fourpin.job.Setting;
import fourpin.job.Settings;
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

  int number() {
    return ordinal() + 1;
  }
}
