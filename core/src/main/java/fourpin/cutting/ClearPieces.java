package fourpin.cutting;

import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;

/**
 * Cuts the defects out of one board: in one direction first, so that clear pieces lie between the
 * blocks with defects, then each block in the other direction. Lengths are in picometres, from the
 * corner of the board.
 */
final class ClearPieces {

  /**
   * A clear piece of a board, to lay parts out on.
   *
   * @param roughEdge what still goes at its near edge where it is ripped
   */
  record Clear(long x, long y, long length, long width, Length roughEdge) {}

  /** A stretch of a region, with defects or without. */
  private record Stretch(long from, long to, List<Block> defects) {}

  private record Block(long x0, long y0, long x1, long y1) {
    long from(Direction cuts) {
      return cuts == Direction.CROSSCUT ? x0 : y0;
    }

    long to(Direction cuts) {
      return cuts == Direction.CROSSCUT ? x1 : y1;
    }

    Block part(Direction cuts, long from, long to) {
      return cuts == Direction.CROSSCUT ? new Block(from, y0, to, y1) : new Block(x0, from, x1, to);
    }

    boolean meets(Block other) {
      return x0 < other.x1 && other.x0 < x1 && y0 < other.y1 && other.y0 < y1;
    }
  }

  private final StockSheet board;
  private final Saw saw;
  private final Direction first;
  private final long least;
  private final long kerf;

  /**
   * @param first the way of the first cuts
   * @param least length that can be held at the saw: what is shorter is left over as it is
   */
  ClearPieces(StockSheet board, Saw saw, Direction first, Length least) {
    this.board = board;
    this.saw = saw;
    this.first = first;
    this.least = least.picometres();
    this.kerf = saw.kerf().picometres();
  }

  /** The clear pieces, in the order of {@link #tree}. */
  List<Clear> pieces() {
    List<Clear> pieces = new ArrayList<>();
    tree(
        clear -> {
          pieces.add(clear);
          return new Node.Offcut();
        });
    return pieces;
  }

  /** The cuts of the whole board, trimming and all; each clear piece becomes what is said. */
  Node tree(Function<Clear, Node> content) {
    Trim trim = saw.trim();
    Block trimmed =
        new Block(
            trim.nearEnd().picometres(),
            trim.nearEdge().picometres(),
            board.length().minus(trim.farEnd()).picometres(),
            board.width().minus(trim.farEdge()).picometres());
    Node node =
        trimmed.x0 < trimmed.x1 && trimmed.y0 < trimmed.y1
            ? node(trimmed, first, defects(), content)
            : new Node.Offcut();
    for (Edge edge : List.of(Edge.values()).reversed()) {
      Length off = trim.at(edge);
      node = off.isZero() ? node : new Node.TrimOff(edge, off, node);
    }
    return node;
  }

  private List<Block> defects() {
    return board.defects().stream()
        .map(
            d ->
                new Block(
                    d.x().picometres(),
                    d.y().picometres(),
                    d.x().plus(d.length()).picometres(),
                    d.y().plus(d.width()).picometres()))
        .toList();
  }

  private Node node(
      Block region, Direction cuts, List<Block> defects, Function<Clear, Node> content) {
    if (isTooSmall(region)) {
      return new Node.Offcut();
    }
    List<Block> its = defects.stream().filter(region::meets).toList();
    Length rough = roughEdge(region);
    if (its.isEmpty()) {
      return content.apply(
          new Clear(region.x0, region.y0, region.x1 - region.x0, region.y1 - region.y0, rough));
    }
    if (cuts == Direction.RIP && !rough.isZero()) {
      return straightened(region, defects, content);
    }
    List<Stretch> stretches = stretches(region, cuts, its);
    boolean blocked = stretches.size() == 1 && cuts != first;
    if (blocked || !reach(region, cuts)) {
      return new Node.Offcut();
    }
    return chain(region, cuts, stretches, 0, region.from(cuts), content);
  }

  /** Nothing is ripped before its edge is straightened, so the edge tells. */
  private Length roughEdge(Block region) {
    boolean rough = region.y0 == saw.trim().nearEdge().picometres();
    return rough ? board.roughEdge() : Length.ZERO;
  }

  private Node straightened(Block region, List<Block> defects, Function<Clear, Node> content) {
    Length off = board.roughEdge();
    long from = region.y0 + off.picometres();
    Node rest =
        from < region.y1
            ? node(region.part(Direction.RIP, from, region.y1), Direction.RIP, defects, content)
            : new Node.Offcut();
    return from < region.y1 ? new Node.TrimOff(Edge.NEAR_EDGE, off, rest) : rest;
  }

  /** Whatever is cut from it would have to be ripped, or be shorter still. */
  private boolean isTooSmall(Block region) {
    return region.x1 - region.x0 < least;
  }

  private boolean reach(Block region, Direction cuts) {
    long along = region.to(cuts.other()) - region.from(cuts.other());
    return saw.limits().longest(cuts).map(most -> along <= most.picometres()).orElse(true);
  }

  /** Clear stretches, and between them those with defects, which lie over each other. */
  private List<Stretch> stretches(Block region, Direction cuts, List<Block> defects) {
    List<Stretch> stretches = new ArrayList<>();
    long at = region.from(cuts);
    List<Block> sorted = new ArrayList<>(defects);
    sorted.sort(Comparator.comparingLong(d -> d.from(cuts)));
    for (int i = 0; i < sorted.size(); ) {
      long from = Math.max(sorted.get(i).from(cuts), at);
      long to = from;
      List<Block> within = new ArrayList<>();
      while (i < sorted.size() && sorted.get(i).from(cuts) <= to + kerf) {
        to = Math.max(to, sorted.get(i).to(cuts));
        within.add(sorted.get(i++));
      }
      to = Math.min(to, region.to(cuts));
      if (from > at) {
        stretches.add(new Stretch(at, from, List.of()));
      }
      stretches.add(new Stretch(from, to, within));
      at = to;
    }
    if (at < region.to(cuts)) {
      stretches.add(new Stretch(at, region.to(cuts), List.of()));
    }
    return stretches;
  }

  /**
   * @param from where the piece begins that is still to be cut; a stretch begins there or before,
   *     where the kerf of the cut before took its beginning
   */
  private Node chain(
      Block region,
      Direction cuts,
      List<Stretch> stretches,
      int index,
      long from,
      Function<Clear, Node> content) {
    Stretch stretch = stretches.get(index);
    long end = region.to(cuts);
    if (index == stretches.size() - 1) {
      return inside(region.part(cuts, from, end), cuts, stretch, content);
    }
    if (isTooSmall(region.part(cuts, from, end))) {
      return new Node.Offcut();
    }
    if (stretch.to <= from) {
      return chain(region, cuts, stretches, index + 1, from, content);
    }
    long taken = Math.min(kerf, end - stretch.to);
    Node near = inside(region.part(cuts, from, stretch.to), cuts, stretch, content);
    Node far =
        taken == end - stretch.to
            ? new Node.Dust()
            : chain(region, cuts, stretches, index + 1, stretch.to + taken, content);
    return new Node.Cut(cuts, length(stretch.to - from), length(taken), near, far);
  }

  private Node inside(Block part, Direction cuts, Stretch stretch, Function<Clear, Node> content) {
    return stretch.defects.isEmpty()
        ? node(part, cuts, List.of(), content)
        : cuts == first ? node(part, cuts.other(), stretch.defects, content) : new Node.Offcut();
  }

  private Length length(long picometres) {
    return new Length(picometres, board.length().unit());
  }
}
