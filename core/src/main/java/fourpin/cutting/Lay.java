package fourpin.cutting;

/** How a part lies on its sheet. */
public enum Lay {
  /** The length of the part along the length of the sheet. */
  STRAIGHT,
  /** The length of the part along the width of the sheet. */
  TURNED
}
