package fourpin.plan;

import fourpin.measure.Length;
import fourpin.measure.Quantity;

/**
 * Something to buy that is not cut from sheets or boards.
 *
 * @param where names of the cases that it is for
 */
public record HardwareItem(String name, String size, Amount amount, String where) {

  /** How much of it, as it is sold. */
  public sealed interface Amount {

    /**
     * Sold by the piece.
     *
     * @param needed how many the cases use
     * @param buy how many to buy, spares included
     */
    record Pieces(long needed, long buy) implements Amount {}

    /** Lengths cut from pieces that another line buys. @param needed how many the cases use */
    record CutLengths(long needed) implements Amount {}

    /**
     * Sold by length.
     *
     * @param needed of all edges together
     * @param buy with what is spare
     */
    record Running(Length needed, Length buy) implements Amount {}

    /**
     * Sold in cans and bottles, of which makers take unlike amounts.
     *
     * @param covers length or area that it is for, all cases together
     */
    record ToSuit(Quantity covers) implements Amount {}
  }
}
