package fourpin.shop.cut;

import fourpin.cutting.Defect;
import fourpin.job.Supply;
import fourpin.measure.Length;
import fourpin.plan.Wanted;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** A line of the table of stock. */
record StockRow(
    String material,
    Wanted.Kind kind,
    Cell kindCell,
    Length length,
    Length width,
    Optional<Integer> count,
    Optional<BigDecimal> price,
    Supply supply,
    Optional<BigDecimal> worth,
    List<Defect> defects,
    Optional<Length> thickness,
    CsvTable.Row line) {

  /** What is the same for all boards of a material. */
  static final List<String> ALLOWANCES =
      List.of("rough-length", "rough-width", "rough-thickness", "jointing");

  static final List<Column> COLUMNS =
      List.of(
          Column.required("material"),
          Column.required("length"),
          Column.required("width"),
          Column.optional("count"),
          Column.optional("price"),
          Column.optional("kind"),
          Column.optional("supply"),
          Column.optional("worth"),
          Column.optional("defects"),
          Column.optional("thickness"),
          Column.optional("rough-length"),
          Column.optional("rough-width"),
          Column.optional("rough-thickness"),
          Column.optional("jointing"),
          Column.optional("first-cut"));

  private static final Map<String, Wanted.Kind> KINDS =
      new TreeMap<>(Map.of("sheet", Wanted.Kind.SHEETS, "board", Wanted.Kind.BOARDS));
  private static final Map<String, Supply> SUPPLIES =
      new TreeMap<>(Map.of("to-buy", Supply.TO_BUY, "on-hand", Supply.ON_HAND));

  private static void ofBoardsOnly(String column, CsvTable.Row row, Cells cells) {
    if (!row.cell(column).isEmpty()) {
      cells.wrong(
          column,
          row.cell(column),
          "only boards have it",
          "write board under kind, or leave it empty");
    }
  }

  private static void within(
      List<Defect> defects, Length length, Length width, Cell marked, Cells cells) {
    boolean beyond =
        defects.stream()
            .anyMatch(
                d ->
                    d.x().plus(d.length()).isMoreThan(length)
                        || d.y().plus(d.width()).isMoreThan(width));
    if (beyond) {
      cells.wrong(
          "defects",
          marked,
          "it ends beyond the board, which has the length and width of its line",
          "measure along from the near end, and across from the near edge");
    }
  }

  /** Empty where something in the line is wrong. */
  static Optional<StockRow> read(CsvTable.Row row, Cells cells) {
    Optional<String> material = cells.name("material", row.cell("material"));
    Optional<Length> length = cells.length("length", row.cell("length"), "50 mm", "8 m");
    Optional<Length> width = cells.length("width", row.cell("width"), "10 mm", "4 m");
    Cell count = row.cell("count");
    Optional<Integer> counted = count.isEmpty() ? Optional.empty() : cells.count("count", count);
    Cell price = row.cell("price");
    Optional<BigDecimal> priced = price.isEmpty() ? Optional.empty() : cells.price("price", price);
    Cell worth = row.cell("worth");
    Optional<BigDecimal> kept = worth.isEmpty() ? Optional.empty() : cells.price("worth", worth);
    Optional<Wanted.Kind> kind = cells.word("kind", row.cell("kind"), Wanted.Kind.SHEETS, KINDS);
    Optional<Supply> supply = cells.word("supply", row.cell("supply"), Supply.TO_BUY, SUPPLIES);
    if (supply.equals(Optional.of(Supply.ON_HAND)) && count.isEmpty()) {
      cells.wrong(
          "supply", row.cell("supply"), "what is on hand has a count", "write how many there are");
    }
    Cell marked = row.cell("defects");
    List<Defect> defects = DefectCells.read(marked, cells);
    if (!marked.isEmpty()
        && (!kind.equals(Optional.of(Wanted.Kind.BOARDS)) || !counted.orElse(1).equals(1))) {
      cells.wrong(
          "defects",
          marked,
          "only a board has them, and it is one of its kind",
          "write board under kind, 1 under count, and a line for each such board");
    }
    length.ifPresent(l -> width.ifPresent(w -> within(defects, l, w, marked, cells)));
    Cell thick = row.cell("thickness");
    Optional<Length> thickness =
        thick.isEmpty() ? Optional.empty() : cells.thickness("thickness", thick);
    if (kind.equals(Optional.of(Wanted.Kind.SHEETS))) {
      ofBoardsOnly("thickness", row, cells);
      ALLOWANCES.forEach(column -> ofBoardsOnly(column, row, cells));
    }
    if (supply.equals(Optional.of(Supply.TO_BUY)) && kept.isPresent()) {
      cells.wrong(
          "worth",
          worth,
          "only what is on hand has a worth",
          "write on-hand under supply, or the amount under price");
    }
    return material.isEmpty()
            || length.isEmpty()
            || width.isEmpty()
            || kind.isEmpty()
            || supply.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new StockRow(
                material.get(),
                kind.get(),
                row.cell("kind"),
                length.get(),
                width.get(),
                defects.isEmpty() ? counted : Optional.of(1),
                priced,
                supply.get(),
                kept,
                defects,
                thickness,
                row));
  }
}
