package fourpin.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Whether a board has a place for one part clear of all its defects, where a saw can get it out:
 * along an edge of the board as trimmed, or at least a kerf and the thinnest strip away from it.
 * Part of the independent check: it slides a window along the board and looks for gaps in it.
 */
final class ClearOfDefects {
  private final StockSheet board;
  private final Trim trim;

  /** How far a part lies from the edge that it is cut off. */
  private final long away;

  ClearOfDefects(StockSheet board, Saw saw) {
    this.board = board;
    this.trim = saw.trim();
    long thinnest = board.length().unit().customary() ? 1_587_500_000L : 1_000_000_000L;
    this.away = saw.kerf().picometres() + thinnest;
  }

  /**
   * All in picometres.
   *
   * @param rough goes at the near edge before
   */
  boolean hold(long along, long across, long rough) {
    long first = trim.nearEnd().picometres();
    long last = board.length().minus(trim.farEnd()).picometres() - along;
    List<Long> windows = new ArrayList<>(List.of(first, first + away));
    for (Defect defect : board.defects()) {
      windows.add(Math.max(first + away, defect.x().plus(defect.length()).picometres()));
    }
    return windows.stream()
        .filter(from -> from <= last)
        .anyMatch(from -> hasGap(from, from + along, across, rough));
  }

  private boolean hasGap(long from, long to, long across, long rough) {
    List<Defect> within = new ArrayList<>(board.defects());
    within.removeIf(d -> d.x().picometres() >= to || d.x().plus(d.length()).picometres() <= from);
    within.sort(Comparator.comparing(Defect::y));
    long edge = trim.nearEdge().picometres() + rough;
    long clear = edge;
    for (Defect defect : within) {
      if (defect.y().picometres() - clear >= across) {
        return true;
      }
      long end = defect.y().plus(defect.width()).picometres();
      clear = end <= edge ? clear : Math.max(clear, Math.max(edge + away, end));
    }
    return board.width().minus(trim.farEdge()).picometres() - clear >= across;
  }
}
