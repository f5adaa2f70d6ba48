package fourpin.trials;

import java.util.Locale;

/** The table of the trial of cases. */
final class CasesReport {

  /**
   * A job cut.
   *
   * @param kinds lines of the cut list
   * @param price of all sheets and boards, in the smallest coin
   * @param least no layout comes to less
   * @param faults that the virtual saw found, and parts left out
   */
  record Row(
      int cases,
      String mixture,
      long parts,
      long kinds,
      long sheets,
      long price,
      long least,
      Processor.Taken taken,
      long faults) {}

  private static final String HEAD =
      """
      # Cutting, by the number of cases

      Written by `trials/run cases`: the bookcase of `examples/reading-room.yaml`, once as it is, as often as the first
      column says; once in as many sizes as there are cases. Plywood for the cases, plywood for the backs, and boards for the
      edging are laid out as `plan` does it, the work being the limit, not the time; every layout was sawn by the
      virtual saw. The cost above the least possible is at most as given: the least is a bound that no
      guillotine layout goes below. Seconds by the clock, and of the processor for the one thread that searches. The heap is
      the most that lay on it at once, rubbish and all.

      """;

  private static final String COLUMNS =
      """
      | cases | | parts | lines | sheets and boards | cost above the least, at most | s | s of the processor | heap, MiB | faults |
      |---|---|---|---|---|---|---|---|---|---|
      """;

  private final StringBuilder rows = new StringBuilder();

  /** Notes a row, and gives it back as it is printed. */
  String add(Row row) {
    String text =
        String.format(
            Locale.ROOT,
            "| %d | %s | %d | %d | %d | %.2f %% | %.1f | %.1f | %d | %d |",
            row.cases,
            row.mixture,
            row.parts,
            row.kinds,
            row.sheets,
            100.0 * (row.price - row.least) / row.least,
            row.taken.clock(),
            row.taken.processor(),
            row.taken.heap(),
            row.faults);
    rows.append(text).append('\n');
    return text;
  }

  String document() {
    return HEAD + Machine.inWords() + ".\n\n" + COLUMNS + rows;
  }
}
