package fourpin.boring.way;

import fourpin.job.Way;
import fourpin.measure.Figure;
import fourpin.measure.LazyList;
import java.util.List;
import java.util.Optional;

/**
 * What one way of boring comes to for one group of bays.
 *
 * @param reasons why not, or what is lost by taking it; with what would make it possible
 * @param together whether several panels are worked on together and what that brings, or why not
 *     and what would allow it; empty where it is not possible or there is nothing to bore
 * @param method how, where it is possible
 * @param purchases tools that it takes and the shop does not have, or that no file states
 * @param figures set-ups, clampings, holes, minutes, cost, every size that is set or made, and,
 *     once the tolerance is known, the gap and the odds; where it is not possible those of the
 *     reasons
 */
public record WayAnswer(
    Way way,
    Verdict verdict,
    List<Reason> reasons,
    List<Reason> together,
    Optional<Method> method,
    List<Purchase> purchases,
    List<Figure> figures) {

  /** Whether a way can be taken. */
  public enum Verdict {
    /** With the tools at hand, and with what is taken for granted. */
    POSSIBLE,
    /** With the tools at hand and those that the shop file states with a price, once bought. */
    TO_BUY,
    /** If the case gives way: another pitch, another support. */
    IF_CHANGED,
    NOT_POSSIBLE
  }

  /**
   * Why not, or what is lost.
   *
   * @param remedy what would make it possible; may be empty
   * @param figures of what is said, their ids below those of the way
   */
  public record Reason(String what, String remedy, List<Figure> figures) {
    public Reason {
      figures = List.copyOf(figures);
    }

    /** One that states no figure of its own. */
    public Reason(String what, String remedy) {
      this(what, remedy, List.of());
    }
  }

  public WayAnswer {
    reasons = LazyList.copyOf(reasons);
    together = LazyList.copyOf(together);
    purchases = List.copyOf(purchases);
    figures = LazyList.copyOf(figures);
  }
}
