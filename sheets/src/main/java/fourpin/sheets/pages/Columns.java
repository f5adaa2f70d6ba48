package fourpin.sheets.pages;

import java.util.ArrayList;
import java.util.List;

/**
 * Groups of strips in columns side by side.
 *
 * @param columns the strips of each, ready to be put one below the other
 * @param taken how many groups they hold, from the first on
 */
record Columns(List<List<Strip>> columns, int count, int taken) {

  /** Millimetres between columns. */
  static final double BETWEEN = 5;

  private static final int HALVINGS = 24;

  /** In columns of one height: the least that holds all groups, else all of the room. */
  static Columns filled(List<List<Strip>> groups, int count, double room) {
    Columns full = greedy(groups, count, room);
    return full.taken < groups.size() ? full : balanced(groups, full, room);
  }

  private static Columns balanced(List<List<Strip>> groups, Columns full, double room) {
    Columns best = full;
    double low = 0;
    double high = room;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      Columns lower = greedy(groups, full.count, middle);
      boolean holds = lower.taken == groups.size();
      best = holds ? lower : best;
      low = holds ? low : middle;
      high = holds ? middle : high;
    }
    return best;
  }

  private static Columns greedy(List<List<Strip>> groups, int count, double room) {
    List<List<Strip>> columns = new ArrayList<>();
    int taken = 0;
    while (columns.size() < count && taken < groups.size()) {
      List<Strip> column = new ArrayList<>();
      while (taken < groups.size() && fits(column, groups.get(taken), room)) {
        column.addAll(next(column, groups.get(taken)));
        taken++;
      }
      columns.add(column);
    }
    return new Columns(columns, count, taken);
  }

  private static boolean fits(List<Strip> column, List<Strip> group, double room) {
    return Strip.height(column) + Strip.height(next(column, group)) <= room;
  }

  /** At the head of a column without its gap, under what repeats. */
  private static List<Strip> next(List<Strip> column, List<Strip> group) {
    if (!column.isEmpty()) {
      return group;
    }
    List<Strip> strips = new ArrayList<>();
    group.getFirst().head().ifPresent(strips::add);
    strips.add(group.getFirst().withGap(0));
    strips.addAll(group.subList(1, group.size()));
    return strips;
  }
}
