package fourpin.job;

import fourpin.measure.Length;
import java.util.Optional;

/**
 * How the end of one panel meets another.
 *
 * @param depth of the dado or rabbet; without one, the share of the panel that the settings say
 */
public record Joint(Kind kind, Optional<Length> depth) {

  /** Kinds of joint. */
  public enum Kind {
    /** A channel across the other panel, as wide as this panel is thick. */
    DADO,
    /** The same at the end of the other panel, open to the end. */
    RABBET,
    /** The end stands against the other panel and is screwed through it. */
    BUTT
  }
}
