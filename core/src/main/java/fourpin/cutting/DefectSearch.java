package fourpin.cutting;

import fourpin.cutting.ClearPieces.Cuts;
import fourpin.cutting.ClearPieces.Gaps;
import fourpin.cutting.DefectCutter.Price;
import fourpin.cutting.DefectCutter.Way;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Which way to cut defects out: all boards alike in all ways quickly, then single boards otherwise,
 * then the ways that came out best for longer, and the stock without the boards that have defects,
 * so that these never make a layout dearer. Pieces too small to be held are left over, unless parts
 * find no place without them.
 */
final class DefectSearch {

  /** Ways that are looked at for longer. */
  private static final int LONGER = 2;

  /** Ways that are looked at quickly. */
  private static final int MOST_QUICK = 26;

  /** Boards that are cut round the place of a part that is left out. */
  private static final int MOST_PLACES = 8;

  private final SheetProblem problem;
  private final Merit.Aims aims;
  private final Searches searches;
  private final Candidates found;

  /** What no layout of all parts goes below. */
  private Optional<LowerBound> fewest = Optional.empty();

  /** A way and what came of it quickly. */
  private record Tried(Way way, Layout layout) {}

  DefectSearch(SheetProblem problem, Merit.Aims aims, Watch watch, Searches searches) {
    this.problem = problem;
    this.aims = aims;
    this.searches = searches;
    this.found = new Candidates(problem, aims, watch);
  }

  Layout best() {
    takenForClear();
    withoutDefects();
    search(aims.least());
    if (!found.best().unplaced().isEmpty()) {
      search(Length.ZERO);
    }
    return found.best();
  }

  /**
   * All stock taken for clear, which no layout can be cheaper than. Where no part comes to lie on a
   * defect, it is a layout itself.
   */
  private void takenForClear() {
    List<StockSheet> clear = problem.stock().stream().map(StockSheet::withoutDefects).toList();
    SheetProblem whole = with(clear);
    Layout layout = searches.plain().cut(whole);
    if (layout.unplaced().isEmpty()) {
      LowerBound byArea = Bounds.ofPlaced(problem, List.of());
      fewest = Optional.of(layout.raised(withoutLimits(whole, layout)).bound().raised(byArea));
      Layout stated = asStated(layout);
      if (VirtualSaw.check(problem, stated).isEmpty()) {
        found.add(bounded(stated));
      }
    }
  }

  /** Whatever limits of the saw allow is allowed without them too, so that its bound holds. */
  private Layout withoutLimits(SheetProblem whole, Layout limited) {
    return limited.isProven() || !CutRules.of(whole.saw()).limit()
        ? limited
        : searches.plain().cut(whole.with(SawLimits.NONE));
  }

  private Layout asStated(Layout layout) {
    Map<String, StockSheet> stock =
        problem.stock().stream().collect(Collectors.toMap(StockSheet::name, sheet -> sheet));
    List<SheetPattern> patterns =
        layout.patterns().stream()
            .map(
                p ->
                    new SheetPattern(
                        Objects.requireNonNull(stock.get(p.sheet().name())),
                        p.quantity(),
                        p.root()))
            .toList();
    return new Layout(patterns, layout.unplaced(), layout.bound());
  }

  /** From clear stock alone, where all parts come from it. */
  private void withoutDefects() {
    List<StockSheet> clear = problem.stock().stream().filter(s -> s.defects().isEmpty()).toList();
    if (!clear.isEmpty() && (found.isEmpty() || found.goesOn())) {
      Layout layout = searches.byWork().cut(with(clear));
      if (layout.unplaced().isEmpty()) {
        LowerBound bound = Bounds.ofPlaced(problem, List.of());
        found.add(bounded(new Layout(layout.patterns(), List.of(), bound)));
      }
    }
  }

  private SheetProblem with(List<StockSheet> stock) {
    return new SheetProblem(problem.parts(), stock, problem.saw(), problem.ties());
  }

  /** With the better bound of all parts. */
  private Layout bounded(Layout layout) {
    return layout.unplaced().isEmpty()
        ? fewest.map(layout.bound()::raised).map(layout::with).orElse(layout)
        : layout;
  }

  private void search(Length least) {
    if (!found.isEmpty() && found.best().isProven()) {
      return;
    }
    List<Tried> tried = quickly(least);
    List<Tried> best = new ArrayList<>();
    while (best.size() < LONGER && !tried.isEmpty()) {
      best.add(best(tried));
      tried.removeAll(best);
    }
    List<Tried> longer = new ArrayList<>();
    for (Tried each : best) {
      if (longer.isEmpty() || found.goesOn()) {
        longer.add(new Tried(each.way, found.add(cut(each.way, searches.plain()))));
      }
    }
    if (searches.goesOnByWatch() && found.goesOn()) {
      found.add(cut(best(longer).way, searches.byWatch()));
    }
  }

  /** All boards alike, then one after the other otherwise, as long as it is not too many. */
  private List<Tried> quickly(Length least) {
    List<Tried> tried = new ArrayList<>();
    for (Way way : ways(least)) {
      attempt(way, tried);
    }
    Tried best = best(tried);
    for (StockSheet board : problem.stock()) {
      for (Cuts cuts : board.defects().isEmpty() ? List.<Cuts>of() : cuts(List.of(board))) {
        if (tried.size() < MOST_QUICK && !cuts.equals(best.way.of(board))) {
          attempt(best.way.with(board, cuts), tried);
        }
      }
      best = best(tried);
    }
    roundPlaces(best, tried);
    return tried;
  }

  /** Where a part is left out, boards that would hold it are cut round its place. */
  private void roundPlaces(Tried best, List<Tried> tried) {
    Map<StockSheet, ClearPlace> places = LastPlaces.places(problem, best.layout.unplaced());
    problem.stock().stream()
        .filter(places::containsKey)
        .limit(MOST_PLACES)
        .forEach(board -> attempt(round(best, board, places), tried));
  }

  private static Way round(Tried best, StockSheet board, Map<StockSheet, ClearPlace> places) {
    return best.way.with(board, Cuts.around(Objects.requireNonNull(places.get(board))));
  }

  private void attempt(Way way, List<Tried> tried) {
    if (tried.isEmpty() || found.goesOn()) {
      tried.add(new Tried(way, found.add(cut(way, searches.quick()))));
    }
  }

  /** Single cuts in the gaps at one price only, since they are many. */
  private List<Way> ways(Length least) {
    return cuts(problem.stock()).stream()
        .flatMap(
            cuts ->
                Stream.of(Price.values())
                    .filter(price -> price == Price.SHARE || cuts.gaps() == Gaps.CLEAR)
                    .map(price -> new Way(cuts, Map.of(), least, price)))
        .toList();
  }

  /** There are gaps only where a board has several defects. */
  private static List<Cuts> cuts(List<StockSheet> boards) {
    boolean gaps = boards.stream().anyMatch(board -> board.defects().size() > 1);
    return Stream.of(gaps ? Gaps.values() : new Gaps[] {Gaps.CLEAR})
        .flatMap(each -> Stream.of(Direction.values()).map(first -> new Cuts(first, each)))
        .toList();
  }

  private Layout cut(Way way, SheetCutter clear) {
    return bounded(DefectCutter.cut(problem, way, clear));
  }

  private Tried best(List<Tried> tried) {
    Layout best = Merit.best(problem, tried.stream().map(Tried::layout).toList(), aims);
    return tried.stream().filter(t -> t.layout.equals(best)).findFirst().orElseThrow();
  }
}
