package fourpin.shop.cut;

import fourpin.cutting.Blank;
import fourpin.cutting.Grain;
import fourpin.cutting.Part;
import fourpin.measure.Length;
import fourpin.measure.Unit;
import fourpin.plan.Finished;
import fourpin.plan.Wanted;
import java.util.List;
import java.util.Optional;

/** Finds the pieces to be cut for the parts of one material: over size, or in strips to glue. */
final class BlankReader {

  private final Rough rough;
  private final List<StockRow> stock;
  private final Length step;
  private final Cells cells;

  /**
   * A line's pieces.
   *
   * @param finished empty where they are parts as they are cut
   * @param strips how many pieces make one part
   */
  record Read(Part pieces, Optional<Finished> finished, int strips) {}

  BlankReader(Rough rough, List<StockRow> stock, Unit unit, Cells cells) {
    this.rough = rough;
    this.stock = stock;
    this.step = Wanted.stripStep(unit);
    this.cells = cells;
  }

  /** As the boards are sold, where it is stated. */
  Optional<Length> thickness() {
    return rough.thickness();
  }

  /** Empty where something in the line is wrong. */
  Optional<Read> read(PartRow row) {
    Optional<Length> thickness = thickness(row);
    return width(row)
        .map(width -> Blank.whole(row.mark(), row.length(), width, rough.allowance()))
        .flatMap(whole -> row.strips().isEmpty() ? Optional.of(whole) : glued(row, whole))
        .map(blank -> read(row, blank, thickness));
  }

  private Read read(PartRow row, Blank blank, Optional<Length> thickness) {
    Part pieces = blank.pieces(row.count(), row.grain(), step);
    boolean asCut =
        pieces.length().equals(blank.length())
            && pieces.width().equals(blank.width())
            && thickness.equals(rough.thickness());
    Finished finished = new Finished(blank, thickness);
    return new Read(pieces, asCut ? Optional.empty() : Optional.of(finished), blank.strips());
  }

  /** A part without a width is as wide as the boards, if these are all of one width. */
  private Optional<Length> width(PartRow row) {
    List<Length> widths = stock.stream().map(StockRow::width).distinct().toList();
    if (row.width().isEmpty() && !(ofBoards() && widths.size() == 1)) {
      cells.wrong(
          "width",
          row.line().cell("width"),
          "only parts from boards of one width may leave theirs out",
          "write the width");
      return Optional.empty();
    }
    return row.width().or(() -> asWideAsTheBoards(row, widths.getFirst()));
  }

  private Optional<Length> asWideAsTheBoards(PartRow row, Length board) {
    Length left = board.minus(rough.allowance().width());
    if (!left.isPositive()) {
      cells.wrong(
          "width",
          row.line().cell("width"),
          "rough-width leaves nothing of the width of the boards",
          "correct rough-width in the stock, or write the width");
      return Optional.empty();
    }
    return Optional.of(left);
  }

  private boolean ofBoards() {
    return stock.getFirst().kind() == Wanted.Kind.BOARDS;
  }

  /** Finished: what is stated, else what planing leaves. */
  private Optional<Length> thickness(PartRow row) {
    Optional<Length> left = rough.left();
    row.thickness()
        .filter(wanted -> left.filter(l -> l.isAtLeast(wanted)).isEmpty())
        .ifPresent(_ -> tooThick(row));
    return row.thickness().or(() -> left);
  }

  private void tooThick(PartRow row) {
    cells.wrong(
        "thickness",
        row.line().cell("thickness"),
        "the stock is not known to be so thick once it is planed",
        "state the thickness of the boards in the stock, thick enough for rough-thickness too,"
            + " or leave it empty");
  }

  private Optional<Blank> glued(PartRow row, Blank whole) {
    if (!ofBoards() || row.match().isPresent() || row.grain() == Grain.FREE) {
      cells.wrong(
          "glue-up",
          row.line().cell("glue-up"),
          "only parts from boards are glued from strips, with the grain along their length, and none"
              + " of a matched strip",
          "leave it empty; or write length under grain, and nothing under match");
      return Optional.empty();
    }
    return row.strips().flatMap(widths -> glued(row, whole, widths));
  }

  private Optional<Blank> glued(PartRow row, Blank whole, Blank.Widths widths) {
    Length widest = stock.stream().map(StockRow::width).reduce(Length.ZERO, Length::max);
    Blank.Widths within = new Blank.Widths(widths.least(), Length.min(widths.greatest(), widest));
    Optional<Blank> blank = Blank.glued(whole, within, step);
    if (blank.isEmpty()) {
      cells.wrong(
          "glue-up",
          row.line().cell("glue-up"),
          "no number of strips of one width comes to the width of the part",
          "allow narrower or wider strips");
    }
    return blank;
  }
}
