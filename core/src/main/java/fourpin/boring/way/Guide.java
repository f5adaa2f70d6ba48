package fourpin.boring.way;

import fourpin.job.Tool;
import fourpin.measure.Length;
import java.util.List;
import java.util.Optional;

/**
 * A strip with holes that bits are led through. Its zero is the stop face of the index block, which
 * bears against the end of the panel (or stands on the panel below, after assembly); its index edge
 * is the one that lies at the panel's front edge.
 *
 * @param mark what is written on it
 * @param make how it comes to be
 * @param material in words
 * @param length from the block's stop face to the far end
 * @param holes numbered from the block, from 1; those that are not used are masked
 * @param block thickness of the index block: two battens that stand proud of both faces, so that
 *     the guide is turned over with the block on, and only at the index end, so that it can't be
 *     turned end for end. It comes off before a guide is moved along, and is screwed on again when
 *     the row is done. Zero where the case stands: there the guide's own end, cut square, is its
 *     zero
 */
public record Guide(
    String mark,
    Make make,
    String material,
    Length length,
    Length width,
    Length thickness,
    List<GuideHole> holes,
    Length block) {

  /** How a guide comes to be. */
  public sealed interface Make {

    /** Cut and bored in the shop. @param stock name of the guide stock it comes from */
    record Bored(String stock) implements Make {}

    /**
     * A strip that is sold with holes, fitted with a block.
     *
     * @param strip name of the strip
     * @param kind what it is made of
     * @param first which of the strip's holes is hole 1 of the guide, counted from its end
     * @param off what is sawn off that end; zero if it stays
     * @param behind how far the hole before hole 1, whose centre is not beyond zero, reaches beyond
     *     it; zero if it does not, or if there is none
     */
    record Sold(String strip, Tool.StripKind kind, int first, Length off, Length behind)
        implements Make {}
  }

  /** Whether a hole is bored through. */
  public enum Use {
    BORED,
    MASKED
  }

  /**
   * One hole.
   *
   * @param along from the block's stop face, {@code across} from the index edge
   */
  public record GuideHole(int number, Length along, Length across, Length diameter, Use use) {}

  public Guide {
    holes = List.copyOf(holes);
  }

  /**
   * @throws IllegalArgumentException if there is no such hole
   */
  public GuideHole hole(int number) {
    return find(number)
        .orElseThrow(() -> new IllegalArgumentException(mark + " has no hole " + number));
  }

  /** From a hole's centre to the edge that is not the index edge. */
  public Length behind(GuideHole hole) {
    return width.minus(hole.across());
  }

  /** Along the guide from one hole's centre to another's. */
  public static Length step(GuideHole from, GuideHole to) {
    return to.along().minus(from.along());
  }

  private Optional<GuideHole> find(int number) {
    return holes.stream().filter(h -> h.number() == number).findFirst();
  }
}
