package fourpin.plan;

import fourpin.cutting.Watch;

/** Looks on while stock is laid out, and has the clock by which searches for lots take turns. */
public interface CutWatch {

  /** Hears nothing and never ends a search. */
  CutWatch NOBODY =
      new CutWatch() {
        @Override
        public Watch begin(LayoutFigures lot) {
          return Watch.NOBODY;
        }

        @Override
        public long nanos() {
          return 0;
        }
      };

  /**
   * The search for a lot begins. Others may be under way, of which each waits wherever its watch is
   * asked; no two of them run at a time.
   *
   * @param lot makes the figures of its layouts
   * @return who looks on at this one
   */
  Watch begin(LayoutFigures lot);

  /** How late it is, from any start; always the same where nobody minds how long it takes. */
  long nanos();
}
