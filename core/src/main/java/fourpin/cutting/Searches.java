package fourpin.cutting;

/**
 * Cutters for a problem that is part of another.
 *
 * @param quick some milliseconds
 * @param plain the same as by work, but from no stricter layouts: a fraction of the work, for one
 *     of many tries
 * @param byWork as far as the work goes, or until the watch says enough
 * @param byWatch until the watch says enough; where work is the limit, the same as that
 */
record Searches(SheetCutter quick, SheetCutter plain, SheetCutter byWork, SheetCutter byWatch) {

  /** One cutter for all. */
  static Searches all(SheetCutter cutter) {
    return new Searches(cutter, cutter, cutter, cutter);
  }

  /** As far as the work goes, from no stricter layouts. */
  Searches plainly() {
    return new Searches(quick, plain, plain, plain);
  }

  /** Whether there is more to be had where time is left. */
  boolean goesOnByWatch() {
    return !byWatch.equals(byWork);
  }
}
