package fourpin.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;

/** The cheapest panels that take all parts between them, a portion each. */
final class Cover {
  private static final long NEVER = Long.MAX_VALUE;

  private final Portions portions;
  private final Work work;
  private final List<Layer> layers = new ArrayList<>();
  private long[] least;

  /** A portion that is cut from one panel. */
  record Sheet(int panel, int portion) {}

  /**
   * What one panel more, or panels more in unlimited supply, save.
   *
   * @param taken for each portion what is cut from such a panel; 0 where that saves nothing
   */
  private record Layer(int panel, boolean repeated, int[] taken) {}

  Cover(Portions portions, Work work) {
    this.portions = portions;
    this.work = work;
    least = new long[portions.all() + 1];
    Arrays.fill(least, 1, least.length, NEVER);
  }

  /**
   * Panels of one kind more to choose from.
   *
   * @param fit the portions that can be cut from one
   */
  void add(int panel, long cost, int supply, IntPredicate fit) {
    boolean[] fits = new boolean[portions.all() + 1];
    for (int portion = 1; portion < fits.length; portion++) {
      fits[portion] = fit.test(portion);
    }
    boolean unlimited = supply >= portions.parts();
    for (int i = 0; i < (unlimited ? 1 : supply); i++) {
      layers.add(layer(panel, cost, unlimited, fits));
    }
  }

  private Layer layer(int panel, long cost, boolean repeated, boolean[] fits) {
    int[] taken = new int[least.length];
    long[] next = least.clone();
    long[] rests = repeated ? next : least;
    for (int portion = 1; portion < next.length && !work.spent(); portion++) {
      int[] parts = portions.of(portion);
      work.spend(parts.length);
      for (int part : parts) {
        long rest = rests[portion - part];
        if (fits[part] && rest != NEVER && rest + cost < next[portion]) {
          next[portion] = rest + cost;
          taken[portion] = part;
        }
      }
    }
    least = next;
    return new Layer(panel, repeated, taken);
  }

  /** For a portion, all parts or some, if it costs less than that. */
  Optional<List<Sheet>> cheapest(int portion, long than) {
    return least[portion] < than ? Optional.of(sheets(portion)) : Optional.empty();
  }

  private List<Sheet> sheets(int portion) {
    List<Sheet> sheets = new ArrayList<>();
    int left = portion;
    for (Layer layer : layers.reversed()) {
      int taken = layer.taken[left];
      while (taken > 0) {
        sheets.add(new Sheet(layer.panel, taken));
        left -= taken;
        taken = layer.repeated ? layer.taken[left] : 0;
      }
    }
    return sheets;
  }
}
