package fourpin.cutting;

import fourpin.measure.Length;
import java.util.Optional;

/**
 * What rip fence and mitre gauge hold (common practice). Rip and crosscut name the way of a cut by
 * the grain; what holds the piece follows its shape: at the rip fence lies what is at least as long
 * along the cut as across it, else it turns there and is thrown back; at a mitre gauge or sled what
 * has a short cut; what is too long for that at a mitre saw, and the rest is cut by a hand-held
 * saw. What is small is clamped, whatever it lies at: no hand may hold it near a blade, and along
 * the rip fence it turns.
 *
 * @param small pieces whose longer side is shorter than this; zero for none
 * @param narrow least width between fence and blade; zero for none
 * @param reach farthest that the fence stands from the blade; empty means that it goes anywhere
 * @param longestRip of a piece that the saw rips; empty means that every length can be
 * @param widestCrosscut of a piece that the saw crosscuts; empty means that every width can be
 * @param gauge longest cut through what is longer across it; empty means that a gauge holds all
 * @param longest piece, across the cut, that a gauge holds; empty means that it holds all
 */
public record HoldLimits(
    Length small,
    Length narrow,
    Optional<Length> reach,
    Optional<Length> longestRip,
    Optional<Length> widestCrosscut,
    Optional<Length> gauge,
    Optional<Length> longest) {

  /** By the shape alone. */
  public static final HoldLimits NONE =
      new HoldLimits(
          Length.ZERO,
          Length.ZERO,
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty());

  public HoldLimits {
    Require.notNegative(small, "longer side of what is small");
    Require.notNegative(narrow, "least width between fence and blade");
  }

  /**
   * What holds a piece that is cut in two.
   *
   * @param sheet that it comes from
   */
  Hold cut(Placed piece, Node.Cut cut, StockSheet sheet) {
    Hold hold = byShape(piece, cut.direction());
    return hold == Hold.FENCE ? atFence(piece, cut, sheet) : hold;
  }

  /**
   * What holds a piece of which an edge is trimmed: the near one, which comes first, by no edge,
   * and the far one by the near one.
   */
  Hold trim(Placed piece, Node.TrimOff trim) {
    Hold hold = byShape(piece, trim.edge().direction());
    return hold == Hold.FENCE ? atLeading(piece, trim) : hold;
  }

  private Hold atFence(Placed piece, Node.Cut cut, StockSheet sheet) {
    return cut.fence().isLessThan(narrow)
        ? strip(piece, cut, sheet)
        : within(cut.fence(), Hold.FENCE);
  }

  private Hold atLeading(Placed piece, Node.TrimOff trim) {
    return switch (trim.edge()) {
      case NEAR_EDGE, NEAR_END -> Hold.FIRST_EDGE;
      case FAR_EDGE, FAR_END -> atRest(piece.trimmed(trim).across(trim.edge().direction()));
    };
  }

  private Hold byShape(Placed piece, Direction way) {
    Hold hold = ofLarge(piece, way);
    return isSmall(piece) ? clamped(hold) : hold;
  }

  private boolean isSmall(Placed piece) {
    return Length.max(piece.length(), piece.width()).isLessThan(small);
  }

  private static Hold clamped(Hold hold) {
    return hold == Hold.GAUGE ? Hold.CLAMPED_GAUGE : Hold.JIG;
  }

  private Hold ofLarge(Placed piece, Direction way) {
    Length along = piece.across(way.other());
    Length across = piece.across(way);
    boolean leads = along.isAtLeast(across);
    if (isBeyond(way, along) || (!leads && isOver(gauge, along))) {
      return Hold.STRAIGHTEDGE;
    }
    return leads ? Hold.FENCE : isOver(longest, across) ? Hold.MITRE_SAW : Hold.GAUGE;
  }

  /** What is longer or wider than the saw reaches is only trimmed. */
  private boolean isBeyond(Direction way, Length along) {
    return isOver(way == Direction.RIP ? longestRip : widestCrosscut, along);
  }

  private static boolean isOver(Optional<Length> limit, Length length) {
    return limit.filter(length::isMoreThan).isPresent();
  }

  /** The far side of the piece lies along the fence then, for which it must be straight. */
  private Hold strip(Placed piece, Node.Cut cut, StockSheet sheet) {
    return isRough(piece, cut.direction(), sheet)
        ? Hold.BAND_SAW
        : atRest(piece.far(cut).across(cut.direction()));
  }

  private Hold atRest(Length rest) {
    return rest.isAtLeast(narrow) ? within(rest, Hold.FENCE_AT_REST) : Hold.BAND_SAW;
  }

  /** The fence, where it gets as far from the blade. */
  private Hold within(Length stands, Hold fence) {
    return isOver(reach, stands) ? Hold.STRAIGHTEDGE : fence;
  }

  /** Of a rough board only the near edge is straightened. */
  private static boolean isRough(Placed piece, Direction way, StockSheet sheet) {
    return way == Direction.RIP
        && sheet.roughEdge().isPositive()
        && piece.y().plus(piece.width()).equals(sheet.width());
  }
}
