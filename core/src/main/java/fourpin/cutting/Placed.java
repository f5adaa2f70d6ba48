package fourpin.cutting;

import fourpin.measure.Length;
import java.util.List;

/**
 * A rectangle of a sheet and what becomes of it; x and y of its corner nearest to the near end and
 * the near edge.
 */
public record Placed(Node node, Length x, Length y, Length length, Length width) {

  /**
   * The rectangle's extent across the way of a cut: what a fence setting for that cut is measured
   * along.
   */
  Length across(Direction cut) {
    return cut == Direction.RIP ? width : length;
  }

  Placed near(Node.Cut cut) {
    return slice(cut.near(), cut.direction(), Length.ZERO, cut.fence());
  }

  Placed far(Node.Cut cut) {
    Length start = cut.fence().plus(cut.kerf());
    return slice(cut.far(), cut.direction(), start, across(cut.direction()).minus(start));
  }

  /** What is left after trimming. */
  Placed trimmed(Node.TrimOff trim) {
    Length rest = across(trim.edge().direction()).minus(trim.off());
    boolean atFarSide = trim.edge() == Edge.FAR_EDGE || trim.edge() == Edge.FAR_END;
    return slice(trim.rest(), trim.edge().direction(), atFarSide ? Length.ZERO : trim.off(), rest);
  }

  /** What comes of it at once, near before far. */
  List<Placed> under() {
    return switch (node) {
      case Node.Cut cut -> List.of(near(cut), far(cut));
      case Node.TrimOff trim -> List.of(trimmed(trim));
      case Node.Finished _, Node.Offcut _, Node.Dust _ -> List.of();
    };
  }

  private Placed slice(Node content, Direction cut, Length from, Length size) {
    return cut == Direction.RIP
        ? new Placed(content, x, y.plus(from), length, size)
        : new Placed(content, x.plus(from), y, size, width);
  }
}
