package fourpin.plan;

import fourpin.cutting.Watch;

/** Looks on while stock is laid out, one lot of parts after the other. */
@FunctionalInterface
public interface CutWatch {

  /** Hears nothing and never ends a search. */
  CutWatch NOBODY = (lot, later) -> Watch.NOBODY;

  /**
   * The search for a lot begins.
   *
   * @param lot makes the figures of its layouts
   * @param later how many lots come after it
   * @return who looks on at this one
   */
  Watch begin(LayoutFigures lot, int later);
}
