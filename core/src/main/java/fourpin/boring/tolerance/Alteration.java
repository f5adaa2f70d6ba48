package fourpin.boring.tolerance;

import fourpin.boring.way.Method;

/**
 * One thing done otherwise than a guided way plans it; the better ones first, then what makes it
 * worse.
 *
 * <p>What both rows of a panel have in common only slopes a shelf. So another guide for a whole
 * panel, or a panel bored wholly from its other end, does not rock shelves; one row that is bored
 * otherwise than its neighbour does.
 */
public enum Alteration {
  NONE("as planned", ""),
  ROWS_TOGETHER(
      "a guide as wide as the panel, with all its rows bored in one clamping", "a wider guide"),
  BLOCK_STAYS_ON(
      "the first place of every row bored before the block comes off, then the second", "nothing"),
  WHOLE_LENGTH("a guide as long as the row, not moved along", "a longer guide"),
  SLEEVED("steel sleeves in the guide's holes, which don't wear", "a sleeve for each hole"),
  SECOND_GUIDE_RIGHT("another guide for the right-hand panels", "a second guide"),
  RIGHT_FROM_TOP("right-hand panels bored from their upper ends", "nothing"),
  ONE_ROW_NEW_GUIDE("a guide made anew before the last row of each bay", "a second guide"),
  ONE_ROW_FROM_TOP("the last row of each bay bored from the upper end", "nothing");

  private final String title;
  private final String cost;

  Alteration(String title, String cost) {
    this.title = title;
    this.cost = cost;
  }

  /** Whether a way can be altered so. */
  boolean matters(Method.Guided guided) {
    return switch (this) {
      case NONE -> false;
      case WHOLE_LENGTH -> guided.isMovedAlong();
      case BLOCK_STAYS_ON -> guided.isMovedAlong() && guided.guide().block().isPositive();
      default -> true;
    };
  }

  /** For people. */
  public String title() {
    return title;
  }

  /** What it takes, for people. */
  public String cost() {
    return cost;
  }
}
