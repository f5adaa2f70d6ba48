package fourpin.strength;

import fourpin.measure.Figure.Input;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.measure.Sourced;
import fourpin.measure.Unit;
import fourpin.strength.plate.PlateLoad;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How what stands on a bottom lies there, front to back: in each way in which it lies on shelves,
 * and where that is a row in front, in the same row against the back as well, since a kick carries
 * the front alone.
 *
 * @param of as on shelves; of a row against the back, that in front
 * @param end at which a row stands
 * @param from where it begins behind the front edge, mm
 * @param to where it ends
 */
record BottomLoad(LoadCase of, End end, double from, double to) {

  /** What it brings, beside how a bottom bends. */
  static final String PRESSURE = ", p = q / (y₂ - y₁) from y₁ to y₂, and g / D";

  /** Front or back. */
  enum End {
    FRONT,
    BACK
  }

  /**
   * All that may bend it most. On one half alone a load bends it nowhere more than spread evenly,
   * since what lies on the other half lifts nothing; a hand on the front edge presses on the kick.
   */
  static List<BottomLoad> all(LoadCases cases) {
    return cases.loadedAllOver().stream().flatMap(of -> of(of, cases.depth())).toList();
  }

  private static Stream<BottomLoad> of(LoadCase of, double depth) {
    BottomLoad there = new BottomLoad(of, End.FRONT, 0, 2 * of.middle(depth));
    return switch (of) {
      case LoadCase.FrontRow(Sourced deep) ->
          Stream.of(there, new BottomLoad(of, End.BACK, depth - deep.number(), depth));
      case LoadCase.Even(), LoadCase.OverEdge(_, _), LoadCase.OneHalf(), LoadCase.Hand(_) ->
          Stream.of(there);
    };
  }

  /** Whether it lies in the same way as other things do. */
  boolean isLike(BottomLoad other) {
    return end == other.end && of.lying() == other.of.lying();
  }

  /** Where it lies, after "the load". */
  String place() {
    return switch (end) {
      case FRONT -> of.place();
      case BACK -> "in a row against the back";
    };
  }

  /** How it is loaded, after "with". */
  String words(Unit unit) {
    return switch (end) {
      case FRONT -> of.words(unit);
      case BACK -> "its load in a row" + deep(unit) + " against the back";
    };
  }

  private String deep(Unit unit) {
    return of instanceof LoadCase.FrontRow(Sourced deep)
        ? " " + deep.value().text(unit) + " deep"
        : "";
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
