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

/**
 * A shelf as a plate, in bare numbers: shelves of which these are the same are bent once.
 *
 * @param plate from the front of its foremost layer
 * @param layers of the section, the panel first
 * @param own its own weight
 */
record ShelfPlate(Plate plate, List<Layer> layers, List<PlateLoad> own) {

  ShelfPlate {
    layers = List.copyOf(layers);
    own = List.copyOf(own);
  }

  /** What carries a shelf in the middle of its span besides its ends. */
  enum Prop {
    NONE,
    /** A support under the back edge, such as a pin in the back. */
    BACK,
    /** A support under the front edge and one under the back edge, such as a loose upright. */
    FRONT_AND_BACK
  }

  /** Where a layer begins, from the front of the plate. */
  double from(Layer layer) {
    return layer.front() - front(layers);
  }

  /** A load along it, N/mm, spread evenly over its depth. */
  PlateLoad evenly(double load) {
    return plate.evenly(load / plate.depth());
  }

  /** The same load on part of its depth, over its whole length. */
  PlateLoad between(double load, LoadCase.Lies lies) {
    return new PlateLoad.Patch(load / lies.deep(), 0, plate.length(), lies.from(), lies.to());
  }

  static Optional<ShelfPlate> of(LoadedShelf shelf, Bearing bearing) {
    return of(shelf, bearing, Prop.NONE);
  }

  /** Nothing for a shelf that does not reach its supports; that is found fault with in boring. */
  static Optional<ShelfPlate> of(LoadedShelf shelf, Bearing bearing, Prop prop) {
    List<Support> ends = supports(shelf, bearing);
    double depth = depth(shelf);
    double front = ends.isEmpty() ? 0 : ends.getFirst().y();
    double back = ends.isEmpty() ? depth : ends.getLast().y();
    if (!(0 <= front && front < back && back <= depth)) {
      return Optional.empty();
    }
    List<Support> all = new ArrayList<>(ends);
    all.addAll(props(prop, length(shelf, bearing) / 2, depth));
    return Optional.of(of(shelf.asPlate(bearing).layers(), plate(shelf, bearing, all)));
  }

  private static ShelfPlate of(List<Layer> layers, Plate plate) {
    List<PlateLoad> own = layers.stream().map(l -> own(l, front(layers), plate)).toList();
    return new ShelfPlate(plate, layers, own);
  }

  /** Banding in front of the foremost layer carries nothing. */
  private static double front(List<Layer> layers) {
    return layers.stream().mapToDouble(Layer::front).min().orElseThrow();
  }

  static double depth(LoadedShelf shelf) {
    return shelf.section().depth() - front(shelf.section().layers());
  }

  private static double length(LoadedShelf shelf, Bearing bearing) {
    return bearing instanceof Bearing.WholeEnd ? shelf.span() : shelf.length();
  }

  private static PlateLoad own(Layer layer, double front, Plate plate) {
    double from = layer.front() - front;
    double pressure = new Section(List.of(layer)).weight() / layer.width();
    return new PlateLoad.Patch(pressure, 0, plate.length(), from, from + layer.width());
  }

  private static Plate plate(LoadedShelf shelf, Bearing bearing, List<Support> supports) {
    List<Layer> layers = shelf.asPlate(bearing).layers();
    return new Plate(
        length(shelf, bearing),
        layers.stream()
            .sorted(Comparator.comparingDouble(Layer::front))
            .map(layer -> band(layer, layers.getFirst()))
            .toList(),
        strips(layers),
        bearing instanceof Bearing.WholeEnd ? Edges.ends(Hold.HINGED) : Edges.FREE,
        supports);
  }

  /** The panel is a plate; the others are strips on edge. */
  private static Band band(Layer layer, Layer panel) {
    Flat flat = layer.matter().flat();
    return new Band(
        layer.width(),
        layer.equals(panel)
            ? flat.plate(layer.thickness())
            : flat.strip(layer.width(), layer.thickness()));
  }

  private static Optional<Strips> strips(List<Layer> layers) {
    Layer panel = layers.getFirst();
    double front = front(layers);
    List<Strip> strips = layers.stream().skip(1).map(l -> strip(l, panel, front)).toList();
    double stretch = panel.stretching() * panel.area();
    return strips.isEmpty()
        ? Optional.empty()
        : Optional.of(new Strips(stretch, panel.width(), middle(panel, front), strips));
  }

  private static Strip strip(Layer layer, Layer panel, double front) {
    return new Strip(
        middle(layer, front), layer.stretching() * layer.area(), layer.middle() - panel.middle());
  }

  private static double middle(Layer layer, double front) {
    return layer.front() - front + layer.width() / 2;
  }

  private static List<Support> supports(LoadedShelf shelf, Bearing bearing) {
    return switch (bearing) {
      case Bearing.WholeEnd() -> List.of();
      case Bearing.Rows rows -> supports(shelf, rows);
    };
  }

  /** Row by row from the front, left before right. */
  private static List<Support> supports(LoadedShelf shelf, Bearing.Rows rows) {
    double cut = front(shelf.section().layers());
    double front = rows.front().number() - cut;
    double back = shelf.section().depth() - rows.back().number() - cut;
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
          supports.add(new Support(shelf.length() - end, y));
        });
    return supports;
  }

  private static List<Support> props(Prop prop, double middle, double depth) {
    return switch (prop) {
      case NONE -> List.of();
      case BACK -> List.of(new Support(middle, depth));
      case FRONT_AND_BACK -> List.of(new Support(middle, 0), new Support(middle, depth));
    };
  }
}
