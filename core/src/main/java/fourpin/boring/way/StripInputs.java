package fourpin.boring.way;

import fourpin.boring.way.Guide.GuideHole;
import fourpin.boring.way.Guide.Make;
import fourpin.measure.Figure.Input;
import fourpin.measure.Length;
import fourpin.measure.Quantity;
import fourpin.measure.Source;

/** What the place of a guide in the strip that it is sawn from is worked out from. */
final class StripInputs {

  private StripInputs() {}

  static Input[] off(Guide guide, Make.Sold sold) {
    Length first = guide.holes().getFirst().along();
    Length end = sold.off().plus(guide.block()).plus(first);
    return new Input[] {
      derived("h", "end of the strip to the hole that becomes hole 1", end),
      derived("a", "zero of the guide to its hole 1", first),
      stated("b", "thickness of the stop block behind zero", guide.block())
    };
  }

  /**
   * @param space from hole to hole of the strip
   */
  static Input[] behind(Guide guide, Length space) {
    GuideHole first = guide.holes().getFirst();
    return new Input[] {
      derived("a", "zero of the guide to its hole 1", first.along()),
      stated("p", "from hole to hole of the strip", space),
      new Input("d", "diameter of its holes", Quantity.across(first.diameter()), Source.STATED)
    };
  }

  private static Input derived(String symbol, String meaning, Length value) {
    return new Input(symbol, meaning, Quantity.of(value), Source.GEOMETRY);
  }

  private static Input stated(String symbol, String meaning, Length value) {
    return new Input(symbol, meaning, Quantity.of(value), Source.STATED);
  }
}
