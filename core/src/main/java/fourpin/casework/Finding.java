package fourpin.casework;

import fourpin.measure.Figure;
import java.util.List;

/**
 * A failed or doubtful check.
 *
 * @param kind a short name for the kind of finding, the same for all of a kind: "rows-meet"
 * @param what what is wrong, for a maker, with the figures in words
 * @param figures the same as figures with their working; may be empty
 * @param remedies what would cure it; empty only if there is nothing to do
 */
public record Finding(
    Severity severity,
    String kind,
    String what,
    List<Figure> figures,
    Place place,
    List<Remedy> remedies) {

  public Finding {
    figures = List.copyOf(figures);
    remedies = List.copyOf(remedies);
  }

  /** How bad it is, worst first. */
  public enum Severity {
    /** The case can't be built as stated. */
    REFUSED,
    /** Cutting to this plan would spoil wood or leave a shelf that does not do. */
    ERROR,
    /** Look at it before cutting. */
    DOUBT,
    /** Good to know. */
    NOTE
  }

  /** A cure and what it costs. @param cost in money, work, room or looks, in words */
  public record Remedy(String what, String cost) {}
}
