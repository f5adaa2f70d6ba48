package fourpin.cutting;

import fourpin.measure.Length;

/**
 * A rectangle of a sheet or board that no part may hold anything of: a knot, a split, a dent.
 *
 * @param x where it begins along the length, from the near end
 * @param y where it begins across, from the near edge
 * @param length along the length of the board, above zero
 * @param width across it, above zero
 */
public record Defect(Length x, Length y, Length length, Length width) {

  public Defect {
    Require.notNegative(x, "place of a defect");
    Require.notNegative(y, "place of a defect");
    Require.positive(length, "length of a defect");
    Require.positive(width, "width of a defect");
  }
}
