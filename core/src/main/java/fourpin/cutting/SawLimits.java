package fourpin.cutting;

import fourpin.measure.Length;
import java.util.Optional;

/**
 * What a saw and a shop can't do. They hold for the cuts that part a sheet, not for trimming its
 * edges, which is done before and by other means where the saw does not reach.
 *
 * @param longestRip of a piece as it is ripped, above zero; empty means that every length can be
 * @param widestCrosscut of a piece as it is crosscut, above zero; empty means that every width can
 *     be
 * @param first which way the first cut of a sheet runs
 * @param of which sheets that holds for
 * @param stages how often the cuts may run another way, the first way counted: 2 means that strips
 *     are cut, and parts from the strips, and that nothing is turned at the saw more than once; at
 *     least one; {@link #FREE} means as often as one likes
 */
public record SawLimits(
    Optional<Length> longestRip,
    Optional<Length> widestCrosscut,
    FirstCut first,
    FirstOf of,
    int stages) {

  /** As many stages as one likes. */
  public static final int FREE = Integer.MAX_VALUE;

  /** Strips, and parts from them: fewer hardly cut anything. */
  private static final int FEWEST_STATED = 2;

  /** Of those that are counted; more than this are as good as free. */
  private static final int MOST_STATED = 4;

  public static final SawLimits NONE =
      new SawLimits(Optional.empty(), Optional.empty(), FirstCut.EITHER, FREE);

  /** Which way the first cut of a sheet runs. */
  public enum FirstCut {
    EITHER,
    /** A rip: along the length of the sheet. */
    ALONG,
    /** A crosscut. */
    ACROSS
  }

  /** What has to be cut the one way first. */
  public enum FirstOf {
    /** Nothing is cut the other way alone. */
    EVERY_SHEET,
    /**
     * What is only ripped, or only crosscut, just is, as boards are; nor is it asked of defects.
     */
    CUT_BOTH_WAYS
  }

  /** Those whose first cut holds for every sheet. */
  public SawLimits(
      Optional<Length> longestRip, Optional<Length> widestCrosscut, FirstCut first, int stages) {
    this(longestRip, widestCrosscut, first, FirstOf.EVERY_SHEET, stages);
  }

  public SawLimits {
    longestRip.ifPresent(length -> Require.positive(length, "longest rip"));
    widestCrosscut.ifPresent(width -> Require.positive(width, "widest crosscut"));
    Require.atLeastOne(stages, "number of stages");
  }

  /** The same for a saw that rips pieces however long. */
  public SawLimits withAnyRip() {
    return new SawLimits(Optional.empty(), widestCrosscut, first, of, stages);
  }

  public SawLimits withAnyCrosscut() {
    return new SawLimits(longestRip, Optional.empty(), first, of, stages);
  }

  public SawLimits withStages(int most) {
    return new SawLimits(longestRip, widestCrosscut, first, of, most);
  }

  public SawLimits withFirst(FirstCut way) {
    return new SawLimits(longestRip, widestCrosscut, way, of, stages);
  }

  public SawLimits withFirstOf(FirstOf which) {
    return new SawLimits(longestRip, widestCrosscut, first, which, stages);
  }

  /** Whether what is cut both ways must not be cut that way first. */
  boolean barsFirst(Direction way) {
    return first == (way == Direction.RIP ? FirstCut.ACROSS : FirstCut.ALONG);
  }

  /** Whether nothing may be cut that way alone. */
  boolean barsAlone(Direction way) {
    return barsFirst(way) && of == FirstOf.EVERY_SHEET;
  }

  /**
   * Those that allow the next fewer stages. One step after the other they lead to all stages that
   * makers state and that are fewer.
   */
  Optional<SawLimits> fewerStages() {
    return stages > FEWEST_STATED
        ? Optional.of(withStages(Math.min(stages - 1, MOST_STATED)))
        : Optional.empty();
  }

  /** The longest piece that may be ripped, or the widest that may be crosscut. */
  Optional<Length> longest(Direction direction) {
    return direction == Direction.RIP ? longestRip : widestCrosscut;
  }
}
