package fourpin.sheets.solid;

import fourpin.casework.Point;
import fourpin.measure.Length;
import java.util.List;

/**
 * Something of a case that stays in one piece.
 *
 * @param name the part's mark, or "bay 1 door 2"
 * @param words what it is
 * @param origin in case coordinates, which its skins are measured from
 */
public record Body(String name, String words, Point origin, Move move, List<Skin> skins) {

  public Body {
    skins = List.copyOf(skins);
  }

  /** How it can move. */
  public sealed interface Move {}

  /** Not at all. */
  public record Still() implements Move {}

  /**
   * About the vertical line through its origin.
   *
   * @param degrees from shut to open; positive against the clock, seen from above
   */
  public record Turns(double degrees) implements Move {}

  /**
   * Up and down, to levels only; its origin lies at the height of its upper face.
   *
   * @param shelf its number in the bay, from the bottom, from 1
   * @param level the one it lies on, as its place in {@code tops}, from 1
   * @param tops height of its upper face on each level of the bay, rising
   */
  public record Lifts(int bay, int shelf, int level, List<Length> tops) implements Move {
    public Lifts {
      tops = List.copyOf(tops);
    }
  }
}
