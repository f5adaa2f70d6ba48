package fourpin.cutting;

import fourpin.measure.Length;

/**
 * What becomes of a rectangle of sheet: a tree of cuts, each from edge to edge of its rectangle. A
 * node does not repeat the size of its rectangle; that follows from the sheet and the cuts above.
 *
 * <p>Trees may be thousands of cuts deep (along {@code far}); walk them with a loop, not by
 * recursion.
 */
public sealed interface Node {

  /**
   * One cut through the whole rectangle.
   *
   * @param fence from the near side of the rectangle to the blade: the size of {@code near}, and
   *     the fence setting
   * @param kerf what the blade takes beyond the fence setting: the kerf of the saw, or all that was
   *     left when no more than the kerf was left (the last cut may run off the edge)
   * @param near what lies against the fence, at the near side
   * @param far what lies beyond the blade; {@link Dust} exactly when the blade took all of it
   */
  record Cut(Direction direction, Length fence, Length kerf, Node near, Node far) implements Node {}

  /**
   * A trimming cut.
   *
   * @param off all that goes at that edge: trim waste and kerf
   */
  record TrimOff(Edge edge, Length off, Node rest) implements Node {}

  /** A finished part, exactly as large as its rectangle. */
  record Finished(String mark, Lay lay) implements Node {}

  /** What is left over. */
  record Offcut() implements Node {}

  /** Nothing: the blade took it. */
  record Dust() implements Node {}
}
