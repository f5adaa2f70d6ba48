package fourpin.boring;

import fourpin.job.Support;
import fourpin.measure.Length;
import java.util.List;
import java.util.Locale;

/**
 * The one pattern of a bay: every place that a shelf can lie at, stated once in case coordinates.
 * What is bored or grooved in the panels round the bay is a view of it.
 *
 * @param rows from front to back
 * @param levels from the bottom up; every row has a hole (slot, notch) at each
 * @param pitch from level to level
 * @param diameter of the holes; for standards the width of the groove, for cleats the bore
 * @param depth of the holes to the full diameter; for standards let in the depth of the groove,
 *     else zero
 * @param runs stretches of height that standards or cleat strips cover, one for each opening from
 *     the bottom up; none for pins
 * @param seats where each adjustable shelf lies first; a shelf that found no level has none
 */
public record BayGrid(
    String caseName,
    int bay,
    Support support,
    List<Row> rows,
    List<Level> levels,
    Length pitch,
    Length diameter,
    Length depth,
    List<Run> runs,
    List<Seat> seats) {

  public BayGrid {
    rows = List.copyOf(rows);
    levels = List.copyOf(levels);
    runs = List.copyOf(runs);
    seats = List.copyOf(seats);
  }

  /** What the holes or grooves of a row are called on the parts round the bay. */
  public String purpose(Row row) {
    return row.name().name().toLowerCase(Locale.ROOT) + " row, bay " + bay;
  }

  /**
   * What the groove of a row is for, in the words of the features: "standard, front row, bay 2".
   */
  public String groove(Row row) {
    return Fitting.STANDARD + purpose(row);
  }

  /** What the notches of its cleat strips are called. */
  public String notch() {
    return "notch for cleats, bay " + bay;
  }

  /** Of a hole, a standard in its groove or a cleat strip, from front to back. */
  private Length breadth() {
    return support instanceof Support.Cleats cleats ? cleats.width() : diameter;
  }

  /**
   * A vertical row of holes, the same on both uprights of the bay.
   *
   * @param y of the hole centres in case coordinates
   */
  public record Row(Name name, Length y) {

    /** Where what stands or is cut in the row begins, from front to back. */
    Length front(BayGrid grid) {
      return y.minus(grid.breadth().over(2));
    }

    Length back(BayGrid grid) {
      return front(grid).plus(grid.breadth());
    }

    /** Rows by their place. */
    public enum Name {
      FRONT,
      MIDDLE,
      BACK
    }
  }

  /**
   * One height at which there are holes.
   *
   * @param number from the bottom of the bay, from 1; the same number on every panel of the bay
   * @param height of the hole centres (resting edge of a slot, centre of a notch) above the foot of
   *     the case
   * @param underside height of the underside of a shelf that lies there
   */
  public record Level(int number, Length height, Length underside) {}

  /** A stretch of height, above the foot of the case. */
  public record Run(Length bottom, Length top) {

    public Length length() {
      return top.minus(bottom);
    }
  }

  /** A shelf on its level. */
  public record Seat(String shelf, int level) {}
}
