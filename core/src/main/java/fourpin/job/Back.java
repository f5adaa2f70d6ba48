package fourpin.job;

import fourpin.measure.Length;
import java.util.Optional;

/**
 * The back panel.
 *
 * @param depth of groove or rabbet into the sides; without one, as the settings say
 */
public record Back(Kind kind, String material, Optional<Length> depth) {

  /** How it is held. */
  public enum Kind {
    /** In a groove in sides, top and bottom. */
    GROOVE,
    /** In a rabbet in sides and top, over the back edge of the bottom. */
    RABBET,
    /** On the back edges of sides, top and bottom. */
    APPLIED
  }
}
