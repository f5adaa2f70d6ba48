package fourpin.cutting;

import fourpin.cutting.Attempt.Drafted;
import fourpin.cutting.Inflated.Panel;
import fourpin.measure.Length;
import fourpin.measure.Unit;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Turns drafts into patterns: real sizes, kerfs, trim, and a mark on every part. */
final class Trees {
  private static final Node OFFCUT = new Node.Offcut();
  private static final Node DUST = new Node.Dust();

  private final SheetProblem problem;
  private final Length kerf;
  private final Unit unit;
  private final Inflated inflated;
  private final List<Deque<Stack>> marks;

  /** So many parts of one mark still to be given a place. */
  private record Stack(String mark, int count) {}

  private record Key(String sheet, List<Object> tokens) {}

  Trees(SheetProblem problem, Inflated inflated) {
    this.problem = problem;
    kerf = problem.saw().kerf();
    unit =
        problem.parts().stream().findFirst().map(part -> part.length().unit()).orElse(kerf.unit());
    this.inflated = inflated;
    List<Deque<Stack>> stacks = new ArrayList<>();
    for (int kind = 0; kind < inflated.kinds.size(); kind++) {
      stacks.add(stacks(kind));
    }
    marks = stacks;
  }

  /** The marks of a kind; a matched set goes by the mark of its first part. */
  private Deque<Stack> stacks(int kind) {
    Optional<Matched> set = inflated.kinds.get(kind).set();
    Deque<Stack> stacks = new ArrayDeque<>();
    set.ifPresentOrElse(
        s -> stacks.add(new Stack(s.marks().getFirst(), inflated.demand[kind])),
        () ->
            inflated
                .partsOfKind
                .get(kind)
                .forEach(part -> stacks.add(new Stack(part.mark(), part.count()))));
    return stacks;
  }

  /**
   * The patterns in the order drafted; sheets that come out alike, marks included, are one pattern.
   */
  List<SheetPattern> patterns(List<Drafted> drafts) {
    Map<Key, SheetPattern> folded = new LinkedHashMap<>();
    for (Drafted drafted : drafts) {
      for (int i = 0; i < drafted.quantity(); i++) {
        SheetPattern next = new SheetPattern(drafted.panel().sheet(), 1, root(drafted));
        folded.merge(new Key(next.sheet().name(), tokens(next.root())), next, Trees::oneMore);
      }
    }
    return List.copyOf(folded.values());
  }

  private static SheetPattern oneMore(SheetPattern pattern, SheetPattern same) {
    return new SheetPattern(pattern.sheet(), pattern.quantity() + same.quantity(), pattern.root());
  }

  /**
   * What is in a tree, parent before near before far, as a flat list that can be compared without
   * recursion.
   */
  private static List<Object> tokens(Node root) {
    List<Object> tokens = new ArrayList<>();
    Deque<Node> open = new ArrayDeque<>(List.of(root));
    while (!open.isEmpty()) {
      Node next = open.pop();
      switch (next) {
        case Node.Cut cut -> {
          tokens.add(cut.direction());
          tokens.add(cut.fence());
          open.push(cut.far());
          open.push(cut.near());
        }
        case Node.TrimOff trim -> open.push(trim.rest());
        case Node.Finished finished -> tokens.add(finished);
        case Node.Offcut offcut -> tokens.add(offcut);
        case Node.Dust dust -> tokens.add(dust);
      }
    }
    return tokens;
  }

  private Node root(Drafted drafted) {
    Panel panel = drafted.panel();
    boolean rough = !panel.sheet().roughEdge().isZero() && keepsEdges(drafted.draft(), panel);
    Node node =
        rough
            ? rough(drafted.draft(), panel.length(), panel)
            : node(drafted.draft(), panel.length(), panel.width());
    for (Edge edge : List.of(Edge.values()).reversed()) {
      Length off = problem.saw().trim().at(edge);
      node = off.isZero() ? node : new Node.TrimOff(edge, off, node);
    }
    return rough ? node : straightened(panel, node);
  }

  /** Whether anything in it is as wide as the stock. */
  private boolean keepsEdges(Draft draft, Panel panel) {
    return switch (draft) {
      case Draft.Free free -> false;
      case Draft.Place(int kind, Lay lay) -> panel.keepsEdges(inflated.kinds.get(kind), lay);
      case Draft.Split split ->
          split.slices().stream().anyMatch(slice -> keepsEdges(slice.content(), panel));
    };
  }

  /** A piece with rough edges, something in which keeps them. */
  private Node rough(Draft draft, long length, Panel panel) {
    return switch (draft) {
      case Draft.Free free -> OFFCUT;
      case Draft.Place place -> placed(place, length, panel.width());
      case Draft.Split split when split.direction() == Direction.RIP ->
          rough(split.slices().getFirst().content(), length, panel);
      case Draft.Split split -> roughChain(split.slices(), length, panel);
    };
  }

  /** First what keeps its edges; all the rest is straightened as one piece. */
  private Node roughChain(List<Draft.Slice> slices, long length, Panel panel) {
    List<Node> contents = new ArrayList<>();
    List<Long> sizes = new ArrayList<>();
    List<Draft.Slice> others = new ArrayList<>();
    for (Draft.Slice slice : slices) {
      if (keepsEdges(slice.content(), panel)) {
        contents.add(rough(slice.content(), slice.size(), panel));
        sizes.add(slice.size());
      } else {
        others.add(slice);
      }
    }
    if (others.stream().anyMatch(slice -> !(slice.content() instanceof Draft.Free))) {
      long rest = length - sizes.stream().mapToLong(Long::longValue).sum();
      Draft left = new Draft.Split(Direction.CROSSCUT, others);
      contents.add(straightened(panel, node(left, rest, panel.width())));
      sizes.add(rest);
    }
    return chain(Direction.CROSSCUT, contents, sizes, length);
  }

  private static Node straightened(Panel panel, Node node) {
    Length off = panel.sheet().roughEdge();
    return off.isZero() ? node : new Node.TrimOff(Edge.NEAR_EDGE, off, node);
  }

  private Node node(Draft draft, long length, long width) {
    return switch (draft) {
      case Draft.Free free -> OFFCUT;
      case Draft.Place place -> placed(place, length, width);
      case Draft.Split split -> chain(split, length, width);
    };
  }

  private Node placed(Draft.Place place, long length, long width) {
    String mark = nextMark(place.kind());
    return inflated
        .kinds
        .get(place.kind())
        .set()
        .map(set -> parted(set, place.lay(), length, width))
        .orElseGet(() -> new Node.Finished(mark, place.lay()));
  }

  /** A matched set, cut into its parts in their order. */
  private Node parted(Matched set, Lay lay, long length, long width) {
    boolean endToEnd = set.run() == Matched.Run.END_TO_END;
    List<Node> contents = new ArrayList<>();
    List<Long> sizes = new ArrayList<>();
    for (String mark : set.marks()) {
      Part part = inflated.part(mark);
      Length size = endToEnd ? part.length() : part.width();
      contents.add(new Node.Finished(mark, lay));
      sizes.add(size.picometres() + kerf.picometres());
    }
    Direction cuts = set.cuts(lay);
    return chain(cuts, contents, sizes, cuts == Direction.RIP ? width : length);
  }

  private Node chain(Draft.Split split, long length, long width) {
    boolean rip = split.direction() == Direction.RIP;
    List<Node> contents = new ArrayList<>();
    for (Draft.Slice slice : split.slices()) {
      contents.add(
          rip
              ? node(slice.content(), length, slice.size())
              : node(slice.content(), slice.size(), width));
    }
    List<Long> sizes = split.slices().stream().map(Draft.Slice::size).toList();
    return chain(split.direction(), contents, sizes, rip ? width : length);
  }

  /** Parallel cuts, the last one first. */
  private Node chain(Direction cuts, List<Node> contents, List<Long> sizes, long extent) {
    long rest = extent - sizes.stream().mapToLong(Long::longValue).sum();
    Node far = OFFCUT;
    for (int i = contents.size() - 1; i >= 0; i--) {
      far = rest == 0 ? contents.get(i) : cut(cuts, sizes.get(i), contents.get(i), rest, far);
      rest += sizes.get(i);
    }
    return far;
  }

  /**
   * @param rest what is beyond the slice, its kerf included
   */
  private Node cut(Direction direction, long slice, Node near, long rest, Node far) {
    long fence = slice - kerf.picometres();
    boolean ranOff = rest <= kerf.picometres();
    return new Node.Cut(
        direction,
        new Length(fence, unit),
        ranOff ? new Length(rest, unit) : kerf,
        near,
        ranOff ? DUST : far);
  }

  private String nextMark(int kind) {
    Deque<Stack> stacks = marks.get(kind);
    Stack next = stacks.pop();
    if (next.count > 1) {
      stacks.push(new Stack(next.mark, next.count - 1));
    }
    return next.mark;
  }

  /** What was not given a place, in the order of the marks. */
  List<Unplaced> leftOver(Misfits misfits) {
    List<Unplaced> left = new ArrayList<>();
    for (int kind = 0; kind < marks.size(); kind++) {
      Unplaced.Reason reason = misfits.reason(kind);
      Optional<Matched> set = inflated.kinds.get(kind).set();
      for (Stack stack : marks.get(kind)) {
        set.ifPresentOrElse(
            s ->
                s.counts()
                    .forEach(
                        (mark, times) ->
                            left.add(
                                new Unplaced(mark, Math.toIntExact(times * stack.count), reason))),
            () -> left.add(new Unplaced(stack.mark, stack.count, reason)));
      }
    }
    return left;
  }
}
