package fourpin.boring.way;

import fourpin.job.Way;
import fourpin.measure.Figure;
import java.util.List;
import java.util.Optional;

/**
 * What one way of boring comes to for one group of bays.
 *
 * @param reasons why not, or what is lost by taking it; with what would make it possible
 * @param together whether several panels are worked on together and what that brings, or why not
 *     and what would allow it; empty where it is not possible or there is nothing to bore
 * @param method how, where it is possible
 * @param figures set-ups, clampings, holes, minutes, cost, and, once the tolerance is known, the
 *     gap and the odds; empty where it is not possible
 */
public record WayAnswer(
    Way way,
    Verdict verdict,
    List<Reason> reasons,
    List<Reason> together,
    Optional<Method> method,
    List<Figure> figures) {

  /** Whether a way can be taken. */
  public enum Verdict {
    POSSIBLE,
    /** With the tools at hand and those named, once they are bought or made. */
    TO_BUY,
    /** If the case gives way: another pitch, another support. */
    IF_CHANGED,
    NOT_POSSIBLE
  }

  /** Why not, or what is lost. @param remedy what would make it possible; may be empty */
  public record Reason(String what, String remedy) {}

  public WayAnswer {
    reasons = List.copyOf(reasons);
    together = List.copyOf(together);
    figures = List.copyOf(figures);
  }
}
