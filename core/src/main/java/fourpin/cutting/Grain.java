package fourpin.cutting;

/** Whether a part may be turned on the sheet. */
public enum Grain {
  /** The length of the part runs with the grain of the sheet. */
  FIXED,
  /** The part may be turned by a quarter. */
  FREE
}
