package fourpin.strength.plate;

/** What of a plate is bent. */
enum Fold {
  /** All of it. */
  WHOLE,
  /** The left half of a plate that is alike on both sides; the right bends as its mirror image. */
  EVEN,
  /** Likewise, but the right bends as its mirror image upside down. */
  ODD
}
