package fourpin.cutting;

import fourpin.cutting.ClearPieces.Clear;
import fourpin.cutting.ClearPieces.Cuts;
import fourpin.cutting.ClearPieces.Gaps;
import fourpin.measure.Length;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Cuts parts from stock with defects: the defects are cut out of each board first, see {@link
 * ClearPieces}, and another cutter lays the parts out on the clear pieces. Stock without defects
 * goes along. The bound is that of the clear area.
 */
final class DefectCutter {

  private final SheetProblem problem;
  private final Way way;
  private final Map<String, List<String>> pieces = new LinkedHashMap<>();

  /** What a clear piece of a board costs. */
  enum Price {
    /** By its area: right where all pieces of the board are used in the end. */
    SHARE,
    /** As much as the board: right where it is the only one used. */
    BOARD
  }

  /**
   * How defects are cut out.
   *
   * @param cuts of boards that are not named
   * @param boards those of single boards, by name
   * @param least length of a piece that is cut further: shorter ones between or beside defects
   *     can't be held, and are left over
   */
  record Way(Cuts cuts, Map<String, Cuts> boards, Length least, Price price) {

    Way {
      boards = Map.copyOf(boards);
    }

    /** All boards alike, clear pieces coming off between defects. */
    Way(Direction first, Length least, Price price) {
      this(new Cuts(first, Gaps.CLEAR), Map.of(), least, price);
    }

    Cuts of(StockSheet board) {
      return boards.getOrDefault(board.name(), cuts);
    }

    /** The same with other cuts of one board. */
    Way with(StockSheet board, Cuts its) {
      Map<String, Cuts> more = new HashMap<>(boards);
      more.put(board.name(), its);
      return new Way(cuts, more, least, price);
    }
  }

  private DefectCutter(SheetProblem problem, Way way) {
    this.problem = problem;
    this.way = way;
  }

  /** Whether any stock of a problem has defects. */
  static boolean isFor(SheetProblem problem) {
    return problem.stock().stream().anyMatch(sheet -> !sheet.defects().isEmpty());
  }

  /**
   * A layout of the whole boards, which leaves nothing out that a board not taken would hold.
   *
   * @param clear for stock without defects
   */
  static Layout cut(SheetProblem problem, Way way, SheetCutter clear) {
    return LastPlaces.filled(problem, way, clear, once(problem, way, clear));
  }

  /** What comes of one way alone. */
  static Layout once(SheetProblem problem, Way way, SheetCutter clear) {
    return new DefectCutter(problem, way).layout(clear);
  }

  /** The same where pieces of any length may be cut further, and cost what they share. */
  static Layout cut(SheetProblem problem, SheetCutter clear) {
    return cut(problem, new Way(Direction.CROSSCUT, Length.ZERO, Price.SHARE), clear);
  }

  private Layout layout(SheetCutter clear) {
    Saw saw = new Saw(problem.saw().kerf(), Trim.NONE, problem.saw().limits());
    Layout laid = clear.cut(new SheetProblem(problem.parts(), clearStock(), saw, problem.ties()));
    Map<String, Deque<Node>> roots = new HashMap<>();
    List<SheetPattern> patterns = new ArrayList<>();
    for (SheetPattern pattern : laid.patterns()) {
      StockSheet whole = board(pattern.sheet().name());
      if (whole.defects().isEmpty()) {
        patterns.add(new SheetPattern(whole, pattern.quantity(), tree(whole, pattern.root())));
      } else {
        roots.computeIfAbsent(pattern.sheet().name(), _ -> new ArrayDeque<>()).add(pattern.root());
      }
    }
    problem.stock().stream()
        .filter(board -> pieces(board).stream().anyMatch(roots::containsKey))
        .forEach(board -> patterns.add(new SheetPattern(board, 1, tree(board, roots))));
    return new Layout(patterns, laid.unplaced(), Bounds.ofPlaced(problem, laid.unplaced()));
  }

  private List<String> pieces(StockSheet board) {
    return board.defects().isEmpty() ? List.of() : pieces.getOrDefault(board.name(), List.of());
  }

  private StockSheet board(String piece) {
    return problem.stock().stream()
        .filter(board -> pieces.getOrDefault(board.name(), List.of()).contains(piece))
        .findFirst()
        .orElseThrow();
  }

  private ClearPieces clear(StockSheet board) {
    return new ClearPieces(board, problem.saw(), way.of(board), way.least);
  }

  private List<StockSheet> clearStock() {
    List<StockSheet> stock = new ArrayList<>();
    for (StockSheet board : problem.stock()) {
      List<Clear> its = clear(board).pieces();
      double area = its.stream().mapToDouble(c -> (double) c.length() * c.width()).sum();
      List<String> names = new ArrayList<>();
      for (Clear piece : its) {
        String name = board.name() + " | " + names.size();
        double share =
            way.price == Price.BOARD ? 1 : (double) piece.length() * piece.width() / area;
        names.add(name);
        stock.add(
            new StockSheet(
                name,
                new Length(piece.length(), board.length().unit()),
                new Length(piece.width(), board.length().unit()),
                board.grain(),
                board.supply(),
                Math.round(board.price() * share),
                board.origin(),
                List.of(),
                piece.roughEdge()));
      }
      pieces.put(board.name(), names);
    }
    return stock;
  }

  private Node tree(StockSheet board, Node root) {
    return clear(board).tree(piece -> root);
  }

  private Node tree(StockSheet board, Map<String, Deque<Node>> roots) {
    Deque<String> names = new ArrayDeque<>(pieces(board));
    return clear(board)
        .tree(
            piece -> {
              Deque<Node> its = roots.getOrDefault(names.pop(), new ArrayDeque<>());
              return its.isEmpty() ? new Node.Offcut() : its.pop();
            });
  }
}
