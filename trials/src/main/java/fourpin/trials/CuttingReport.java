package fourpin.trials;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalLong;

/** The tables of the cutting trial. */
final class CuttingReport {

  /**
   * A layout measured.
   *
   * @param found sheets, or cost
   * @param lower bound that came with the layout
   * @param faults faults that the virtual saw found, and parts left out
   */
  record Cut(long found, long lower, double seconds, int faults) {}

  private record Line(PublishedRun run, Cut plain, Cut sawn) {
    /** The worse of the two. */
    long found() {
      return Math.max(plain.found, sawn.found);
    }

    private long better() {
      return Math.min(plain.found, sawn.found);
    }

    long lower() {
      return Math.max(plain.lower, sawn.lower);
    }

    double seconds() {
      return Math.max(plain.seconds, sawn.seconds);
    }

    String verdict() {
      if (plain.faults + sawn.faults > 0) {
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

      Written by `trials/run cutting`. Every layout was sawn by the virtual saw, without and with a kerf of 1/8 in; with
      kerf, stock and parts are less by the kerf, so that the optimum is the same. The best known values are published,
      mostly for layouts of two or three stages; ours have no limit of stages and may be below them. The bound is valid
      for every guillotine layout. Seconds are those of the slower of the two layouts, and hold for the machine below.
      Sources of the instances and values: the README of each folder of `trials/data`.

      """;

  private final int seconds;
  private final List<Line> lines = new ArrayList<>();

  CuttingReport(int seconds) {
    this.seconds = seconds;
  }

  /** Notes a run without and with kerf, and says in a line what it came to. */
  String add(PublishedRun run, List<Cut> plainAndSawn) {
    Line line = new Line(run, plainAndSawn.getFirst(), plainAndSawn.getLast());
    lines.add(line);
    return row(line);
  }

  private static String row(Line line) {
    return String.format(
        Locale.ROOT,
        "| %s | %d | %d | %s | %d | %s | %.1f | %s |",
        line.run.name(),
        line.plain.found,
        line.sawn.found,
        shown(line.run.best()),
        line.lower(),
        shown(line.run.bound()),
        line.seconds(),
        line.verdict());
  }

  private static String shown(OptionalLong number) {
    return number.isPresent() ? Long.toString(number.getAsLong()) : "";
  }

  /** For each family and rule: sums over the problems with a published value. */
  String sums() {
    Map<String, List<Line>> groups = new LinkedHashMap<>();
    for (Line line : lines) {
      String group = line.run.family() + "; " + line.run.rules();
      groups.computeIfAbsent(group, g -> new ArrayList<>()).add(line);
    }
    StringBuilder table = new StringBuilder();
    table.append("| family | problems | ours | best known | more % | bound | proven | above |\n");
    table.append("|---|---|---|---|---|---|---|---|\n");
    groups.forEach((group, members) -> table.append(sum(group, members)));
    return table.toString();
  }

  private static String sum(String group, List<Line> members) {
    long ours = members.stream().mapToLong(Line::found).sum();
    long best = members.stream().mapToLong(l -> l.run.best().orElse(0)).sum();
    long proven = members.stream().filter(l -> l.lower() == l.found()).count();
    long above = members.stream().filter(l -> l.verdict().startsWith("above")).count();
    return String.format(
        Locale.ROOT,
        "| %s | %d | %d | %s | %s | %d | %d | %d |%n",
        group,
        members.size(),
        ours,
        best == 0 ? "" : Long.toString(best),
        best == 0 ? "" : String.format(Locale.ROOT, "%+.2f", 100.0 * (ours - best) / best),
        members.stream().mapToLong(Line::lower).sum(),
        proven,
        above);
  }

  String document() {
    StringBuilder text = new StringBuilder(HEAD);
    text.append(Machine.inWords()).append("; --seconds ").append(seconds).append(".\n\n");
    text.append("## Sums\n\n").append(sums()).append("\n## Each problem\n\n");
    text.append("| problem | ours | with kerf | best known | bound | bound in the data | s | |\n");
    text.append("|---|---|---|---|---|---|---|---|\n");
    lines.forEach(line -> text.append(row(line)).append('\n'));
    return text.toString();
  }
}
