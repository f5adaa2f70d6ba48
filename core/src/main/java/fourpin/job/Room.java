package fourpin.job;

import fourpin.measure.Length;
import java.util.Optional;

/**
 * The place where the cases of the job stand side by side.
 *
 * @param width of the wall or alcove, the smallest reading
 * @param ceiling clear height, the smallest reading
 * @param depth how far a case may stand out from the wall
 */
public record Room(Optional<Length> width, Optional<Length> ceiling, Optional<Length> depth) {}
