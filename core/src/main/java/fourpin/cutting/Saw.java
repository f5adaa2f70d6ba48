package fourpin.cutting;

import fourpin.measure.Length;

/**
 * The saw: width of the kerf (at least zero; zero is for shears and knives), what is trimmed off a
 * new sheet, and what it can't do.
 */
public record Saw(Length kerf, Trim trim, SawLimits limits) {

  public Saw {
    Require.notNegative(kerf, "kerf");
  }

  /** A saw without limits. */
  public Saw(Length kerf, Trim trim) {
    this(kerf, trim, SawLimits.NONE);
  }

  /** The same saw with other limits. */
  public Saw with(SawLimits others) {
    return new Saw(kerf, trim, others);
  }
}
