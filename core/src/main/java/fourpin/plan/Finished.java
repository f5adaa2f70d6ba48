package fourpin.plan;

import fourpin.cutting.Blank;
import fourpin.measure.Length;
import java.util.Optional;

/**
 * What the pieces of one mark are worked to.
 *
 * @param thickness finished, where it is known
 */
public record Finished(Blank blank, Optional<Length> thickness) {}
