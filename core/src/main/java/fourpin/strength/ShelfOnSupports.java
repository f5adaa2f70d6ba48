package fourpin.strength;

import fourpin.measure.Figure;
import fourpin.measure.Sourced;

/**
 * A shelf with what carries it and what it carries.
 *
 * @param prefix of the ids of its figures
 * @param span between the supports, with its working
 * @param overhang how far it stands over each support, mm
 * @param load along the shelf besides its own weight, with its working
 */
public record ShelfOnSupports(
    String caseName,
    String mark,
    String prefix,
    Section section,
    Figure span,
    double overhang,
    Figure load,
    Bearing bearing,
    ShelfLimits limits) {

  /** How each end is carried. */
  public sealed interface Bearing {

    /**
     * On a support in the front row and one in the back row.
     *
     * @param front from the shelf's front edge to the front row
     * @param back from the shelf's back edge to the back row
     */
    record Rows(Sourced front, Sourced back) implements Bearing {}

    /** Over the whole depth, in a joint. */
    record WholeEnd() implements Bearing {}
  }

  public LoadedShelf loaded() {
    return new LoadedShelf(section, span.value().value(), overhang, load.value().value());
  }
}
