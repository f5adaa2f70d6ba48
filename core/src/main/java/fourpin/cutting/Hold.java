package fourpin.cutting;

/** What leads a piece past the blade, or the blade past the piece (common practice). */
public enum Hold {
  /** The rip fence at the setting: what comes off lies between fence and blade. */
  FENCE,
  /**
   * The rip fence at what remains, along an edge that is straight: the strip, or what is trimmed,
   * falls off outside the blade.
   */
  FENCE_AT_REST,
  /** A band saw or the hand: neither strip nor rest may lie between fence and blade. */
  BAND_SAW,
  /**
   * No edge of the piece is straight that way, so none may lie along the rip fence: a hand-held saw
   * along a straightedge, a sled, or a jointer.
   */
  FIRST_EDGE,
  /** A mitre gauge or sled, with a stop at the setting. */
  GAUGE,
  /** The same, with the piece clamped to it: it is too small for a hand. */
  CLAMPED_GAUGE,
  /**
   * Too small to go along the rip fence, and too small for a hand: clamped on a sled or in a jig,
   * or cut with a hand saw.
   */
  JIG,
  /**
   * Too long for a mitre gauge: a mitre saw, or a hand-held saw along a straightedge, with both
   * ends supported.
   */
  MITRE_SAW,
  /** Nothing at a table saw: a hand-held saw along a straightedge. */
  STRAIGHTEDGE
}
