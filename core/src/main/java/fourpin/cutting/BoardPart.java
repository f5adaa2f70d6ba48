package fourpin.cutting;

import fourpin.measure.Length;

/**
 * Identical pieces of one section to be cut to length.
 *
 * @param mark different for each part of a problem
 * @param length above zero
 * @param count at least one
 */
public record BoardPart(String mark, Length length, int count) {

  public BoardPart {
    Require.named(mark, "mark of a part");
    Require.positive(length, "length of part " + mark);
    Require.atLeastOne(count, "count of part " + mark);
  }
}
