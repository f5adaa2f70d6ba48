package fourpin.cutting;

import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Cuts the defects out of one board: in one direction first, so that clear pieces lie between the
 * blocks with defects, then each block in the other direction. Or with a single cut in each gap
 * between defects: then each piece in the other direction beside its defect, and what is as long as
 * the defect in the first direction again. Or round the place of one part, whose defects are cut
 * out of what lies round it then. Lengths are in picometres, from the corner of the board.
 */
final class ClearPieces {

  /**
   * A clear piece of a board, to lay parts out on.
   *
   * @param roughEdge what still goes at its near edge where it is ripped
   */
  record Clear(long x, long y, long length, long width, Length roughEdge) {}

  /** What the first cuts do where clear wood lies between defects. */
  enum Gaps {
    /** One cut on either side of it. */
    CLEAR,
    /** One cut behind the defect before it. */
    AFTER,
    /** One cut in the middle of it, the fence at a round number. */
    MIDDLE,
    /** One cut right before the defect behind it. */
    BEFORE
  }

  /**
   * How the defects of a board are cut out.
   *
   * @param first the way of the first cuts
   * @param place that is cut out before anything else
   */
  record Cuts(Direction first, Gaps gaps, Optional<ClearPlace> place) {

    Cuts(Direction first, Gaps gaps) {
      this(first, gaps, Optional.empty());
    }

    static Cuts around(ClearPlace place) {
      return new Cuts(place.first(), Gaps.CLEAR, Optional.of(place));
    }

    /** The way of cuts so many stages after the first. */
    Direction at(int stage) {
      return stage % 2 == 0 ? first : first.other();
    }

    /** The stage after which what holds a defect is left over. */
    int last() {
      return gaps == Gaps.CLEAR ? 1 : 2;
    }
  }

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
  private final Cuts cuts;
  private final long least;
  private final long kerf;

  /**
   * @param least length that can be held at the saw: what is shorter is left over as it is
   */
  ClearPieces(StockSheet board, Saw saw, Cuts cuts, Length least) {
    this.board = board;
    this.saw = saw;
    this.cuts = cuts;
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
            ? whole(trimmed, content)
            : new Node.Offcut();
    for (Edge edge : List.of(Edge.values()).reversed()) {
      Length off = trim.at(edge);
      node = off.isZero() ? node : new Node.TrimOff(edge, off, node);
    }
    return node;
  }

  private Node whole(Block trimmed, Function<Clear, Node> content) {
    return cuts.place
        .map(p -> new Block(p.x(), p.y(), p.x() + p.length(), p.y() + p.width()))
        .map(place -> around(trimmed, place, cuts.first, content))
        .orElseGet(() -> node(trimmed, 0, defects(), content));
  }

  /** Cuts a place out of a region, one way and then the other; the rest is cut as ever. */
  private Node around(Block region, Block place, Direction way, Function<Clear, Node> content) {
    if (region.equals(place)) {
      return content.apply(clear(region));
    }
    if (isStraightenedFirst(region, place, way)) {
      Length off = board.roughEdge();
      Block rest = region.part(Direction.RIP, region.y0 + off.picometres(), region.y1);
      return new Node.TrimOff(Edge.NEAR_EDGE, off, around(rest, place, way, content));
    }
    if (region.from(way) < place.from(way)) {
      return before(region, place, way, content);
    }
    return place.to(way) < region.to(way)
        ? behind(region, place, way, content)
        : around(region, place, way.other(), content);
  }

  /** Before it is ripped, or where only that makes it narrow enough to be crosscut. */
  private boolean isStraightenedFirst(Block region, Block place, Direction way) {
    boolean ripped = place.y0 > region.y0 || place.y1 < region.y1;
    boolean at = way == Direction.RIP || !reach(region, way);
    return ripped && at && !roughEdge(region).isZero();
  }

  private Node before(Block region, Block place, Direction way, Function<Clear, Node> content) {
    long from = region.from(way);
    long cut = place.from(way) - kerf;
    Node near = node(region.part(way, from, cut), 0, defects(), content);
    Block rest = region.part(way, place.from(way), region.to(way));
    return new Node.Cut(
        way, length(cut - from), length(kerf), near, around(rest, place, way, content));
  }

  private Node behind(Block region, Block place, Direction way, Function<Clear, Node> content) {
    long from = region.from(way);
    long cut = place.to(way);
    long end = region.to(way);
    long taken = Math.min(kerf, end - cut);
    Node near = around(region.part(way, from, cut), place, way.other(), content);
    Node far =
        taken == end - cut
            ? new Node.Dust()
            : node(region.part(way, cut + taken, end), 0, defects(), content);
    return new Node.Cut(way, length(cut - from), length(taken), near, far);
  }

  private Clear clear(Block region) {
    return new Clear(
        region.x0, region.y0, region.x1 - region.x0, region.y1 - region.y0, roughEdge(region));
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

  private Node node(Block region, int stage, List<Block> defects, Function<Clear, Node> content) {
    if (isTooSmall(region)) {
      return new Node.Offcut();
    }
    List<Block> its = defects.stream().filter(region::meets).toList();
    if (its.isEmpty()) {
      return content.apply(clear(region));
    }
    if (cuts.at(stage) == Direction.RIP && !roughEdge(region).isZero()) {
      return straightened(region, stage, defects, content);
    }
    List<Stretch> stretches = stretches(region, stage, its);
    boolean blocked = stretches.size() == 1 && stage == cuts.last();
    if (blocked || !reach(region, cuts.at(stage))) {
      return new Node.Offcut();
    }
    return chain(region, stage, stretches, 0, region.from(cuts.at(stage)), content);
  }

  /** Nothing is ripped before its edge is straightened, so the edge tells. */
  private Length roughEdge(Block region) {
    boolean rough = region.y0 == saw.trim().nearEdge().picometres();
    return rough ? board.roughEdge() : Length.ZERO;
  }

  private Node straightened(
      Block region, int stage, List<Block> defects, Function<Clear, Node> content) {
    Length off = board.roughEdge();
    long from = region.y0 + off.picometres();
    Node rest =
        from < region.y1
            ? node(region.part(Direction.RIP, from, region.y1), stage, defects, content)
            : new Node.Offcut();
    return from < region.y1 ? new Node.TrimOff(Edge.NEAR_EDGE, off, rest) : rest;
  }

  /** Whatever is cut from it would have to be ripped, or be shorter still. */
  private boolean isTooSmall(Block region) {
    return region.x1 - region.x0 < least;
  }

  private boolean reach(Block region, Direction way) {
    long along = region.to(way.other()) - region.from(way.other());
    return saw.limits().longest(way).map(most -> along <= most.picometres()).orElse(true);
  }

  private List<Stretch> stretches(Block region, int stage, List<Block> defects) {
    List<Stretch> stretches = stretches(region, cuts.at(stage), defects);
    return stage > 0 || cuts.gaps == Gaps.CLEAR
        ? stretches
        : parted(region, stretches.stream().filter(s -> !s.defects.isEmpty()).toList());
  }

  /** With one cut between each two of those with defects. */
  private List<Stretch> parted(Block region, List<Stretch> blocks) {
    List<Stretch> parted = new ArrayList<>();
    long at = region.from(cuts.first);
    for (int i = 0; i < blocks.size() - 1; i++) {
      long cut = cut(at, blocks.get(i).to, blocks.get(i + 1).from - kerf);
      parted.add(new Stretch(at, cut, blocks.get(i).defects));
      at = cut + kerf;
    }
    parted.add(new Stretch(at, region.to(cuts.first), blocks.getLast().defects));
    return parted;
  }

  /**
   * @param from where the piece begins
   * @param least the nearest place of a cut in the gap
   * @param most the farthest
   */
  private long cut(long from, long least, long most) {
    return switch (cuts.gaps) {
      case CLEAR, AFTER -> least;
      case BEFORE -> most;
      case MIDDLE -> {
        long middle = (least + most) / 2;
        long rounded = middle - (middle - from) % step(board);
        yield rounded < least ? middle : rounded;
      }
    };
  }

  /** Clear stretches, and between them those with defects, which lie over each other. */
  private List<Stretch> stretches(Block region, Direction way, List<Block> defects) {
    List<Stretch> stretches = new ArrayList<>();
    long at = region.from(way);
    List<Block> sorted = new ArrayList<>(defects);
    sorted.sort(Comparator.comparingLong(d -> d.from(way)));
    for (int i = 0; i < sorted.size(); ) {
      long from = Math.max(sorted.get(i).from(way), at);
      long to = from;
      List<Block> within = new ArrayList<>();
      while (i < sorted.size() && sorted.get(i).from(way) <= to + kerf) {
        to = Math.max(to, sorted.get(i).to(way));
        within.add(sorted.get(i++));
      }
      to = Math.min(to, region.to(way));
      if (from > at) {
        stretches.add(new Stretch(at, from, List.of()));
      }
      stretches.add(new Stretch(from, to, within));
      at = to;
    }
    if (at < region.to(way)) {
      stretches.add(new Stretch(at, region.to(way), List.of()));
    }
    return stretches;
  }

  /**
   * @param from where the piece begins that is still to be cut; a stretch begins there or before,
   *     where the kerf of the cut before took its beginning
   */
  private Node chain(
      Block region,
      int stage,
      List<Stretch> stretches,
      int index,
      long from,
      Function<Clear, Node> content) {
    Stretch stretch = stretches.get(index);
    Direction way = cuts.at(stage);
    long end = region.to(way);
    if (index == stretches.size() - 1) {
      return inside(region.part(way, from, end), stage, stretch, content);
    }
    if (isTooSmall(region.part(way, from, end))) {
      return new Node.Offcut();
    }
    if (stretch.to <= from) {
      return chain(region, stage, stretches, index + 1, from, content);
    }
    long taken = Math.min(kerf, end - stretch.to);
    Node near = inside(region.part(way, from, stretch.to), stage, stretch, content);
    Node far =
        taken == end - stretch.to
            ? new Node.Dust()
            : chain(region, stage, stretches, index + 1, stretch.to + taken, content);
    return new Node.Cut(way, length(stretch.to - from), length(taken), near, far);
  }

  private Node inside(Block part, int stage, Stretch stretch, Function<Clear, Node> content) {
    boolean clear = stretch.defects.isEmpty();
    return clear || stage < cuts.last()
        ? node(part, clear ? stage : stage + 1, stretch.defects, content)
        : new Node.Offcut();
  }

  /** What fences are set by at the finest. */
  static long step(StockSheet board) {
    Length step = board.length().unit().customary() ? Length.inches(1, 16) : Length.mm(1);
    return step.picometres();
  }

  private Length length(long picometres) {
    return new Length(picometres, board.length().unit());
  }
}
