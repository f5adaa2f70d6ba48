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
    /** Better in one of the two and worse in the other. */
    MIXED,
    NONE,
    HARM
  }

  /**
   * What is too little to count.
   *
   * @param odds differences of the odds up to this are none, 0 to 1
   * @param length differences of gaps and slopes up to this are none, mm
   */
  record Least(double odds, double length) {}

  /** Whether shelves rock less or more, and whether they lie less or more level left to right. */
  Effect effect(Least least) {
    int rocking = rocking(least);
    int slope = sign(before.slope() - after.slope(), least.length());
    if (rocking * slope < 0) {
      return Effect.MIXED;
    }
    return switch (Integer.signum(rocking + slope)) {
      case 1 -> Effect.GAIN;
      case -1 -> Effect.HARM;
      default -> Effect.NONE;
    };
  }

  /** Shelves that rock so that it is felt count first; where as many do, how far they rock. */
  private int rocking(Least least) {
    int felt = sign(before.odds() - after.odds(), least.odds());
    return felt == 0 ? sign(before.gap() - after.gap(), least.length()) : felt;
  }

  private static int sign(double gained, double least) {
    return Math.abs(gained) <= least ? 0 : (int) Math.signum(gained);
  }

  /** Which of the two a mixed change makes better and which worse, for people. */
  public String mixed() {
    return after.slope() > before.slope()
        ? "rocks less, and lies less level from left to right"
        : "lies more level from left to right, and rocks more";
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
