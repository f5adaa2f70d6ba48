package fourpin.cutting;

import java.util.ArrayList;
import java.util.List;

/** Whole layouts of one problem, found one after the other; who looks on hears of better ones. */
final class Candidates {
  private final SheetProblem problem;
  private final Merit.Aims aims;
  private final Watch watch;
  private final List<Layout> all = new ArrayList<>();

  Candidates(SheetProblem problem, Merit.Aims aims, Watch watch) {
    this.problem = problem;
    this.aims = aims;
    this.watch = watch;
  }

  Layout add(Layout layout) {
    if (all.isEmpty() || Ascent.isBetter(layout, best())) {
      watch.better(layout);
    }
    all.add(layout);
    return layout;
  }

  Layout best() {
    return Merit.best(problem, all, aims);
  }

  boolean isEmpty() {
    return all.isEmpty();
  }

  /** Whether there may be a better one, and time to look for it. */
  boolean goesOn() {
    return !best().isProven() && !watch.enough();
  }
}
