package fourpin.cutting;

/**
 * Cutters for a problem that is part of another.
 *
 * @param quick some milliseconds
 * @param byWork as far as the work goes, or until the watch says enough
 * @param byWatch until the watch says enough; where work is the limit, the same as that
 */
record Searches(SheetCutter quick, SheetCutter byWork, SheetCutter byWatch) {

  /** One cutter for all. */
  static Searches all(SheetCutter cutter) {
    return new Searches(cutter, cutter, cutter);
  }

  /** As far as the work goes. */
  Searches withoutWatch() {
    return new Searches(quick, byWork, byWork);
  }

  /** Whether there is more to be had where time is left. */
  boolean goesOnByWatch() {
    return !byWatch.equals(byWork);
  }
}
