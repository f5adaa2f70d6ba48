package fourpin.boring.way;

import fourpin.boring.way.Guide.GuideHole;
import fourpin.casework.Face;
import fourpin.measure.Figure.Input;
import fourpin.measure.Length;
import fourpin.measure.Quantity;
import fourpin.measure.Source;

/** What the place of a guide in a clamping is worked out from. */
final class ClampingInputs {

  private ClampingInputs() {}

  static Input[] along(Guide guide, Clamping clamping) {
    GuideHole hole = lowest(guide, clamping);
    return new Input[] {
      derived("u", "lower end to the lowest hole", clamping.along().plus(hole.along())),
      derived("g", "zero of the guide to the hole over it", hole.along())
    };
  }

  static Input[] across(Guide guide, Clamping clamping) {
    GuideHole hole = lowest(guide, clamping);
    boolean front = clamping.edge() == Face.FRONT;
    Length column = front ? hole.across() : guide.width().minus(hole.across());
    return new Input[] {
      derived("r", "edge of the panel to the row", clamping.across().plus(column)),
      derived("c", "edge of the guide to its holes", column)
    };
  }

  static Input[] standing(Clamping clamping, String mark, Length spacer) {
    return new Input[] {
      derived("z", "lower end of the panel to the guide's zero", clamping.along()),
      derived("m", "lower end of it to the top of " + mark, clamping.along().minus(spacer))
    };
  }

  static GuideHole lowest(Guide guide, Clamping clamping) {
    return guide.hole(clamping.reaches().getFirst().holes().getFirst());
  }

  private static Input derived(String symbol, String meaning, Length value) {
    return new Input(symbol, meaning, Quantity.of(value), Source.GEOMETRY);
  }
}
