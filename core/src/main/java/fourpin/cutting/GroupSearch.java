package fourpin.cutting;

import java.util.List;

/**
 * A layout in which every group shares a sheet. Where a layout without groups happens to keep them
 * together, nothing cheaper can be had, but that is as good as the search for it; else each group
 * is laid out first, see {@link Sharing}, in several ways while there is time. What no layout
 * without groups can go below holds with them too.
 */
final class GroupSearch {

  /** Ways to lay the groups out that are tried while there is time. */
  private static final int MOST_WAYS = 12;

  private final SheetProblem problem;
  private final SheetProblem untied;
  private final Watch watch;
  private final Searches searches;
  private final Candidates found;

  GroupSearch(SheetProblem problem, Merit.Aims aims, Watch watch, Searches searches) {
    this.problem = problem;
    this.untied =
        new SheetProblem(
            problem.parts(), problem.stock(), problem.saw(), problem.ties().ofMatched());
    this.watch = watch;
    this.searches = searches;
    this.found = new Candidates(problem, aims, watch);
  }

  Layout best() {
    quickly();
    if (found.goesOn()) {
      Layout free = searches.byWork().cut(untied);
      found(free);
      return bounded(found.best(), free);
    }
    return found.best();
  }

  private void quickly() {
    if (DefectCutter.isFor(problem)) {
      SheetCutter pieces = p -> Sharing.cut(p, Searches.all(searches.quick()), 0);
      found.add(DefectCutter.cut(problem, pieces));
    }
    found.add(Sharing.cut(problem, Searches.all(searches.quick()), 0));
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

  /** By work once; then in other ways, and the best of them for longer. */
  private void shared() {
    Layout first = found.add(Sharing.cut(problem, searches.withoutWatch(), 0));
    int best = 0;
    for (int way = 1; way < MOST_WAYS && searches.goesOnByWatch() && found.goesOn(); way++) {
      Layout next = found.add(Sharing.cut(problem, searches.withoutWatch(), way));
      if (Ascent.isBetter(next, first)) {
        first = next;
        best = way;
      }
    }
    if (searches.goesOnByWatch() && found.goesOn()) {
      found.add(Sharing.cut(problem, searches, best));
    }
  }

  /** With the better bound of all parts. */
  private static Layout bounded(Layout layout, Layout free) {
    return layout.unplaced().isEmpty() && free.unplaced().isEmpty()
        ? new Layout(layout.patterns(), List.of(), layout.bound().raised(free.bound()))
        : layout;
  }
}
