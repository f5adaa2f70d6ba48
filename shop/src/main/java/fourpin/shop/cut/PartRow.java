package fourpin.shop.cut;

import fourpin.cutting.Blank;
import fourpin.cutting.Grain;
import fourpin.cutting.Matched;
import fourpin.measure.Length;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A line of the table of parts.
 *
 * @param mark number of the line among the parts, and the name
 * @param width empty means as wide as the boards
 * @param count spare ones included
 * @param match strip that it comes from with others, and how it lies there
 * @param thickness finished, where it is stated
 * @param strips that it may be glued up from
 */
record PartRow(
    String mark,
    Length length,
    Optional<Length> width,
    int count,
    int spares,
    Grain grain,
    Optional<Match> match,
    Optional<Length> thickness,
    Optional<Blank.Widths> strips,
    CsvTable.Row line) {

  /** A strip by its name. */
  record Match(String name, Matched.Run run) {}

  /** The column that no table of stock has. */
  static final String NAME = "part";

  static final List<Column> COLUMNS =
      List.of(
          Column.required(NAME),
          Column.required("material"),
          Column.required("length"),
          Column.required("width"),
          Column.optional("count"),
          Column.optional("grain"),
          Column.optional("spares"),
          Column.optional("match"),
          Column.optional("together"),
          Column.optional("thickness"),
          Column.optional("glue-up"));

  private static final Pattern WIDTHS = Pattern.compile("(.+?)\\.\\.(.+)");
  private static final Pattern MATCH = Pattern.compile("(.*\\S)\\s+(along|across)");

  private static final Map<String, Grain> GRAINS =
      new TreeMap<>(
          Arrays.stream(Grain.values())
              .collect(Collectors.toMap(PartRow::word, Function.identity())));

  /** As the table writes it. */
  static String word(Grain grain) {
    return grain == Grain.FIXED ? "length" : "any";
  }

  /**
   * The name of a strip, and behind it how the parts follow each other: along if nothing stands.
   */
  private static Optional<Match> match(Cell cell) {
    Matcher words = MATCH.matcher(cell.text());
    if (cell.isEmpty()) {
      return Optional.empty();
    }
    boolean said = words.matches();
    boolean across = said && words.group(2).equals("across");
    return Optional.of(
        new Match(
            said ? words.group(1) : cell.text(),
            across ? Matched.Run.SIDE_BY_SIDE : Matched.Run.END_TO_END));
  }

  /** Empty where something in the line is wrong. @param number of the line among the parts */
  static Optional<PartRow> read(CsvTable.Row row, int number, Cells cells) {
    Optional<String> name = cells.name(NAME, row.cell(NAME));
    Optional<String> material = cells.name("material", row.cell("material"));
    Optional<Length> length = cells.length("length", row.cell("length"), "5 mm", "8 m");
    Cell width = row.cell("width");
    Optional<Length> wide =
        width.isEmpty() ? Optional.empty() : cells.length("width", width, "5 mm", "4 m");
    Cell count = row.cell("count");
    Optional<Integer> counted = count.isEmpty() ? Optional.of(1) : cells.count("count", count);
    Cell spare = row.cell("spares");
    Optional<Integer> spares = spare.isEmpty() ? Optional.of(0) : cells.spares("spares", spare);
    Optional<Grain> grain = cells.word("grain", row.cell("grain"), Grain.FIXED, GRAINS);
    Cell thick = row.cell("thickness");
    Optional<Length> thickness =
        thick.isEmpty() ? Optional.empty() : cells.length("thickness", thick, "1 mm", "150 mm");
    Cell glued = row.cell("glue-up");
    Optional<Blank.Widths> strips = glued.isEmpty() ? Optional.empty() : strips(glued, cells);
    return name.isEmpty()
            || material.isEmpty()
            || length.isEmpty()
            || (wide.isEmpty() && !width.isEmpty())
            || counted.isEmpty()
            || spares.isEmpty()
            || grain.isEmpty()
            || (thickness.isEmpty() && !thick.isEmpty())
            || (strips.isEmpty() && !glued.isEmpty())
        ? Optional.empty()
        : Optional.of(
            new PartRow(
                number + " " + name.get(),
                length.get(),
                wide,
                counted.get() + spares.get(),
                spares.get(),
                grain.get(),
                match(row.cell("match")),
                thickness,
                strips,
                row));
  }

  private static Optional<Blank.Widths> strips(Cell cell, Cells cells) {
    Matcher ends = WIDTHS.matcher(cell.text());
    if (!ends.matches()) {
      cells.wrong(
          "glue-up",
          cell,
          "it is the least and the greatest width of the strips",
          "write it like 2 in..4 1/2 in");
      return Optional.empty();
    }
    Optional<Length> least = strip(ends.group(1), cell, cells);
    Optional<Length> greatest = strip(ends.group(2), cell, cells);
    if (least.isPresent() && greatest.isPresent() && least.get().isMoreThan(greatest.get())) {
      cells.wrong("glue-up", cell, "it ends before it begins", "write the lesser width first");
      return Optional.empty();
    }
    return least.flatMap(from -> greatest.map(to -> new Blank.Widths(from, to)));
  }

  private static Optional<Length> strip(String text, Cell cell, Cells cells) {
    return cells.length("glue-up", cell.part(text), "10 mm", "1 m");
  }

  String material() {
    return line.cell("material").text();
  }

  /** Name of the group that shares a sheet with it, empty for none. */
  String together() {
    return line.cell("together").text();
  }
}
