package fourpin.cutting;

/** Parts that a layout leaves out. */
public record Unplaced(String mark, int count, Reason reason) {

  /** Why a part is left out. Sizes are compared with the sheets as trimmed. */
  public enum Reason {
    /** Longer than every sheet (for a part that may be turned: its longer side). */
    TOO_LONG,
    /** Wider than every sheet (for a part that may be turned: its shorter side). */
    TOO_WIDE,
    /** One sheet is long enough and another wide enough, but none is both. */
    NO_SHEET_BOTH_WAYS,
    /** It would fit turned, but its grain is fixed. */
    GRAIN_FORBIDS_TURNING,
    /** It would fit, but no cuts within the limits of the saw get it out of a sheet. */
    SAW_LIMITS,
    /** It would fit on a board, but its defects leave no clear place as large as it. */
    DEFECTS,
    /** No whole sheet was found to hold all the parts that must share one. */
    TOO_MUCH_FOR_ONE_SHEET,
    /**
     * Every whole sheet that was found to hold all the parts that must share one is used up, and no
     * layout was found that leaves one for them, or room enough on another. There may be one.
     */
    NOT_ON_ONE_SHEET,
    /** Every sheet that it fits on is used up, or there was none. */
    NO_SHEETS_LEFT
  }

  public Unplaced {
    Require.atLeastOne(count, "count left out of part " + mark);
  }
}
