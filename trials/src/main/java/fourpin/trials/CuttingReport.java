package fourpin.trials;

import fourpin.trials.CuttingRows.Cut;
import fourpin.trials.CuttingRows.Sawn;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/** The tables of the cutting trial. */
final class CuttingReport {

  private record Line(PublishedRun run, Cut plain, Cut sawn) {
    /** The worse of the two. */
    long found() {
      return Math.max(plain.found(), sawn.found());
    }

    private long better() {
      return Math.min(plain.found(), sawn.found());
    }

    long lower() {
      return Math.max(plain.lower(), sawn.lower());
    }

    double processor() {
      return Math.max(plain.processor(), sawn.processor());
    }

    String verdict() {
      if (plain.faults() + sawn.faults() > 0) {
        return "FAULTY";
      }
      if (lower() > better() || run.bound().orElse(0) > better()) {
        return "A BOUND IS WRONG";
      }
      String against = against(run.best());
      return lower() == found() ? (against + " proven").strip() : against;
    }

    private String against(OptionalLong best) {
      if (best.isEmpty()) {
        return "";
      }
      long more = found() - best.getAsLong();
      return more < 0 ? "better" : more == 0 ? "equal" : "above";
    }
  }

  private static final String HEAD =
      """
      # Cutting, held to published results

      Written by `trials/run cutting` from what it notes in `cutting-results.csv`. Every layout was sawn by the virtual
      saw, without and with a kerf of 1/8 in; with kerf, stock and parts are less by the kerf, so that the optimum is the
      same. The best known values are published, mostly for layouts of two or three stages; ours have no limit of stages
      and may be below them. The bound is valid for every guillotine layout. Seconds are those that the one thread of the
      search had a processor for, of the slower of the two layouts: other programs on the machine take nothing from
      them. `s of the clock` over `s` tells how busy the machine was. A search whose work is spent ends sooner. What was
      proven with fewer seconds was not cut again with more. The goal is how much more than the sum of the best known
      values ours may be; SHORT where it is missed, and `above` tells by how many problems. Sources of the instances and values: the README of each folder of `trials/data`.

      """;

  private final List<PublishedRun> runs;
  private final CuttingRows rows;

  /**
   * Of what is noted.
   *
   * @param runs in their order
   */
  CuttingReport(List<PublishedRun> runs, CuttingRows rows) {
    this.runs = runs;
    this.rows = rows;
  }

  private List<Line> lines(int limit) {
    return runs.stream().flatMap(run -> line(run, rows, limit).stream()).toList();
  }

  private static Optional<Line> line(PublishedRun run, CuttingRows rows, int limit) {
    return rows.of(run, Sawn.PLAIN, limit)
        .flatMap(
            plain -> rows.of(run, Sawn.WITH_KERF, limit).map(sawn -> new Line(run, plain, sawn)));
  }

  /** What a run came to, once it is noted without and with kerf. */
  static Optional<String> row(PublishedRun run, CuttingRows rows, int limit) {
    return line(run, rows, limit).map(CuttingReport::row);
  }

  private static String row(Line line) {
    return String.format(
        Locale.ROOT,
        "| %s | %d | %d | %s | %d | %s | %.1f | %s |",
        line.run.name(),
        line.plain.found(),
        line.sawn.found(),
        shown(line.run.best()),
        line.lower(),
        shown(line.run.bound()),
        line.processor(),
        line.verdict());
  }

  private static String shown(OptionalLong number) {
    return number.isPresent() ? Long.toString(number.getAsLong()) : "";
  }

  /** For each family and rule: sums over the problems with a published value. */
  private String sums(int limit) {
    Map<String, List<Line>> groups = new LinkedHashMap<>();
    for (Line line : lines(limit)) {
      String group = line.run.family() + "; " + line.run.rules();
      groups.computeIfAbsent(group, g -> new ArrayList<>()).add(line);
    }
    StringBuilder table = new StringBuilder("## Sums at " + limit + " s\n\n");
    table.append(
        "| family | problems | ours | best known | more % | goal % | bound | proven | above | s of the clock / s |\n");
    table.append("|---|---|---|---|---|---|---|---|---|---|\n");
    groups.forEach((group, members) -> table.append(sum(group, members, limit)));
    return table.append('\n').toString();
  }

  private static String sum(String group, List<Line> members, int limit) {
    long ours = members.stream().mapToLong(Line::found).sum();
    long best = members.stream().mapToLong(l -> l.run.best().orElse(0)).sum();
    long proven = members.stream().filter(l -> l.lower() == l.found()).count();
    long above = members.stream().filter(l -> l.verdict().startsWith("above")).count();
    double more = 100.0 * (ours - best) / best;
    return String.format(
        Locale.ROOT,
        "| %s | %d | %d | %s | %s | %s | %d | %d | %d | %.1f |%n",
        group,
        members.size(),
        ours,
        best == 0 ? "" : Long.toString(best),
        best == 0 ? "" : String.format(Locale.ROOT, "%+.2f", more),
        best == 0 ? "" : CuttingGoal.of(group, limit).map(goal -> goal.against(more)).orElse(""),
        members.stream().mapToLong(Line::lower).sum(),
        proven,
        above,
        sum(members, Cut::clock) / sum(members, Cut::processor));
  }

  private static double sum(List<Line> members, ToDoubleFunction<Cut> what) {
    return cuts(members).mapToDouble(what).sum();
  }

  private static Stream<Cut> cuts(List<Line> members) {
    return members.stream().flatMap(line -> Stream.of(line.plain, line.sawn));
  }

  String document() {
    StringBuilder text = new StringBuilder(HEAD);
    text.append(Machine.inWords()).append(".\n\n");
    rows.limits().forEach(limit -> text.append(sums(limit)));
    text.append("## Each problem\n\n");
    text.append("| problem | ours | with kerf | best known | bound | bound in the data | s | |\n");
    text.append("|---|---|---|---|---|---|---|---|\n");
    lines(rows.limits().getLast()).forEach(line -> text.append(row(line)).append('\n'));
    return text.toString();
  }
}
