package fourpin.cutting;

import fourpin.cutting.DefectCutter.Price;
import fourpin.cutting.DefectCutter.Way;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Which way to cut defects out: all ways quickly, then those that came out best for longer, and the
 * stock without the boards that have defects, so that these never make a layout dearer. Pieces too
 * small to be held are left over, unless parts find no place without them.
 */
final class DefectSearch {

  /** Ways that are looked at for longer. */
  private static final int LONGER = 2;

  private final SheetProblem problem;
  private final Merit.Aims aims;
  private final Searches searches;
  private final Candidates found;

  /** A way and what came of it quickly. */
  private record Tried(Way way, Layout layout) {}

  DefectSearch(SheetProblem problem, Merit.Aims aims, Watch watch, Searches searches) {
    this.problem = problem;
    this.aims = aims;
    this.searches = searches;
    this.found = new Candidates(problem, aims, watch);
  }

  Layout best() {
    withoutDefects();
    search(aims.least());
    if (!found.best().unplaced().isEmpty()) {
      search(Length.ZERO);
    }
    return found.best();
  }

  /** From clear stock alone, where all parts come from it. */
  private void withoutDefects() {
    List<StockSheet> clear = problem.stock().stream().filter(s -> s.defects().isEmpty()).toList();
    if (!clear.isEmpty()) {
      SheetProblem less = new SheetProblem(problem.parts(), clear, problem.saw(), problem.ties());
      Layout layout = searches.byWork().cut(less);
      if (layout.unplaced().isEmpty()) {
        LowerBound bound = Bounds.ofPlaced(problem, List.of());
        found.add(new Layout(layout.patterns(), List.of(), bound));
      }
    }
  }

  private void search(Length least) {
    List<Tried> tried = new ArrayList<>();
    for (Way way : ways(least)) {
      tried.add(new Tried(way, found.add(cut(way, searches.quick()))));
    }
    List<Tried> best = new ArrayList<>();
    while (best.size() < LONGER) {
      best.add(best(tried));
      tried.removeAll(best);
    }
    List<Tried> longer = new ArrayList<>();
    for (Tried each : best) {
      if (longer.isEmpty() || found.goesOn()) {
        longer.add(new Tried(each.way, found.add(cut(each.way, searches.byWork()))));
      }
    }
    if (searches.goesOnByWatch() && found.goesOn()) {
      found.add(cut(best(longer).way, searches.byWatch()));
    }
  }

  private static List<Way> ways(Length least) {
    return Stream.of(Price.values())
        .flatMap(price -> Stream.of(Direction.values()).map(first -> new Way(first, least, price)))
        .toList();
  }

  private Layout cut(Way way, SheetCutter clear) {
    return DefectCutter.cut(problem, way, clear);
  }

  private Tried best(List<Tried> tried) {
    Layout best = Merit.best(problem, tried.stream().map(Tried::layout).toList(), aims);
    return tried.stream().filter(t -> t.layout.equals(best)).findFirst().orElseThrow();
  }
}
