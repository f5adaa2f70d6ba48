package fourpin.shop.store;

import fourpin.measure.Length;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * What stands in the rack: sheets, boards or offcuts of one size.
 *
 * @param material as the shop calls it
 * @param length along the grain
 * @param width across the grain
 * @param count how many of this size, 1 or more
 * @param price of one; nothing if it was not noted
 * @param note where it stands, which job it is left from
 */
public record Piece(
    String material,
    Form form,
    Length thickness,
    Length length,
    Length width,
    int count,
    Optional<BigDecimal> price,
    String note) {

  /** What it is. */
  public enum Form {
    SHEET,
    BOARD,
    OFFCUT
  }
}
