package fourpin.strength;

import fourpin.job.Setting;
import fourpin.job.Settings;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Sourced;
import fourpin.measure.Unit;

/**
 * A push that a case should stand without being fastened, as of a hand or a child.
 *
 * @param push N
 * @param height at most so high above the floor, mm
 */
record LightPush(Sourced push, Sourced height) {

  static LightPush of(Settings settings) {
    return new LightPush(
        new Sourced(
            Quantity.of(settings.number(Setting.LIGHT_PUSH), QuantityUnit.FORCE),
            settings.source(Setting.LIGHT_PUSH)),
        new Sourced(
            Quantity.of(settings.length(Setting.LIGHT_PUSH_HEIGHT)),
            settings.source(Setting.LIGHT_PUSH_HEIGHT)));
  }

  /** Where what is so tall is pushed, mm. */
  double at(double tall) {
    return Math.min(tall, height.number());
  }

  /** About the foot, N·mm. */
  double moment(double tall) {
    return push.number() * at(tall);
  }

  /** How hard, and how high above the floor. */
  String words(Unit unit, double tall) {
    return words(unit, tall, moment(tall));
  }

  /** A push there that turns it by so much. @param moment N·mm */
  String words(Unit unit, double tall, double moment) {
    return "a push of %s, %s above the floor,"
        .formatted(
            Quantity.of(moment / at(tall), QuantityUnit.FORCE).text(unit),
            Quantity.of(at(tall), QuantityUnit.LENGTH).text(unit));
  }
}
