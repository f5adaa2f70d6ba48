package fourpin.validation;

import fourpin.measure.Source;
import fourpin.measure.Source.Standing;
import java.util.function.DoubleSupplier;

/**
 * One published value beside ours.
 *
 * @param what is worked out, with its inputs
 * @param printed as the source prints it
 * @param unit of both; empty for bare numbers
 * @param tolerance how far ours may be off: mostly what the printed digits leave open
 */
record Check(
    String what,
    String printed,
    String unit,
    double tolerance,
    Source source,
    DoubleSupplier ours) {

  static Check published(
      String what,
      String printed,
      String unit,
      double tolerance,
      String title,
      String place,
      DoubleSupplier ours) {
    return new Check(what, printed, unit, tolerance, Source.published(title, place), ours);
  }

  static Check fromMemory(
      String what,
      String printed,
      String unit,
      double tolerance,
      String title,
      String place,
      DoubleSupplier ours) {
    return new Check(
        what, printed, unit, tolerance, new Source(title, place, Standing.FROM_MEMORY), ours);
  }

  /**
   * A value that follows from plain mechanics, or that a second method gives.
   *
   * @param printed to as many digits as count
   */
  static Check derived(
      String what,
      String printed,
      String unit,
      double tolerance,
      String title,
      String place,
      DoubleSupplier ours) {
    return new Check(
        what, printed, unit, tolerance, new Source(title, place, Standing.DERIVED), ours);
  }

  double expected() {
    return Double.parseDouble(printed);
  }

  /** How far ours is off, as a share of what is published. */
  double difference() {
    return ours.getAsDouble() / expected() - 1;
  }

  @Override
  public String toString() {
    return what;
  }
}
