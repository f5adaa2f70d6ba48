package fourpin.strength;

import fourpin.measure.Figure.Input;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.measure.Unit;
import fourpin.strength.plate.PlateLoad;
import java.util.List;
import java.util.Optional;

/**
 * How what stands on a bottom lies there, front to back: in each way in which it lies on shelves.
 *
 * @param from where it begins behind the front edge, mm
 * @param to where it ends
 */
record BottomLoad(LoadCase of, double from, double to) {

  /** What it brings, beside how a bottom bends. */
  static final String PRESSURE = ", p = q / (y₂ - y₁) from y₁ to y₂, and g / D";

  /**
   * All that may bend it most. On one half alone a load bends it nowhere more than spread evenly,
   * since what lies on the other half lifts nothing; a hand on the front edge presses on the kick.
   */
  static List<BottomLoad> all(LoadCases cases) {
    return cases.loadedAllOver().stream().map(of -> of(of, of.lies(cases.depth()))).toList();
  }

  private static BottomLoad of(LoadCase of, LoadCase.Lies lies) {
    return new BottomLoad(of, lies.from(), lies.to());
  }

  /** Whether it lies in the same way as other things do. */
  boolean isLike(BottomLoad other) {
    return of.lying() == other.of.lying();
  }

  /** Where it lies, after "the load". */
  String place() {
    return of.place();
  }

  /** How it is loaded, after "with". */
  String words(Unit unit) {
    return of.words(unit);
  }

  List<Input> inputs() {
    return List.of(
        new Input("y₁", "from the front edge to where the load begins", mm(from), Source.GEOMETRY),
        new Input("y₂", "from the front edge to where it ends", mm(to), Source.GEOMETRY));
  }

  private static Quantity mm(double value) {
    return Quantity.of(value, QuantityUnit.LENGTH);
  }

  /**
   * On the part of the bottom that lies behind the front of the kick; nothing where it lies before
   * that.
   *
   * @param line how much there is of it along the bottom, N/mm
   * @param fromX where it begins along that part, mm
   * @param behind how far the kick stands behind the front edge of the bottom, mm
   */
  Optional<PlateLoad> on(double line, double fromX, double toX, double behind) {
    double back = to - behind;
    double front = Math.max(0, from - behind);
    return back > front && line > 0
        ? Optional.of(new PlateLoad.Patch(line / (to - from), fromX, toX, front, back))
        : Optional.empty();
  }
}
