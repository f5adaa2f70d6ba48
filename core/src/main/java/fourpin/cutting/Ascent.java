package fourpin.cutting;

import java.util.Comparator;

/**
 * Passes on only what is better than all before: fewer parts left out, less price, fewer sheets. It
 * has the best bound known by then, and where that is reached it is enough.
 */
final class Ascent implements Watch {
  private static final Comparator<Layout> ORDER =
      Comparator.comparingLong(Ascent::leftOut)
          .thenComparingLong(Layout::price)
          .thenComparingLong(Layout::sheets);

  private final Watch told;
  private Layout best;

  Ascent(Layout first, Watch told) {
    this.best = first;
    this.told = told;
  }

  private static long leftOut(Layout layout) {
    return layout.unplaced().stream().mapToLong(Unplaced::count).sum();
  }

  static boolean isBetter(Layout layout, Layout than) {
    return ORDER.compare(layout, than) < 0;
  }

  @Override
  public void better(Layout layout) {
    if (isBetter(layout, best)) {
      best = layout.raised(best);
      told.better(best);
    }
  }

  @Override
  public boolean enough() {
    return best.isProven() || told.enough();
  }
}
