package fourpin.job;

import fourpin.measure.Length;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * Sheets of one material and size.
 *
 * @param length along the grain
 * @param count how many there are; empty means as many as wanted
 * @param price of one, in the job's currency
 */
public record SheetStock(
    String material,
    Length length,
    Length width,
    Optional<Integer> count,
    Optional<BigDecimal> price,
    Supply supply) {}
