package fourpin.casework;

import fourpin.job.Edging;
import fourpin.job.Setting;
import fourpin.measure.Figure;
import fourpin.measure.LazyList;
import fourpin.measure.Length;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A failed or doubtful check.
 *
 * @param kind a short name for the kind of finding, the same for all of a kind: "rows-meet"
 * @param what what is wrong, for a maker, with the figures in words
 * @param figures the same as figures with their working; may be empty
 * @param remedies what would cure it; empty only if there is nothing to do. Some are worked out
 *     when they are first looked into
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
    remedies = LazyList.copyOf(remedies);
  }

  /** Whether it keeps the plan from the bench. */
  public boolean isGrave() {
    return severity == Severity.REFUSED || severity == Severity.ERROR;
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

  /** A change to what the job states of the case that the finding is about. */
  public sealed interface Stated {

    /** All at once. */
    sealed interface One extends Stated {
      @Override
      default List<One> each() {
        return List.of(this);
      }
    }

    /** One after the other. */
    List<One> each();

    /** And another after it. */
    default Stated then(Stated next) {
      return new Together(Stream.concat(each().stream(), next.each().stream()).toList());
    }

    /**
     * A setting of the case.
     *
     * @param value as in a job file
     */
    record OfSetting(Setting setting, String value) implements One {}

    /** Several settings of the case at once. */
    record OfSettings(List<OfSetting> all) implements One {
      public OfSettings {
        all = List.copyOf(all);
      }
    }

    /**
     * Partitions in the bay of the part that the finding is about, spread evenly.
     *
     * @param count at least 1
     */
    record Partitions(int count) implements One {}

    /**
     * Partitions in a bay of the case, spread evenly.
     *
     * @param bay its number
     * @param count at least 1
     */
    record PartitionsIn(int bay, int count) implements One {}

    /**
     * What the adjustable shelves are made of, where the shelf that the finding is about is stated.
     *
     * @param material nothing where it stays
     * @param strip nothing where the edging stays
     */
    record ShelvesOf(Optional<String> material, Optional<Edging> strip) implements One {}

    /**
     * Two layers of a material of the job, glued together, for the adjustable shelves, where the
     * shelf that the finding is about is stated.
     *
     * @param of its name
     */
    record ShelvesDoubled(String of) implements One {}

    /** One after the other, each in the case as those before have left it. */
    record Together(List<One> each) implements Stated {
      public Together {
        each = List.copyOf(each);
      }
    }

    /** How far rows stand back, or holes up, in every second bay; in the others not at all. */
    record EverySecondBay(Moved moved, Length by) implements One {}
  }

  /** What is moved in a bay, so that it does not meet what stands in the next. */
  public enum Moved {
    ROWS_BACK,
    LEVELS_UP
  }
}
