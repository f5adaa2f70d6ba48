package fourpin.boring.way;

import fourpin.bench.Step.ClampGuide.Side;
import fourpin.boring.BayGrid.Row;
import fourpin.casework.Face;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A guide clamped to one face of one panel for one row of a bay, in the words of the case.
 *
 * @param bay number of the bay that the row serves
 * @param part mark of the panel, {@code face} the one that is bored
 * @param edge {@link Face#FRONT} or {@link Face#BACK}: the panel's edge that the guide's edge lies
 *     at, front edge to front edge, back edge to back edge
 * @param across from the panel's edge inwards to the guide's edge: thickness of a spacer; zero for
 *     flush, negative where the guide stands over
 * @param along from the panel's lower end up to the guide's zero. On the end it is zero or
 *     negative: a spacer that thick lies between block and end. On the panel below it is what comes
 *     between the panel's lower end and the guide's square end: the panel below and {@code spacer}
 * @param bearing what the block bears on
 * @param reaches from the first place of the guide to the last; at least one
 */
public record Clamping(
    int bay,
    String part,
    Face face,
    Row.Name row,
    Face edge,
    Length across,
    Length along,
    Bearing bearing,
    List<Reach> reaches) {

  public Clamping {
    reaches = List.copyOf(reaches);
  }

  /**
   * The side of the guide that shows. Upright with its zero down and its index edge to the front,
   * it shows A to the left, which is the way that a right side's inside looks; on a left side it is
   * turned over.
   */
  public Side showing() {
    return face == Face.LEFT ? Side.A : Side.B;
  }

  /** Whether the guide is moved along the row. */
  public boolean isMovedAlong() {
    return reaches.size() > 1;
  }

  /** How far the guide stands over the panel's edge; empty where it does not. */
  public Optional<Length> over() {
    return Optional.of(across.negated()).filter(Length::isPositive);
  }

  /** From the panel's lower end up to the guide's zero, in each of its places. */
  public List<Length> zeros(Guide guide) {
    List<Length> zeros = new ArrayList<>();
    Length zero = along;
    for (Reach reach : reaches) {
      zero = reach.step().map(step -> step.moved(guide)).map(zero::plus).orElse(zero);
      zeros.add(zero);
    }
    return zeros;
  }

  /**
   * From the panel's lower end up to a hole of the guide in one of its places.
   *
   * @param place from 0
   * @param hole number
   */
  public Length up(Guide guide, int place, int hole) {
    return zeros(guide).get(place).plus(guide.hole(hole).along());
  }

  /** From the panel's lower end up to each hole that is bored, in the order of work. */
  public List<Length> bored(Guide guide) {
    List<Length> bored = new ArrayList<>();
    for (int i = 0; i < reaches.size(); i++) {
      int place = i;
      reaches.get(i).holes().forEach(h -> bored.add(up(guide, place, h)));
    }
    return bored;
  }

  /** What the index block bears on. */
  public sealed interface Bearing {

    /**
     * The panel's lower end, with a spacer as thick as {@code along} is negative between if that is
     * not zero.
     */
    record End() implements Bearing {}

    /**
     * The panel below, when the case stands.
     *
     * @param mark of that panel
     * @param spacer thickness of what lies between it and the guide's end; zero for nothing
     */
    record PanelBelow(String mark, Length spacer) implements Bearing {}
  }

  /**
   * What is bored from one place of the guide.
   *
   * @param step how the guide came to this place; none at the first
   * @param holes numbers of the guide's holes
   */
  public record Reach(Optional<Step> step, List<Integer> holes) {
    public Reach {
      holes = List.copyOf(holes);
    }
  }

  /**
   * The guide is moved along: a pin through its hole {@code pin} goes into the hole that was bored
   * through its hole {@code into} in the place before.
   */
  public record Step(int pin, int into) {

    /** How far along. */
    Length moved(Guide guide) {
      return guide.hole(into).along().minus(guide.hole(pin).along());
    }
  }
}
