package fourpin.strength;

import fourpin.measure.Figure;
import fourpin.measure.Sourced;
import java.util.Optional;

/**
 * A shelf with what carries it and what it carries.
 *
 * @param prefix of the ids of its figures
 * @param loaded in bare numbers
 * @param span between the supports, with its working
 * @param load along the shelf besides its own weight, with its working
 * @param standing how deep the things on it are, as the job names them or by the settings; nothing
 *     where they are taken to fill its depth
 * @param doubt how far a support may lie low, and how hard a hand pushes
 */
public record ShelfOnSupports(
    String caseName,
    String mark,
    String prefix,
    LoadedShelf loaded,
    Figure span,
    Figure load,
    Optional<Sourced> standing,
    Bearing bearing,
    ShelfLimits limits,
    Doubt doubt) {

  Section section() {
    return loaded.section();
  }

  double overhang() {
    return loaded.overhang();
  }

  /**
   * What may befall a shelf.
   *
   * @param low how far one support may lie lower than the others
   * @param hand push on the front edge of the empty shelf, N
   */
  public record Doubt(Sourced low, Sourced hand) {}

  /** How each end is carried. */
  public sealed interface Bearing {

    /**
     * On a support in the front row and one in the back row, and one half way on deep shelves.
     *
     * @param front from the shelf's front edge to the front row
     * @param back from the shelf's back edge to the back row
     */
    record Rows(Sourced front, Sourced back, Count count) implements Bearing {

      /** From the front row to the back row, mm. @param depth of the shelf, mm */
      double between(double depth) {
        return depth - front.number() - back.number();
      }
    }

    /** How many rows carry an end. */
    enum Count {
      TWO,
      THREE
    }

    /** Over the whole depth, in a joint. */
    record WholeEnd() implements Bearing {}
  }
}
