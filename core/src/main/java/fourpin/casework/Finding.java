package fourpin.casework;

import fourpin.job.Setting;
import fourpin.measure.Figure;
import java.util.List;
import java.util.Optional;

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

  /**
   * A cure and what it costs.
   *
   * @param cost in money, work, room or looks, in words
   * @param stated how to write it into the job, where it is but one change
   */
  public record Remedy(String what, String cost, Optional<Stated> stated) {

    /** One that takes a maker's hand. */
    public Remedy(String what, String cost) {
      this(what, cost, Optional.empty());
    }
  }

  /** One change to what the job states of the case that the finding is about. */
  public sealed interface Stated {

    /**
     * @param value as in a job file
     */
    record OfSetting(Setting setting, String value) implements Stated {}

    /** A partition in the middle of the bay of the part that the finding is about. */
    record Partition() implements Stated {}
  }
}
