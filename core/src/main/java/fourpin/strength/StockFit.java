package fourpin.strength;

import fourpin.casework.CutSizes;
import fourpin.casework.Part.CutWhen;
import fourpin.casework.Saws;
import fourpin.cutting.Fit;
import fourpin.cutting.Grain;
import fourpin.cutting.Origin;
import fourpin.cutting.Part;
import fourpin.cutting.Saw;
import fourpin.cutting.SheetGrain;
import fourpin.cutting.SheetProblem;
import fourpin.cutting.StockSheet;
import fourpin.cutting.Supply;
import fourpin.job.BoardStock;
import fourpin.job.Job;
import fourpin.job.Material;
import fourpin.job.Material.Kind;
import fourpin.job.Setting;
import fourpin.job.Settings;
import fourpin.job.SheetStock;
import fourpin.measure.Length;
import fourpin.measure.Sum;
import java.util.ArrayList;
import java.util.List;

/**
 * Whether what a cure takes can be cut from a whole sheet or board of the job's stock, with the
 * job's saw. How many there are is left to the layouts.
 */
final class StockFit {

  private static final String PIECE = "piece";

  /** Boards are glued up of strips at least as wide. */
  private static final Length NARROW = Length.mm(20);

  private final Job job;
  private final CutSizes sizes;
  private final CutWhen when;

  /**
   * @param settings of the case
   * @param when what is asked for is cut
   */
  StockFit(Job job, Settings settings, CutWhen when) {
    this.job = job;
    this.sizes = new CutSizes(job, settings);
    this.when = when;
  }

  /** What the stock has for something, the best first. */
  enum Given {
    CUT,
    /** Of boards that are long enough, but narrower. */
    GLUED_UP,
    /** The job states no stock of the material. */
    UNSTATED,
    TOO_SMALL;

    /** Both are wanted. */
    Given and(Given other) {
      return compareTo(other) > 0 ? this : other;
    }
  }

  /** A shelf. */
  Given shelf(Material of, Length length, Length width) {
    Sum along = cut(of, length);
    return of.isCutInLayers()
        ? of.layers().stream()
            .map(layer -> layer(layer, along, Sum.of(PIECE, width)))
            .reduce(Given.CUT, Given::and)
        : shelf(of, along, width);
  }

  private Given shelf(Material of, Sum along, Length width) {
    Given whole = piece(of, along.total(), width);
    boolean narrower =
        whole == Given.TOO_SMALL
            && of.kind() == Kind.BOARD
            && piece(of, along.total(), NARROW) == Given.CUT;
    return narrower ? Given.GLUED_UP : whole;
  }

  /** One of the layers that a shelf is glued up of. */
  Given layer(Material of, Length length, Length width) {
    return layer(of, cut(of, length), Sum.of(PIECE, width));
  }

  /** A back, over size each way. */
  Given back(Material of, Length length, Length width) {
    return piece(of, cut(of, length).total(), cut(of, width).total());
  }

  private Sum cut(Material of, Length size) {
    return sizes.cut(Sum.of(PIECE, size), of, when);
  }

  private Given layer(Material.Layer layer, Sum length, Sum width) {
    Material from = job.material(layer.cutFrom().orElseThrow()).lengthwise();
    Sum along = layer.turn() == Material.Turn.ALONG ? length : width;
    Sum across = layer.turn() == Material.Turn.ALONG ? width : length;
    return layer.share() < 1
        ? piece(from, sizes.layer(along).total(), layer.thickness())
        : layer(from, along, across);
  }

  private Given layer(Material of, Sum length, Sum width) {
    return piece(of, sizes.layer(length).total(), sizes.layer(width).total());
  }

  /** A strip on an edge of a shelf, ripped from a board at least as thick as one of its sides. */
  Given strip(Material board, Length thickness, Length height, Length length) {
    boolean onEdge = board.thickness().isAtLeast(height);
    Sum rip = Sum.of(PIECE, onEdge ? thickness : height);
    return piece(board, cut(board, length).total(), sizes.ripped(rip, board).total());
  }

  private Given piece(Material of, Length length, Length width) {
    List<StockSheet> stock = stock(of);
    if (of.kind() == Kind.GLASS) {
      return Given.CUT;
    }
    if (stock.isEmpty()) {
      return Given.UNSTATED;
    }
    Grain grain = of.grain() == Material.Grain.LENGTHWISE ? Grain.FIXED : Grain.FREE;
    Part part = new Part(PIECE, length, width, 1, grain);
    return Fit.of(new SheetProblem(List.of(part), stock, saw(of)), PIECE).stream()
            .anyMatch(fit -> fit.verdict() == Fit.Verdict.CAN_BE_CUT)
        ? Given.CUT
        : Given.TOO_SMALL;
  }

  private Saw saw(Material of) {
    Saws saws = new Saws(job.settings());
    return of.kind() == Kind.BOARD ? saws.boards() : saws.sheets();
  }

  private List<StockSheet> stock(Material of) {
    List<StockSheet> all = new ArrayList<>();
    job.sheets().stream()
        .filter(s -> s.material().equals(of.name()))
        .forEach(s -> all.add(sheet(s, all.size())));
    job.boards().stream()
        .filter(b -> b.material().equals(of.name()))
        .forEach(b -> all.add(board(b, all.size())));
    return all;
  }

  private static StockSheet sheet(SheetStock of, int before) {
    return whole(before, of.length(), of.width(), Length.ZERO);
  }

  private StockSheet board(BoardStock of, int before) {
    Length rough = job.settings().length(Setting.BOARD_EDGE_TRIM);
    return whole(before, of.length(), of.width(), rough);
  }

  private static StockSheet whole(int before, Length length, Length width, Length rough) {
    return new StockSheet(
        PIECE + before,
        length,
        width,
        SheetGrain.ALONG_LENGTH,
        Supply.unlimited(),
        0,
        Origin.TO_BUY,
        List.of(),
        rough);
  }
}
