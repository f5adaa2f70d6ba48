package fourpin.shop.cut;

import fourpin.cutting.Grain;
import fourpin.measure.Length;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A line of the table of parts.
 *
 * @param mark number of the line among the parts, and the name
 * @param width empty means as wide as the boards
 */
record PartRow(
    String mark,
    Cell material,
    Length length,
    Optional<Length> width,
    Cell widthCell,
    int count,
    Grain grain) {

  static final List<Column> COLUMNS =
      List.of(
          Column.required("part"),
          Column.required("material"),
          Column.required("length"),
          Column.required("width"),
          Column.optional("count"),
          Column.optional("grain"));

  private static final Map<String, Grain> GRAINS =
      new TreeMap<>(Map.of("length", Grain.FIXED, "any", Grain.FREE));

  /** Empty where something in the line is wrong. @param number of the line among the parts */
  static Optional<PartRow> read(CsvTable.Row row, int number, Cells cells) {
    Optional<String> name = cells.name("part", row.cell("part"));
    Cell material = row.cell("material");
    Optional<String> named = cells.name("material", material);
    Optional<Length> length = cells.length("length", row.cell("length"), "5 mm", "8 m");
    Cell width = row.cell("width");
    Optional<Length> wide =
        width.isEmpty() ? Optional.empty() : cells.length("width", width, "5 mm", "4 m");
    Cell count = row.cell("count");
    Optional<Integer> counted = count.isEmpty() ? Optional.of(1) : cells.count("count", count);
    Optional<Grain> grain = cells.word("grain", row.cell("grain"), Grain.FIXED, GRAINS);
    return name.isEmpty()
            || named.isEmpty()
            || length.isEmpty()
            || (wide.isEmpty() && !width.isEmpty())
            || counted.isEmpty()
            || grain.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new PartRow(
                number + " " + name.get(),
                material,
                length.get(),
                wide,
                width,
                counted.get(),
                grain.get()));
  }
}
