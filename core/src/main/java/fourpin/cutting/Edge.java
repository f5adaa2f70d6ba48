package fourpin.cutting;

/** The four edges of a sheet, in the order in which they are trimmed. */
public enum Edge {
  /** The long edge at y = 0. */
  NEAR_EDGE(Direction.RIP),
  /** The long edge at y = width. */
  FAR_EDGE(Direction.RIP),
  /** The end at x = 0. */
  NEAR_END(Direction.CROSSCUT),
  /** The end at x = length. */
  FAR_END(Direction.CROSSCUT);

  private final Direction direction;

  Edge(Direction direction) {
    this.direction = direction;
  }

  /** The way the trimming cut runs. */
  public Direction direction() {
    return direction;
  }
}
