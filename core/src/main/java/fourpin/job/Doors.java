package fourpin.job;

import fourpin.measure.Length;
import java.util.List;

/**
 * Doors, known only by the room that they and their hinges take; Fourpin does not plan how they are
 * made.
 *
 * @param perBay 1 or 2
 * @param gap between an inset door and what surrounds it, and behind it to the shelves
 * @param plateHeights of the hinge plates' centres above the foot of the case
 * @param plateSetback from the front of the sides to the hinge plate's centre line
 * @param plateLength of the plate along the height of the side
 * @param plateWidth of the plate across the side
 */
public record Doors(
    Kind kind,
    int perBay,
    Length thickness,
    Length gap,
    List<Length> plateHeights,
    Length plateSetback,
    Length plateLength,
    Length plateWidth) {

  public Doors {
    plateHeights = List.copyOf(plateHeights);
  }

  /** Where a door hangs. */
  public enum Kind {
    /** Between the sides or inside the face frame. */
    INSET,
    /** In front of the sides. */
    OVERLAY
  }
}
