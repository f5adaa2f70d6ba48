package fourpin.trials;

import fourpin.cutting.BoardProblem;
import fourpin.cutting.Layout;
import fourpin.cutting.SheetProblem;
import java.util.OptionalLong;

/**
 * One published problem in one variant, with its published values.
 *
 * @param name family, instance, and whether parts may be turned, with strokes between
 * @param rules what the best known value holds for, as published
 * @param best published, for the rules named; fewer cuts than ours are allowed there, so ours may
 *     be below it
 * @param bound a value that no guillotine layout goes below, as it came with the data
 */
record PublishedRun(
    String family,
    String name,
    String rules,
    Counts counts,
    OptionalLong best,
    OptionalLong bound,
    Task task) {

  /** What is counted. */
  enum Counts {
    SHEETS,
    COST
  }

  /** What is to be cut. */
  sealed interface Task {
    record Sheets(SheetProblem problem) implements Task {}

    record Boards(BoardProblem problem) implements Task {}
  }

  long found(Layout layout) {
    return counts == Counts.COST ? layout.price() : layout.sheets();
  }

  long lower(Layout layout) {
    return counts == Counts.COST ? layout.bound().price() : layout.bound().sheets();
  }
}
