package fourpin.shop.file;

import fourpin.job.BoardStock;
import fourpin.job.Material;
import fourpin.job.SheetStock;
import fourpin.job.Supply;
import fourpin.measure.Length;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/** Sheets and boards to cut from. */
final class StockForm {

  private static final int MOST_LINES = 200;

  /** What is in the rack or can be bought. */
  record Stock(List<SheetStock> sheets, List<BoardStock> boards) {
    static final Stock NONE = new Stock(List.of(), List.of());
  }

  private static final Key<String> SHEET =
      Key.required(
          "material", Words.material(Material.Kind.SHEET), "the name of a material of kind sheet");
  private static final Key<String> BOARD =
      Key.required(
          "material", Words.material(Material.Kind.BOARD), "the name of a material of kind board");
  private static final Key<Length> LENGTH =
      Key.required("length", Words.length("100 mm", "8 m"), "along the grain");
  private static final Key<Length> SHEET_WIDTH =
      Key.required("width", Words.length("100 mm", "4 m"), "across the grain");
  private static final Key<Length> BOARD_WIDTH =
      Key.required("width", Words.length("10 mm", "1 m"), "across the grain");
  private static final Key<Integer> COUNT =
      Key.optional("count", Words.whole(1, 9999), "as many as wanted", "how many there are");
  private static final Key<BigDecimal> PRICE =
      Key.optional("price", Words.money(), "not priced", "of one, in the job's currency");
  private static final Key<Supply> SUPPLY =
      Key.optional(
          "supply",
          Words.choice(Supply.class),
          "to-buy",
          "on-hand for what stands in the shop already; it needs a count");

  private static final Form<SheetStock> SHEET_FORM =
      new Form<>(
          "a sheet",
          List.of(SHEET, LENGTH, SHEET_WIDTH, COUNT, PRICE, SUPPLY),
          List.of(),
          v -> counted(v).map(supply -> sheet(v, supply)));
  private static final Form<BoardStock> BOARD_FORM =
      new Form<>(
          "a board",
          List.of(BOARD, LENGTH, BOARD_WIDTH, COUNT, PRICE, SUPPLY),
          List.of(),
          v -> counted(v).map(supply -> board(v, supply)));

  private static final Key<List<SheetStock>> SHEETS =
      Key.optional("sheets", new ListOf<>(SHEET_FORM, MOST_LINES), "none", "sheets to cut from");
  private static final Key<List<BoardStock>> BOARDS =
      Key.optional("boards", new ListOf<>(BOARD_FORM, MOST_LINES), "none", "boards to cut from");

  static final Form<Stock> FORM =
      Form.of(
          "stock",
          List.of(SHEETS, BOARDS),
          v -> new Stock(v.find(SHEETS).orElse(List.of()), v.find(BOARDS).orElse(List.of())));

  private StockForm() {}

  private static SheetStock sheet(Values v, Supply supply) {
    return new SheetStock(
        v.get(SHEET), v.get(LENGTH), v.get(SHEET_WIDTH), v.find(COUNT), v.find(PRICE), supply);
  }

  private static BoardStock board(Values v, Supply supply) {
    return new BoardStock(
        v.get(BOARD), v.get(LENGTH), v.get(BOARD_WIDTH), v.find(COUNT), v.find(PRICE), supply);
  }

  private static Optional<Supply> counted(Values v) {
    Supply supply = v.find(SUPPLY).orElse(Supply.TO_BUY);
    return supply == Supply.TO_BUY || v.find(COUNT).isPresent()
        ? Optional.of(supply)
        : v.spot(SUPPLY).refuse("what is on hand is counted", "state count");
  }
}
