package fourpin.strength;

import fourpin.job.Edging;
import fourpin.job.Material;
import fourpin.job.Material.Kind;
import fourpin.measure.Length;
import fourpin.strength.Section.Layer;
import java.util.ArrayList;
import java.util.List;

/**
 * A shelf as it might be made otherwise.
 *
 * @param panel what the panel is of
 * @param pieces of which it is cut, for each mm of its length
 */
record Made(Material panel, Section section, List<Piece> pieces) {

  Made {
    pieces = List.copyOf(pieces);
  }

  /**
   * A piece as long as the shelf.
   *
   * @param width across the sheet or board that it is ripped from, mm
   */
  record Piece(Material of, double width) {}

  /** Which edges have a strip. */
  enum Stripped {
    FRONT("the front edge", List.of(Edging.Edge.FRONT)),
    FRONT_AND_BACK(
        "the front edge and one to the back edge", List.of(Edging.Edge.FRONT, Edging.Edge.BACK));

    private final String words;
    private final List<Edging.Edge> edges;

    Stripped(String words, List<Edging.Edge> edges) {
      this.words = words;
      this.edges = edges;
    }

    String words() {
      return words;
    }

    List<Edging.Edge> edges() {
      return edges;
    }

    int count() {
      return edges.size();
    }
  }

  /** How many layers of one sheet are glued on each other. */
  enum Layers {
    ONE(1),
    TWO(2);

    private final int count;

    Layers(int count) {
      this.count = count;
    }
  }

  /** Without strips, over the whole depth. */
  static Made plain(Material of, double depth, Layers layers) {
    double thickness = of.thickness().mm() * layers.count;
    Layer layer = new Layer("shelf", Matters.of(of), depth, thickness, 0, 0);
    return new Made(of, new Section(List.of(layer)), List.of(new Piece(of, depth * layers.count)));
  }

  /**
   * With the strips that it has; those that would be lower are as high as the panel.
   *
   * @param pieces of which it is cut as it is, the panel first
   */
  static Made edged(Section now, List<Piece> pieces, Material of, Layers layers) {
    double thickness = of.thickness().mm() * layers.count;
    List<Piece> all = new ArrayList<>();
    all.add(new Piece(of, pieces.getFirst().width() * layers.count));
    pieces.stream()
        .skip(1)
        .map(strip -> new Piece(strip.of(), Math.max(strip.width(), thickness)))
        .forEach(all::add);
    return new Made(of, now.withPanel(Matters.of(of), thickness), all);
  }

  /** Of one sheet with strips ripped from boards, their tops flush. */
  static Made stripped(
      Material sheet, Material board, double depth, Length height, Stripped edges) {
    double strip = board.thickness().mm();
    double panel = panel(board, depth, edges);
    List<Layer> layers = new ArrayList<>();
    layers.add(new Layer("shelf", Matters.of(sheet), panel, sheet.thickness().mm(), strip, 0));
    layers.add(new Layer("front strip", Matters.of(board), strip, height.mm(), 0, 0));
    if (edges == Stripped.FRONT_AND_BACK) {
      layers.add(new Layer("back strip", Matters.of(board), strip, height.mm(), strip + panel, 0));
    }
    return new Made(
        sheet,
        new Section(layers),
        List.of(new Piece(sheet, panel), new Piece(board, height.mm() * edges.count())));
  }

  /** What is left of the depth between the strips, mm. */
  static double panel(Material board, double depth, Stripped edges) {
    return depth - edges.count() * board.thickness().mm();
  }

  boolean ofGlass() {
    return panel.kind() == Kind.GLASS;
  }
}
