package fourpin.job;

import fourpin.measure.Length;
import java.util.List;
import java.util.Optional;

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
 * @param hangs on which side of its bay a single door hangs: one for all, or one for each bay
 * @param over how far an overlay door lies over what surrounds its opening; without it, to the
 *     outside of the case, and to half a gap from the middle between two bays
 */
public record Doors(
    Kind kind,
    int perBay,
    Length thickness,
    Length gap,
    List<Length> plateHeights,
    Length plateSetback,
    Length plateLength,
    Length plateWidth,
    List<Hang> hangs,
    Optional<Length> over) {

  public Doors {
    plateHeights = List.copyOf(plateHeights);
    hangs = List.copyOf(hangs);
  }

  /** Doors that hang on the left, and lie as far over as they can. */
  public Doors(
      Kind kind,
      int perBay,
      Length thickness,
      Length gap,
      List<Length> plateHeights,
      Length plateSetback,
      Length plateLength,
      Length plateWidth) {
    this(
        kind,
        perBay,
        thickness,
        gap,
        plateHeights,
        plateSetback,
        plateLength,
        plateWidth,
        List.of(Hang.LEFT),
        Optional.empty());
  }

  /** The same with so many in each bay. */
  public Doors with(int perEachBay) {
    return new Doors(
        kind,
        perEachBay,
        thickness,
        gap,
        plateHeights,
        plateSetback,
        plateLength,
        plateWidth,
        hangs,
        over);
  }

  /** Where the single door of a bay hangs. @param bay from 1 */
  public Hang hang(int bay) {
    return hangs.get(hangs.size() == 1 ? 0 : bay - 1);
  }

  /** A side of a bay. */
  public enum Hang {
    LEFT,
    RIGHT
  }

  /** Where a door hangs. */
  public enum Kind {
    /** Between the sides or inside the face frame. */
    INSET,
    /** In front of the sides. */
    OVERLAY
  }
}
