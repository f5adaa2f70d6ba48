package fourpin.shop.cut;

import fourpin.cutting.Matched;
import fourpin.cutting.Part;
import fourpin.cutting.Ties;
import fourpin.cutting.Together;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Finds what the parts of one material have to do with each other: those that name the same strip
 * lie in it in the order of their lines, each as often as it is wanted; those that name the same
 * group share a sheet.
 */
final class TiesReader {

  private final List<PartRow> rows;
  private final Map<String, Part> parts;
  private final Cells cells;

  /**
   * @param cells get what is wrong
   */
  TiesReader(List<PartRow> rows, List<Part> parts, Cells cells) {
    this.rows = rows;
    this.parts = parts.stream().collect(Collectors.toMap(Part::mark, Function.identity()));
    this.cells = cells;
  }

  Ties read() {
    int before = cells.wrongs();
    List<Matched> sets = new ArrayList<>();
    gathered(row -> row.match().map(PartRow.Match::name).orElse(""))
        .values()
        .forEach(its -> set(its).ifPresent(sets::add));
    List<Together> groups = new ArrayList<>();
    gathered(PartRow::together)
        .forEach((name, its) -> groups.add(new Together("sheet " + name, marks(its))));
    sets.stream()
        .filter(set -> groups.stream().map(set::isPartlyIn).anyMatch(Boolean::booleanValue))
        .forEach(this::inPart);
    return cells.wrongs() > before ? Ties.NONE : new Ties(sets, groups);
  }

  private Map<String, List<PartRow>> gathered(Function<PartRow, String> name) {
    Map<String, List<PartRow>> gathered = new LinkedHashMap<>();
    for (PartRow row : rows) {
      if (!name.apply(row).isEmpty()) {
        gathered.computeIfAbsent(name.apply(row), _ -> new ArrayList<>()).add(row);
      }
    }
    return gathered;
  }

  private static List<String> marks(List<PartRow> rows) {
    return rows.stream().map(PartRow::mark).toList();
  }

  private Part part(PartRow row) {
    return Objects.requireNonNull(parts.get(row.mark()));
  }

  private Optional<Matched> set(List<PartRow> its) {
    PartRow first = its.getFirst();
    PartRow.Match match = first.match().orElseThrow();
    int before = cells.wrongs();
    its.forEach(row -> together(row, first));
    if (cells.wrongs() > before) {
      return Optional.empty();
    }
    List<String> marks = new ArrayList<>();
    its.forEach(row -> marks.addAll(Collections.nCopies(row.count(), row.mark())));
    if (marks.size() < 2) {
      cells.wrong(
          "match",
          first.line().cell("match"),
          "only one part comes from that strip",
          "name it in the line of another part too, or leave it empty");
      return Optional.empty();
    }
    return Optional.of(new Matched("strip " + match.name(), match.run(), marks));
  }

  /** What bars a part from the strip of the first one that names it. */
  private void together(PartRow row, PartRow first) {
    Matched.Run run = first.match().orElseThrow().run();
    if (!row.match().equals(first.match())) {
      anotherWay(row, first);
    } else if (row.grain() != first.grain()) {
      otherGrain(row, first);
    } else if (!sameSize(part(row), part(first), run)) {
      cells.wrong(
          "match",
          row.line().cell("match"),
          "parts of one strip have "
              + (run == Matched.Run.END_TO_END
                  ? "along it the same width"
                  : "across it the same length"),
          "correct the sizes, or name another strip");
    }
  }

  private static boolean sameSize(Part one, Part other, Matched.Run run) {
    return run == Matched.Run.END_TO_END
        ? one.width().equals(other.width())
        : one.length().equals(other.length());
  }

  private void anotherWay(PartRow row, PartRow first) {
    cells.wrong(
        "match",
        row.line().cell("match"),
        "its strip runs " + way(first) + " in line " + line(first) + ", and " + way(row) + " here",
        "write the same way in all lines of the strip, or name another strip");
  }

  private void otherGrain(PartRow row, PartRow first) {
    cells.wrong(
        "grain",
        row.line().cell("grain"),
        "parts of one strip have the same grain, which is "
            + PartRow.word(first.grain())
            + " in line "
            + line(first)
            + ", and "
            + PartRow.word(row.grain())
            + " here",
        "write the same grain in all lines of the strip, or name another strip under match");
  }

  private static String way(PartRow row) {
    return row.match().orElseThrow().run() == Matched.Run.END_TO_END ? "along" : "across";
  }

  private static int line(PartRow row) {
    return row.line().place().line();
  }

  private void inPart(Matched set) {
    rows.stream()
        .filter(row -> row.mark().equals(set.marks().getFirst()))
        .forEach(
            row ->
                cells.wrong(
                    "match",
                    row.line().cell("match"),
                    "only some parts of that strip share a sheet with others",
                    "write the same under 'together' for all parts of the strip"));
  }
}
