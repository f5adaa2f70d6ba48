package fourpin.cutting;

import fourpin.measure.Length;
import java.util.List;

/**
 * Pieces to be crosscut from boards of one section.
 *
 * @param width of the section; the thickness plays no part in the cutting
 * @param kerf of the crosscut
 * @param endTrim all that is lost at each end of each board, kerf included
 */
public record BoardProblem(
    List<BoardPart> parts, List<StockBoard> stock, Length width, Length kerf, Length endTrim) {

  public BoardProblem {
    parts = List.copyOf(parts);
    stock = List.copyOf(stock);
    Require.positive(width, "width of the boards");
    Require.notNegative(kerf, "kerf");
    Require.notNegative(endTrim, "end trim");
  }

  /**
   * The same problem with boards as sheets exactly as wide as the parts: only crosscuts are left to
   * choose.
   */
  public SheetProblem asSheets() {
    return new SheetProblem(
        parts.stream()
            .map(p -> new Part(p.mark(), p.length(), width, p.count(), Grain.FIXED))
            .toList(),
        stock.stream().map(this::asSheet).toList(),
        new Saw(kerf, Trim.ends(endTrim)));
  }

  private StockSheet asSheet(StockBoard board) {
    return new StockSheet(
        board.name(),
        board.length(),
        width,
        SheetGrain.ALONG_LENGTH,
        board.supply(),
        board.price(),
        board.origin());
  }
}
