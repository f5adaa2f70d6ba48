package fourpin.strength;

import fourpin.strength.Section.Layer;
import fourpin.strength.ShelfOnSupports.Bearing;
import fourpin.strength.plate.Plate;
import fourpin.strength.plate.Plate.Band;
import fourpin.strength.plate.Plate.Edges;
import fourpin.strength.plate.Plate.Hold;
import fourpin.strength.plate.Plate.Support;
import fourpin.strength.plate.PlateLoad;
import fourpin.strength.plate.Strips;
import fourpin.strength.plate.Strips.Strip;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * A shelf as a plate with all that is asked of it, in bare numbers: shelves of which these are the
 * same are bent once.
 *
 * @param plate from the front of its foremost layer
 * @param layers of the section, the panel first
 * @param own its own weight
 * @param load as stated, spread evenly
 * @param row the same load, standing at the front edge no deeper than its things are; none where
 *     they fill the depth or are not known
 * @param low how far one support may lie low, mm
 * @param hand on the middle of the front edge, N
 */
record ShelfPlate(
    Plate plate,
    List<Layer> layers,
    List<PlateLoad> own,
    PlateLoad load,
    Optional<PlateLoad> row,
    double low,
    double hand) {

  ShelfPlate {
    layers = List.copyOf(layers);
    own = List.copyOf(own);
  }

  /** Where a layer begins, from the front of the plate. */
  double from(Layer layer) {
    return layer.front() - front(layers);
  }

  /** Nothing for a shelf that does not reach its supports; that is found fault with in boring. */
  static Optional<ShelfPlate> of(ShelfOnSupports shelf) {
    List<Support> supports = supports(shelf);
    double front = supports.isEmpty() ? 0 : supports.getFirst().y();
    double back = supports.isEmpty() ? depth(shelf) : supports.getLast().y();
    return 0 <= front && front < back && back <= depth(shelf)
        ? Optional.of(of(shelf, plate(shelf, supports)))
        : Optional.empty();
  }

  private static double depth(ShelfOnSupports shelf) {
    return shelf.section().depth() - front(shelf);
  }

  private static ShelfPlate of(ShelfOnSupports shelf, Plate plate) {
    double line = shelf.load().value().value();
    return new ShelfPlate(
        plate,
        shelf.section().layers(),
        shelf.section().layers().stream().map(layer -> own(layer, shelf, plate)).toList(),
        plate.evenly(line / plate.depth()),
        shelf.standing().flatMap(deep -> row(line, deep.number(), plate)),
        shelf.doubt().low().number(),
        shelf.doubt().hand().number());
  }

  /** Banding in front of the foremost layer carries nothing. */
  private static double front(List<Layer> layers) {
    return layers.stream().mapToDouble(Layer::front).min().orElseThrow();
  }

  private static double front(ShelfOnSupports shelf) {
    return front(shelf.section().layers());
  }

  private static PlateLoad own(Layer layer, ShelfOnSupports shelf, Plate plate) {
    double from = layer.front() - front(shelf);
    double pressure = new Section(List.of(layer)).weight() / layer.width();
    return new PlateLoad.Patch(pressure, 0, plate.length(), from, from + layer.width());
  }

  private static Optional<PlateLoad> row(double line, double deep, Plate plate) {
    return deep < plate.depth()
        ? Optional.of(new PlateLoad.Patch(line / deep, 0, plate.length(), 0, deep))
        : Optional.empty();
  }

  private static Plate plate(ShelfOnSupports shelf, List<Support> supports) {
    boolean whole = shelf.bearing() instanceof Bearing.WholeEnd;
    LoadedShelf loaded = shelf.loaded();
    return new Plate(
        whole ? loaded.span() : loaded.length(),
        bands(shelf),
        strips(shelf),
        whole ? Edges.ends(Hold.HINGED) : Edges.FREE,
        supports);
  }

  private static List<Band> bands(ShelfOnSupports shelf) {
    List<Layer> layers = shelf.section().layers();
    return IntStream.range(0, layers.size())
        .boxed()
        .sorted(Comparator.comparingDouble(i -> layers.get(i).front()))
        .map(i -> band(shelf, i))
        .toList();
  }

  /** The first layer is the panel; the others are strips on edge. */
  private static Band band(ShelfOnSupports shelf, int index) {
    Layer layer = shelf.section().layers().get(index);
    Flat flat = shelf.flats().get(index);
    return new Band(
        layer.width(),
        index == 0 ? flat.plate(layer.thickness()) : flat.strip(layer.width(), layer.thickness()));
  }

  private static Optional<Strips> strips(ShelfOnSupports shelf) {
    List<Layer> layers = shelf.section().layers();
    Layer panel = layers.getFirst();
    List<Strip> strips =
        layers.stream()
            .skip(1)
            .map(
                layer ->
                    new Strip(
                        middle(layer, shelf),
                        layer.modulus() * layer.area(),
                        layer.middle() - panel.middle()))
            .toList();
    double stretch = panel.modulus() * panel.area();
    return strips.isEmpty()
        ? Optional.empty()
        : Optional.of(new Strips(stretch, panel.width(), middle(panel, shelf), strips));
  }

  private static double middle(Layer layer, ShelfOnSupports shelf) {
    return layer.front() - front(shelf) + layer.width() / 2;
  }

  private static List<Support> supports(ShelfOnSupports shelf) {
    return switch (shelf.bearing()) {
      case Bearing.WholeEnd() -> List.of();
      case Bearing.Rows rows -> supports(shelf, rows);
    };
  }

  /** Row by row from the front, left before right. */
  private static List<Support> supports(ShelfOnSupports shelf, Bearing.Rows rows) {
    double front = rows.front().number() - front(shelf);
    double back = shelf.section().depth() - rows.back().number() - front(shelf);
    DoubleStream places =
        switch (rows.count()) {
          case TWO -> DoubleStream.of(front, back);
          case THREE -> DoubleStream.of(front, (front + back) / 2, back);
        };
    List<Support> supports = new ArrayList<>();
    double end = shelf.overhang();
    places.forEach(
        y -> {
          supports.add(new Support(end, y));
          supports.add(new Support(shelf.loaded().length() - end, y));
        });
    return supports;
  }
}
