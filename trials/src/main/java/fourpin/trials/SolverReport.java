package fourpin.trials;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalLong;

/** The table of the comparison with a solver. */
final class SolverReport {

  /** A problem cut by both. @param solver with no sheets where it found no layout */
  record Row(String name, OptionalLong best, Solver.Answer ours, Solver.Answer solver) {

    private boolean solved() {
      return solver.sheets() > 0;
    }
  }

  private static final String HEAD =
      """
      # Cutting, beside a general-purpose solver

      Written by `trials/run solver`: some published problems whose parts may not be turned, cut by our cutters on one
      processor and by the constraint solver CP-SAT of OR-Tools 9.15 on two, each with as many seconds of the clock. The
      solver is given the same parts and sheets, and our quick answer to start from. That cuts run from edge to edge
      is not asked of it, so its layouts may be better than any that a saw can cut. Boards are told to it as what they are:
      how many of each part lie on each board. The ratio is our sheets to its sheets, below 1 ours is better; where it had
      no layout in time (-) there is none. Bounds: no layout needs fewer. On a busy machine (see the load) both had a part of the seconds only.

      """;

  private static final String COLUMNS =
      """
      | problem | best known | ours | our bound | s | solver | its bound | s | ratio |
      |---|---|---|---|---|---|---|---|---|
      """;

  private final int seconds;
  private final List<Row> rows = new ArrayList<>();

  SolverReport(int seconds) {
    this.seconds = seconds;
  }

  /** Notes a row, and gives it back as it is printed. */
  String add(Row row) {
    rows.add(row);
    return printed(row);
  }

  private static String printed(Row row) {
    return String.format(
        Locale.ROOT,
        "| %s | %s | %d | %d | %.1f | %s | %d | %.1f | %s |",
        row.name,
        row.best.isPresent() ? Long.toString(row.best.getAsLong()) : "",
        row.ours.sheets(),
        row.ours.bound(),
        row.ours.seconds(),
        row.solved() ? Long.toString(row.solver.sheets()) : "-",
        row.solver.bound(),
        row.solver.seconds(),
        row.solved() ? ratio(row.ours.sheets(), row.solver.sheets()) : "");
  }

  private static String ratio(long ours, long solver) {
    return String.format(Locale.ROOT, "%.3f", (double) ours / solver);
  }

  String document() {
    StringBuilder text = new StringBuilder(HEAD).append(Machine.inWords());
    text.append("; --seconds ").append(seconds).append(".\n\n").append(COLUMNS);
    rows.forEach(row -> text.append(printed(row)).append('\n'));
    return text.append(sum()).toString();
  }

  private String sum() {
    List<Row> both = rows.stream().filter(Row::solved).toList();
    long ours = both.stream().mapToLong(row -> row.ours.sheets()).sum();
    long solver = both.stream().mapToLong(row -> row.solver.sheets()).sum();
    return String.format(
        Locale.ROOT,
        "%nBoth found a layout of %d of %d problems, which took us %d sheets and the solver %d: ratio %s.%n",
        both.size(),
        rows.size(),
        ours,
        solver,
        both.isEmpty() ? "none" : ratio(ours, solver));
  }
}
