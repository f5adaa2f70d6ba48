package fourpin.plan;

import fourpin.measure.Length;
import java.util.Optional;

/**
 * Something to buy that is not cut from sheets or boards.
 *
 * @param needed how many the cases use
 * @param buy how many to buy, spares included
 * @param length of all together, for what is sold by length
 */
public record HardwareItem(
    String name, String size, long needed, long buy, Optional<Length> length, String where) {}
