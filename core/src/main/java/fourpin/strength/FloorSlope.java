package fourpin.strength;

import fourpin.job.Setting;
import fourpin.job.Settings;
import fourpin.measure.Figure.Input;
import fourpin.measure.Sourced;
import fourpin.measure.Unit;

/**
 * How a floor falls away under a case.
 *
 * @param to which way it falls
 * @param fall mm on each metre
 */
record FloorSlope(To to, Sourced fall) {

  private static final double MM_PER_M = 1000;

  /** Which way, and what states how far. */
  enum To {
    FRONT(Setting.FLOOR_SLOPE, "forward", "its front"),
    SIDE(Setting.FLOOR_SLOPE_SIDEWAYS, "to that side", "its lower side");

    private final Setting setting;
    private final String words;
    private final String low;

    To(Setting setting, String words, String low) {
      this.setting = setting;
      this.words = words;
      this.low = low;
    }

    Setting setting() {
      return setting;
    }

    /** Where shims go. */
    String low() {
      return low;
    }
  }

  static FloorSlope of(To to, Settings settings) {
    return new FloorSlope(to, Matters.ratio(to.setting, settings));
  }

  /** How far what stands on it leans over the length. */
  double share() {
    return fall.number() / MM_PER_M;
  }

  /** By how much it moves that way what is so high over the foot, mm. */
  double at(double up) {
    return share() * up;
  }

  Input input() {
    return fall.input("n", to.setting.meaning());
  }

  String words(Unit unit) {
    return fall.number() == 0
        ? "on a level floor"
        : "on a floor that falls %s by %s mm on each metre"
            .formatted(to.words, fall.value().text(unit));
  }
}
