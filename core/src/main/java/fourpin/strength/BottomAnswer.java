package fourpin.strength;

import fourpin.measure.Lazy;
import java.util.function.DoubleSupplier;

/**
 * What a bottom does in all ways in which it is loaded.
 *
 * @param stressed how hard at the most, which takes longer than how far it sags: worked out where
 *     that is asked
 */
record BottomAnswer(Sag sag, Lazy<BottomStress.Most> stressed) {

  /** How its load lies when it sags most, and by how much, mm. */
  record Sag(BottomLoad of, double mm) {}

  /**
   * Loaded in one way.
   *
   * @param sag mm
   * @param stress MPa
   */
  static BottomAnswer of(BottomLoad way, double sag, DoubleSupplier stress) {
    return new BottomAnswer(
        new Sag(way, sag), Lazy.of(() -> new BottomStress.Most(way, stress.getAsDouble())));
  }

  /** Of those alike, the first. */
  static BottomAnswer more(BottomAnswer one, BottomAnswer other) {
    return new BottomAnswer(
        other.sag.mm() > one.sag.mm() ? other.sag : one.sag,
        Lazy.of(() -> other.stress().mpa() > one.stress().mpa() ? other.stress() : one.stress()));
  }

  BottomStress.Most stress() {
    return stressed.get();
  }
}
