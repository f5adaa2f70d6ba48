package fourpin.cutting;

import fourpin.measure.Length;

/**
 * A piece of a sheet as it lies at the saw.
 *
 * @param name S1 for the first sheet, S1-A, S1-B and so on for what is cut from it, in the order of
 *     cutting
 * @param length along the length of the sheet
 * @param width along the width of the sheet
 */
public record Piece(String name, Content content, Length length, Length width) {

  /** What a piece is. */
  public sealed interface Content {

    /** The sheet itself, or a piece that is cut further. */
    record ToCut() implements Content {}

    /** A finished part; its mark goes on the piece at once. */
    record FinishedPart(String mark, Lay lay) implements Content {}

    /** Left over; x and y on the sheet as those of {@link Placed}. */
    record LeftOver(Length x, Length y) implements Content {}

    /** A strip of trim waste; narrower than the kerf means dust only. */
    record TrimWaste() implements Content {}
  }
}
