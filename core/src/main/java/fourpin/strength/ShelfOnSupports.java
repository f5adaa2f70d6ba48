package fourpin.strength;

import fourpin.measure.Figure;
import fourpin.measure.Sourced;
import fourpin.strength.Section.Layer;
import java.util.List;
import java.util.Optional;

/**
 * A shelf with what carries it and what it carries.
 *
 * @param prefix of the ids of its figures
 * @param flats what the layers of the section are made of, in their order
 * @param span between the supports, with its working
 * @param overhang how far it stands over each support, mm
 * @param load along the shelf besides its own weight, with its working
 * @param standing how deep the things on it are, where the job names them
 * @param doubt how far a support may lie low, and how hard a hand pushes
 */
public record ShelfOnSupports(
    String caseName,
    String mark,
    String prefix,
    Section section,
    List<Flat> flats,
    Figure span,
    double overhang,
    Figure load,
    Optional<Sourced> standing,
    Bearing bearing,
    ShelfLimits limits,
    Doubt doubt) {

  public ShelfOnSupports {
    flats = List.copyOf(flats);
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
    record Rows(Sourced front, Sourced back, Count count) implements Bearing {}

    /** How many rows carry an end. */
    enum Count {
      TWO,
      THREE
    }

    /** Over the whole depth, in a joint. */
    record WholeEnd() implements Bearing {}
  }

  /**
   * With the strip of one edge on the other edge too; nothing for a shelf without just one strip.
   */
  Optional<ShelfOnSupports> withStripsOnBothEdges() {
    Layer panel = section.layers().getFirst();
    Layer strip = section.layers().getLast();
    double left = panel.width() - strip.width();
    return section.layers().size() == 2 && left > 0
        ? Optional.of(withStrips(panel, strip, left))
        : Optional.empty();
  }

  private ShelfOnSupports withStrips(Layer panel, Layer strip, double width) {
    double front = Math.min(panel.front(), strip.front());
    List<Layer> layers =
        List.of(
            panel.at(front + strip.width(), width),
            strip.at(front, strip.width()),
            strip.at(front + strip.width() + width, strip.width()));
    List<Flat> all = List.of(flats.getFirst(), flats.getLast(), flats.getLast());
    return new ShelfOnSupports(
        caseName,
        mark,
        prefix,
        new Section(layers),
        all,
        span,
        overhang,
        load,
        standing,
        bearing,
        limits,
        doubt);
  }

  public LoadedShelf loaded() {
    return new LoadedShelf(section, span.value().value(), overhang, load.value().value());
  }
}
