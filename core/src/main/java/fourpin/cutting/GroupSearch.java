package fourpin.cutting;

import java.util.List;
import java.util.stream.IntStream;

/**
 * A layout in which every group shares a sheet. Where a layout without groups happens to keep them
 * together, nothing cheaper can be had, but that is as good as the search for it; else each group
 * is laid out first, see {@link Sharing}, alone and with others on its sheet, see {@link Merging},
 * in several ways while there is time. What no layout without groups can go below holds with them
 * too.
 */
final class GroupSearch {

  /** Ways to lay the groups out that are tried while there is time. */
  private static final int MOST_WAYS = 12;

  /** Other sheets for single groups that are tried where parts find none left. */
  private static final int MOST_ELSEWHERE = 24;

  private final SheetProblem problem;
  private final SheetProblem untied;
  private final Watch watch;
  private final Searches searches;
  private final Candidates found;

  /** The best up to now of those in which the groups were laid out first. */
  private Shared best;

  /** One way to lay the groups out. */
  private record Attempted(Parting parting, int way) {}

  private record Shared(Attempted how, Layout layout) {}

  private record Elsewhere(Together group, String sheet) {}

  GroupSearch(SheetProblem problem, Merit.Aims aims, Watch watch, Searches searches) {
    this.problem = problem;
    this.untied =
        new SheetProblem(
            problem.parts(), problem.stock(), problem.saw(), problem.ties().ofMatched());
    this.watch = watch;
    this.searches = searches;
    this.found = new Candidates(problem, aims, watch);
    Attempted first = new Attempted(Parting.NONE, 0);
    this.best = new Shared(first, cut(first, Searches.all(searches.quick())));
  }

  Layout best() {
    quickly();
    if (found.goesOn()) {
      Layout free = searches.byWork().cut(untied);
      found(free);
      return found.best().raised(free);
    }
    return found.best();
  }

  private void quickly() {
    found.add(best.layout);
    if (DefectCutter.isFor(problem)) {
      SheetCutter pieces =
          p -> Sharing.cut(p, Searches.all(searches.quick()), Sharing.How.CHEAPEST);
      found.add(DefectCutter.cut(problem, pieces));
    }
    merge(searches.quick(), Searches.all(searches.quick()));
    elsewhere(Searches.all(searches.quick()));
  }

  /** Where a group may have taken the only sheet for other parts, it is tried on each stock. */
  private void elsewhere(Searches how) {
    for (Elsewhere next : elsewhere(problem.stock())) {
      if (isShort() && !watch.enough()) {
        take(new Attempted(best.how.parting.with(next.group, next.sheet), 0), how);
      }
    }
  }

  /** A group that some sheet holds is not looked for on boards with defects, cheap as they are. */
  private void onKnotty(Searches how) {
    List<StockSheet> knotty =
        problem.stock().stream().filter(board -> !board.defects().isEmpty()).toList();
    for (Elsewhere next : elsewhere(knotty)) {
      if (found.best().unplaced().isEmpty()) {
        attempt(new Attempted(best.how.parting.with(next.group, next.sheet), 0), how);
      }
    }
  }

  private List<Elsewhere> elsewhere(List<StockSheet> stock) {
    return stock.stream()
        .flatMap(s -> problem.ties().together().stream().map(g -> new Elsewhere(g, s.name())))
        .limit(MOST_ELSEWHERE)
        .toList();
  }

  private boolean isShort() {
    return found.best().unplaced().stream()
        .anyMatch(part -> part.reason() == Unplaced.Reason.NO_SHEETS_LEFT);
  }

  /** Groups on one sheet; of few, also with one such sheet less, for the sake of other parts. */
  private void merge(SheetCutter fits, Searches how) {
    boolean wanted = found.goesOn() || !found.best().unplaced().isEmpty();
    if (wanted && problem.ties().together().size() > 1) {
      Parting parting = new Merging(problem, fits, watch).parting();
      List<Parting> partings = Merging.isOfFew(problem) ? parting.loosened() : List.of();
      take(new Attempted(parting, 0), how);
      partings.forEach(next -> attempt(new Attempted(next, 0), how));
    }
  }

  private void attempt(Attempted next, Searches how) {
    if (found.goesOn()) {
      take(next, how);
    }
  }

  /** Where a sheet of several groups is not found again, they choose their own. */
  private void take(Attempted next, Searches how) {
    Layout layout = cut(next, how);
    if (next.parting.suits(layout)) {
      found.add(layout);
      best = Ascent.isBetter(layout, best.layout) ? new Shared(next, layout) : best;
    } else {
      take(new Attempted(next.parting.placed(layout), next.way), how);
    }
  }

  private Layout cut(Attempted next, Searches how) {
    return Sharing.cut(
        next.parting.of(problem),
        how,
        new Sharing.How(next.way, next.parting.sheets(), watch::enough));
  }

  private void found(Layout free) {
    if (Sharing.keeps(problem, free)) {
      found.add(free);
      longer(free);
    } else {
      shared();
    }
  }

  private void longer(Layout free) {
    if (searches.goesOnByWatch() && !free.isProven() && !watch.enough()) {
      Layout longer = searches.byWatch().cut(untied);
      if (Sharing.keeps(problem, longer)) {
        found.add(longer);
      }
    }
  }

  /** By work, with groups on sheets of their own too; then in other ways, the best for longer. */
  private void shared() {
    Searches plain = searches.plainly();
    attempt(new Attempted(best.how.parting, 0), plain);
    onKnotty(plain);
    if (!best.how.parting.isNone()) {
      attempt(new Attempted(Parting.NONE, 0), plain);
    }
    if (searches.goesOnByWatch()) {
      merge(searches.plain(), plain);
      Parting parting = best.how.parting;
      IntStream.range(1, MOST_WAYS).forEach(way -> attempt(new Attempted(parting, way), plain));
      attempt(best.how, searches);
    }
  }
}
