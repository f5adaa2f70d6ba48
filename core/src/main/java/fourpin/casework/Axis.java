package fourpin.casework;

/** A direction in case coordinates. */
public enum Axis {
  /** Left to right. */
  X,
  /** Front to back. */
  Y,
  /** Upwards. */
  Z
}
