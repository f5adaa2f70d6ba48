package fourpin.job;

import fourpin.measure.Length;
import java.util.Optional;

/**
 * The back panel.
 *
 * @param depth of groove or rabbet into the sides; without one, as the settings say
 * @param pieces whether it is one panel or one for each bay
 */
public record Back(Kind kind, String material, Optional<Length> depth, Pieces pieces) {

  /** How it is held. */
  public enum Kind {
    /** In a groove in sides, top and bottom. */
    GROOVE,
    /** In a rabbet in sides and top, over the back edge of the bottom. */
    RABBET,
    /** On the back edges of sides, top and bottom. */
    APPLIED
  }

  /** How it is divided, since a wide case has no sheet as wide as its back. */
  public enum Pieces {
    /** One panel over the whole case. */
    ONE,
    /** One panel for each bay, meeting on the back edges of the partitions. */
    BY_BAY
  }
}
