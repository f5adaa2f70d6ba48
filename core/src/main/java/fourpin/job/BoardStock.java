package fourpin.job;

import fourpin.measure.Length;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * Boards of one material and section; the thickness is the material's.
 *
 * @param count how many there are; empty means as many as wanted
 * @param price of one, in the job's currency
 */
public record BoardStock(
    String material,
    Length length,
    Length width,
    Optional<Integer> count,
    Optional<BigDecimal> price,
    Supply supply) {}
