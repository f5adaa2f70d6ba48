package fourpin.cutting;

import java.util.function.BooleanSupplier;

/**
 * Looks on while a cutter searches. Called in the thread of the search only.
 *
 * <p>An implementation that looks at a clock, or at a maker, makes the answer hang on them; {@link
 * #NOBODY} leaves it to the work alone.
 */
public interface Watch {

  /** Hears nothing and never ends a search. */
  Watch NOBODY = until(() -> false);

  /**
   * Hears of an answer that is better than all before it; the first one comes at once. It is whole
   * and passes the {@link VirtualSaw}.
   */
  void better(Layout layout);

  /**
   * Whether the best answer so far is good enough; once true, the search ends with it. Asked many
   * times a second, for large problems less often; the sheets are still laid out anew after it.
   */
  boolean enough();

  /** Hears nothing, and ends a search when told to. */
  static Watch until(BooleanSupplier enough) {
    return new Watch() {
      @Override
      public void better(Layout layout) {}

      @Override
      public boolean enough() {
        return enough.getAsBoolean();
      }
    };
  }
}
