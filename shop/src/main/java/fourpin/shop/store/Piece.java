package fourpin.shop.store;

import fourpin.measure.Length;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.stream.Stream;

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

  /**
   * @throws IllegalArgumentException if a text holds what is no character, or a size is none
   */
  public Piece {
    Letters.require(material, note);
    if (Stream.of(thickness, length, width).anyMatch(l -> l.picometres() <= 0) || count < 1) {
      throw new IllegalArgumentException("a piece has sizes above 0, and there is 1 or more");
    }
  }

  /** So many of it. */
  public Piece counted(int many) {
    return new Piece(material, form, thickness, length, width, many, price, note);
  }

  /** What it is. */
  public enum Form {
    SHEET,
    BOARD,
    OFFCUT
  }
}
