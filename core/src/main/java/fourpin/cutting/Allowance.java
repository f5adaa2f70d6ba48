package fourpin.cutting;

import fourpin.measure.Length;

/**
 * By how much parts are cut over their finished size, all at least zero.
 *
 * @param length longer than finished, to be cut square at both ends
 * @param width wider than finished, to be straightened and planed
 * @param edge taken off each edge of a strip before strips are glued edge to edge
 */
public record Allowance(Length length, Length width, Length edge) {

  public static final Allowance NONE = new Allowance(Length.ZERO, Length.ZERO, Length.ZERO);

  public Allowance {
    Require.notNegative(length, "allowance in length");
    Require.notNegative(width, "allowance in width");
    Require.notNegative(edge, "allowance of an edge");
  }
}
