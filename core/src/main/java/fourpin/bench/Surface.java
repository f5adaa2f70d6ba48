package fourpin.bench;

/**
 * The six surfaces of a piece on the bench. Lengths are measured from the index end, widths from
 * the index edge, and through the thickness from the face.
 */
public enum Surface {
  FACE("the face"),
  REVERSE("the reverse"),
  INDEX_EDGE("the index edge"),
  FAR_EDGE("the far edge"),
  INDEX_END("the index end"),
  FAR_END("the far end");

  private final String words;

  Surface(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }

  boolean isBroad() {
    return this == FACE || this == REVERSE;
  }

  boolean isEnd() {
    return this == INDEX_END || this == FAR_END;
  }

  boolean isEdge() {
    return this == INDEX_EDGE || this == FAR_EDGE;
  }
}
