package fourpin.sheets.pages;

import fourpin.sheets.pages.Strip.Piece;
import fourpin.sheets.pages.Strip.Start;
import fourpin.sheets.paint.Box;
import java.util.ArrayList;
import java.util.List;

/** Fills leaves with strips from the top; strips that belong together go over together. */
final class Breaker {

  private static final double ROUNDING = 1e-6;

  private final Box body;
  private final List<Layout.Leaf> leaves = new ArrayList<>();
  private List<Piece> pieces = new ArrayList<>();
  private List<Layout.Landed> anchors = new ArrayList<>();
  private double top;

  private Breaker(Box body) {
    this.body = body;
    this.top = body.top();
  }

  static List<Layout.Leaf> leaves(List<Strip> strips, Box body) {
    Breaker breaker = new Breaker(body);
    groups(strips).forEach(breaker::placeOrBreak);
    breaker.turn();
    return List.copyOf(breaker.leaves);
  }

  /** Strips that must stay together. */
  private static List<List<Strip>> groups(List<Strip> strips) {
    List<List<Strip>> groups = new ArrayList<>();
    for (Strip strip : strips) {
      if (groups.isEmpty() || strip.start() != Start.WITH_LAST) {
        groups.add(new ArrayList<>());
      }
      groups.getLast().add(strip);
    }
    return groups;
  }

  /** What is wanted on one page but is higher than one is broken after all. */
  private void placeOrBreak(List<Strip> group) {
    if (Strip.height(group) <= body.height() + ROUNDING) {
      place(group);
    } else {
      group.forEach(strip -> place(List.of(strip)));
    }
  }

  private void place(List<Strip> group) {
    boolean fits = Strip.height(group) <= top - body.bottom() + ROUNDING;
    if (!pieces.isEmpty() && (group.getFirst().start() == Start.NEW_PAGE || !fits)) {
      turn();
    }
    if (pieces.isEmpty()) {
      placeAtHead(group);
    } else {
      group.forEach(this::put);
    }
  }

  private void placeAtHead(List<Strip> group) {
    Strip first = group.getFirst().withGap(0);
    if (!leaves.isEmpty()) {
      first.head().ifPresent(this::put);
    }
    put(first);
    group.subList(1, group.size()).forEach(this::put);
    if (top < body.bottom() - ROUNDING) {
      throw new OverflowException(
          "A drawing or line is "
              + (body.bottom() - top)
              + " mm too high for page "
              + (leaves.size() + 1));
    }
  }

  private void put(Strip strip) {
    top -= strip.gap();
    strip.anchor().ifPresent(anchor -> anchors.add(new Layout.Landed(anchor, top)));
    strip.pieces().forEach(piece -> pieces.add(piece.moved(body.left(), top)));
    top -= strip.height();
  }

  private void turn() {
    leaves.add(new Layout.Leaf(List.copyOf(pieces), List.copyOf(anchors)));
    pieces = new ArrayList<>();
    anchors = new ArrayList<>();
    top = body.top();
  }
}
