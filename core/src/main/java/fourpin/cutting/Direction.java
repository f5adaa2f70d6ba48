package fourpin.cutting;

/** Which way a cut runs on the sheet. */
public enum Direction {
  /** Parallel to the length of the sheet; the fence setting is measured along its width. */
  RIP,
  /**
   * Parallel to the width of the sheet; the fence (or stop) setting is measured along its length.
   */
  CROSSCUT;

  public Direction other() {
    return this == RIP ? CROSSCUT : RIP;
  }
}
