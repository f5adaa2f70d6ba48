package fourpin.job;

import fourpin.measure.Length;
import java.util.Optional;

/**
 * A frame of solid wood on the front of the case.
 *
 * @param stile width of the outer stiles
 * @param middleStile width of a stile in front of each partition; without one the partitions show
 * @param topRail width of the top rail, upper edge level with the top of the case
 * @param bottomRail width of the bottom rail, upper edge level with the bottom's upper face
 * @param overhang of the outer stiles beyond the outside of the sides
 * @param scribe which stiles are cut wider by the scribe of the settings
 */
public record FaceFrame(
    String material,
    Length stile,
    Optional<Length> middleStile,
    Length topRail,
    Length bottomRail,
    Length overhang,
    Scribe scribe) {

  /** Stiles that are fitted to a wall. */
  public enum Scribe {
    NONE,
    LEFT,
    RIGHT,
    BOTH
  }
}
