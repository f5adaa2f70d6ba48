package fourpin.sheets.pages;

import fourpin.sheets.pages.Strip.Piece;
import fourpin.sheets.pages.Strip.Start;
import fourpin.sheets.paint.Box;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Fills leaves with strips from the top; strips that belong together go over together. */
final class Breaker {

  private static final double ROUNDING = 1e-6;

  /** Millimetres: lower columns that go on over the page are not begun. */
  private static final double LEAST_COLUMNS = 35;

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
    List<List<Strip>> groups = groups(strips);
    int next = 0;
    while (next < groups.size()) {
      int run = next;
      while (run < groups.size()
          && columns(groups, run) > 1
          && columns(groups, run) == columns(groups, next)) {
        run++;
      }
      if (run > next) {
        breaker.inColumns(groups.subList(next, run), columns(groups, next));
        next = run;
      } else {
        breaker.place(groups.get(next), room(groups, next + 1));
        next++;
      }
    }
    breaker.turn();
    return List.copyOf(breaker.leaves);
  }

  private static int columns(List<List<Strip>> groups, int index) {
    return groups.get(index).getFirst().columns();
  }

  /** Strips that must stay together. */
  private static List<List<Strip>> groups(List<Strip> strips) {
    List<List<Strip>> groups = new ArrayList<>();
    for (Strip strip : strips) {
      boolean goesWith =
          !groups.isEmpty()
              && strip.start() == Start.WITH_LAST
              && strip.columns() == groups.getLast().getFirst().columns();
      if (!goesWith) {
        groups.add(new ArrayList<>());
      }
      groups.getLast().add(strip);
    }
    return groups;
  }

  /** What columns that stay with what stands above them need below it. */
  private static double room(List<List<Strip>> groups, int index) {
    boolean stay =
        index < groups.size()
            && columns(groups, index) > 1
            && groups.get(index).getFirst().start() == Start.WITH_LAST;
    return stay ? Math.max(LEAST_COLUMNS, Strip.height(groups.get(index))) : 0;
  }

  /** Groups in columns, which begin on each page below what stands there. */
  private void inColumns(List<List<Strip>> groups, int count) {
    List<List<Strip>> left = groups.stream().flatMap(group -> parted(group).stream()).toList();
    while (!left.isEmpty()) {
      double gap = pieces.isEmpty() ? 0 : left.getFirst().getFirst().gap();
      double room = top - gap - body.bottom();
      Columns columns = Columns.filled(left, count, room + ROUNDING);
      if (columns.taken() < left.size() && room < LEAST_COLUMNS && !pieces.isEmpty()) {
        turn();
        continue;
      }
      if (columns.taken() == 0 && pieces.isEmpty()) {
        throw new OverflowException(
            "A line or drawing is too high for page " + (leaves.size() + 1));
      }
      if (columns.taken() > 0) {
        top -= gap;
        put(columns);
      }
      left = left.subList(columns.taken(), left.size());
      if (!left.isEmpty()) {
        turn();
      }
    }
  }

  private void put(Columns columns) {
    double width = body.width() + Columns.BETWEEN;
    double head = top;
    double lowest = top;
    for (int i = 0; i < columns.columns().size(); i++) {
      top = head;
      double right = i * width / columns.count();
      columns.columns().get(i).forEach(strip -> put(strip, right));
      lowest = Math.min(lowest, top);
    }
    top = lowest;
  }

  /**
   * What is wanted on one page but is higher than one is broken after all; what leads to a table
   * stays with its first row, where that goes on one.
   */
  private List<List<Strip>> parted(List<Strip> group) {
    if (isOnePage(group)) {
      return List.of(group);
    }
    int first = firstRow(group);
    List<Strip> leading = group.subList(0, isOnePage(group.subList(0, first)) ? first : 0);
    return Stream.concat(
            leading.isEmpty() ? Stream.of() : Stream.of(leading),
            group.subList(leading.size(), group.size()).stream().map(List::of))
        .toList();
  }

  private boolean isOnePage(List<Strip> group) {
    return Strip.height(group) <= body.height() + ROUNDING;
  }

  /** How many strips there are up to the first row of a table; none without one. */
  private static int firstRow(List<Strip> group) {
    return IntStream.range(0, group.size())
        .filter(i -> group.get(i).head().isPresent())
        .map(i -> i + 1)
        .findFirst()
        .orElse(0);
  }

  private void place(List<Strip> group, double below) {
    parted(group).forEach(part -> placeWhole(part, below));
  }

  private void placeWhole(List<Strip> group, double below) {
    boolean fits = Strip.height(group) + below <= top - body.bottom() + ROUNDING;
    if (!pieces.isEmpty() && (group.getFirst().start() == Start.NEW_PAGE || !fits)) {
      turn();
    }
    if (pieces.isEmpty()) {
      placeAtHead(group);
    } else {
      group.forEach(strip -> put(strip, 0));
    }
  }

  private void placeAtHead(List<Strip> group) {
    Strip first = group.getFirst().withGap(0);
    if (!leaves.isEmpty()) {
      first.head().ifPresent(strip -> put(strip, 0));
    }
    put(first, 0);
    group.subList(1, group.size()).forEach(strip -> put(strip, 0));
    if (top < body.bottom() - ROUNDING) {
      throw new OverflowException(
          "A drawing or line is "
              + (body.bottom() - top)
              + " mm too high for page "
              + (leaves.size() + 1));
    }
  }

  private void put(Strip strip, double right) {
    top -= strip.gap();
    strip.anchor().ifPresent(anchor -> anchors.add(new Layout.Landed(anchor, top)));
    strip.pieces().forEach(piece -> pieces.add(piece.moved(body.left() + right, top)));
    top -= strip.height();
  }

  private void turn() {
    leaves.add(new Layout.Leaf(List.copyOf(pieces), List.copyOf(anchors)));
    pieces = new ArrayList<>();
    anchors = new ArrayList<>();
    top = body.top();
  }
}
