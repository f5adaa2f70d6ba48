package fourpin.cutting;

import fourpin.cutting.Attempt.Drafted;
import fourpin.cutting.Attempt.Outcome;
import fourpin.cutting.Attempt.Score;
import fourpin.cutting.Inflated.Panel;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Makes drafts of a layout again, so that a search can start from it: of a problem with the same
 * parts and stock that allows no more.
 */
final class Redraft {
  private final Inflated problem;
  private final Map<String, Integer> kinds = new HashMap<>();
  private final Map<String, Panel> panels = new HashMap<>();

  /** A node and the size along the cuts that it was cut to, kerf included. */
  private record Cut(Node node, long size) {}

  private Redraft(Inflated problem) {
    this.problem = problem;
    for (int kind = 0; kind < problem.kinds.size(); kind++) {
      for (Part part : problem.partsOfKind.get(kind)) {
        kinds.put(part.mark(), kind);
      }
    }
    problem.panels.forEach(panel -> panels.put(panel.sheet().name(), panel));
  }

  /**
   * What a layout comes to as an answer to a problem.
   *
   * @param layout of all parts that fit
   */
  static Outcome of(Inflated problem, Layout layout) {
    Redraft redraft = new Redraft(problem);
    List<Drafted> drafts = layout.patterns().stream().map(redraft::drafted).toList();
    int[] left = problem.fittingDemand();
    for (Drafted drafted : drafts) {
      int[] counts = Column.of(0, drafted.draft(), left.length).counts();
      for (int kind = 0; kind < left.length; kind++) {
        left[kind] -= drafted.quantity() * counts[kind];
      }
    }
    return new Outcome(drafts, left, Score.of(problem, drafts, left));
  }

  private Drafted drafted(SheetPattern pattern) {
    Panel panel = Objects.requireNonNull(panels.get(pattern.sheet().name()));
    Draft draft = draft(pattern.root(), panel.length(), panel.width());
    return new Drafted(panel, draft, pattern.quantity());
  }

  private Draft draft(Node node, long length, long width) {
    return switch (node) {
      case Node.TrimOff trim -> draft(trim.rest(), length, width);
      case Node.Finished(String mark, Lay lay) -> new Draft.Place(kind(mark), lay);
      case Node.Offcut offcut -> Draft.FREE;
      case Node.Dust dust -> Draft.FREE;
      case Node.Cut cut -> split(cut, length, width);
    };
  }

  private int kind(String mark) {
    return Objects.requireNonNull(kinds.get(mark));
  }

  private Draft split(Node.Cut first, long length, long width) {
    Direction way = first.direction();
    long extent = way == Direction.RIP ? width : length;
    List<Cut> pieces = pieces(first, extent);
    List<Draft.Slice> slices = new ArrayList<>();
    for (int i = 0; i < pieces.size(); ) {
      int parts = partsOfSet(pieces.get(i).node);
      long size = pieces.subList(i, i + parts).stream().mapToLong(Cut::size).sum();
      Node node = pieces.get(i).node;
      slices.add(
          new Draft.Slice(
              size, way == Direction.RIP ? draft(node, length, size) : draft(node, size, width)));
      i += parts;
    }
    boolean whole = slices.size() == 1 && slices.getFirst().size() == extent;
    return whole ? slices.getFirst().content() : new Draft.Split(way, slices);
  }

  /** The pieces between parallel cuts; what is left over at the end is none. */
  private List<Cut> pieces(Node.Cut first, long extent) {
    List<Cut> pieces = new ArrayList<>();
    long rest = extent;
    Node next = first;
    while (next instanceof Node.Cut cut && cut.direction() == first.direction()) {
      long size = cut.fence().picometres() + problem.kerf;
      pieces.add(new Cut(cut.near(), size));
      rest -= size;
      next = cut.far();
    }
    if (!(next instanceof Node.Dust || next instanceof Node.Offcut)) {
      pieces.add(new Cut(next, rest));
    }
    return pieces;
  }

  /** The parts of a matched set follow each other, and are one kind. */
  private int partsOfSet(Node node) {
    return node instanceof Node.Finished(String mark, Lay lay)
        ? problem.kinds.get(kind(mark)).set().map(set -> set.marks().size()).orElse(1)
        : 1;
  }
}
