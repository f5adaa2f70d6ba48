package fourpin.cutting;

import fourpin.measure.Length;

/**
 * The saw: width of the kerf (at least zero; zero is for shears and knives) and what is trimmed off
 * a new sheet.
 */
public record Saw(Length kerf, Trim trim) {

  public Saw {
    Require.notNegative(kerf, "kerf");
  }
}
