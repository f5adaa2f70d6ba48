package fourpin.boring.tolerance;

/**
 * What doing something otherwise makes of the gap at the worst place.
 *
 * @param what is done otherwise, for people
 * @param cost what it takes, for people
 */
public record Change(String what, Outcome before, Outcome after, String cost) {

  /** What comes of it. */
  enum Effect {
    GAIN,
    NONE,
    HARM
  }

  /**
   * The gap counts first, then the slope.
   *
   * @param resolution differences up to this are none, mm
   */
  Effect effect(double resolution) {
    double narrower = before.gap() - after.gap();
    double less = Math.abs(narrower) > resolution ? narrower : before.slope() - after.slope();
    if (Math.abs(less) <= resolution) {
      return Effect.NONE;
    }
    return less > 0 ? Effect.GAIN : Effect.HARM;
  }

  /**
   * How shelves lie, at the worst place.
   *
   * @param odds that the gap is more than the one felt, 0 to 1
   * @param gap that 95 of 100 shelves stay within, mm
   * @param slope difference in height from left to right that 95 of 100 stay within, mm
   */
  public record Outcome(double odds, double gap, double slope) {}
}
