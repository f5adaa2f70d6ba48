package fourpin.shop.cut;

import fourpin.cutting.Allowance;
import fourpin.cutting.SawLimits.FirstCut;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Reads what is the same for all stock of one material, in whichever of its lines it stands. */
final class RoughReader {

  private static final String FIRST = "first-cut";

  private static final Map<String, FirstCut> FIRST_CUTS =
      new TreeMap<>(
          Map.of("either", FirstCut.EITHER, "along", FirstCut.ALONG, "across", FirstCut.ACROSS));

  private final List<StockRow> stock;
  private final Cells cells;

  private RoughReader(List<StockRow> stock, Cells cells) {
    this.stock = stock;
    this.cells = cells;
  }

  /** Reads the lines of one material. @param cells get what is wrong */
  static Rough read(List<StockRow> stock, Cells cells) {
    return new RoughReader(stock, cells).read();
  }

  private Rough read() {
    Optional<Length> thickness =
        same(
            "thickness",
            stock.stream().filter(row -> row.thickness().isPresent()).toList(),
            stock.stream().flatMap(row -> row.thickness().stream()).toList());
    Length planed = allowance("rough-thickness");
    Rough rough =
        new Rough(
            thickness,
            first(),
            planed,
            new Allowance(
                allowance("rough-length"), allowance("rough-width"), allowance("jointing")));
    if (planed.isPositive() && !rough.left().orElse(Length.ZERO).isPositive()) {
      cells.wrong(
          "rough-thickness",
          stock.getFirst().line().cell("rough-thickness"),
          "it is less than the thickness of the boards, which must be stated",
          "write how thick the boards are sold, and how much planing takes off");
    }
    return rough;
  }

  private Length allowance(String column) {
    List<StockRow> rows = new ArrayList<>();
    List<Length> read = new ArrayList<>();
    for (StockRow row : stock) {
      Cell cell = row.line().cell(column);
      if (!cell.isEmpty()) {
        cells
            .length(column, cell, "0 mm", "200 mm")
            .ifPresent(
                length -> {
                  rows.add(row);
                  read.add(length);
                });
      }
    }
    return same(column, rows, read).orElse(Length.ZERO);
  }

  private Optional<FirstCut> first() {
    List<StockRow> stated =
        stock.stream().filter(row -> !row.line().cell(FIRST).isEmpty()).toList();
    List<StockRow> rows = new ArrayList<>();
    List<FirstCut> read = new ArrayList<>();
    for (StockRow row : stated) {
      cells
          .word(FIRST, row.line().cell(FIRST), FirstCut.EITHER, FIRST_CUTS)
          .ifPresent(
              first -> {
                rows.add(row);
                read.add(first);
              });
    }
    return same(FIRST, rows, read);
  }

  /** Parts may come from any of the boards, so that there is one answer for all. */
  private <T> Optional<T> same(String column, List<StockRow> rows, List<T> read) {
    for (int i = 1; i < read.size(); i++) {
      if (!read.get(i).equals(read.getFirst())) {
        cells.wrong(
            column,
            rows.get(i).line().cell(column),
            "an earlier line of '" + rows.get(i).material() + "' says otherwise",
            "state the same in all of its lines, or give one of them another name");
      }
    }
    return read.stream().findFirst();
  }
}
