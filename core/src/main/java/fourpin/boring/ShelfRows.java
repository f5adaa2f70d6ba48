package fourpin.boring;

import fourpin.boring.BayGrid.Row;
import fourpin.casework.Axis;
import fourpin.casework.Box;
import fourpin.job.Setting;
import fourpin.job.Settings;
import fourpin.job.Support;
import fourpin.measure.Length;
import java.util.List;

/** Where the rows of a bay lie from front to back, measured from the shelf's own edges. */
final class ShelfRows {

  private ShelfRows() {}

  /** Loose cleats run from front to back, so cleat strips never stand in the middle. */
  static List<Row> of(Box shelf, Support support, Settings settings, Length rowsBack) {
    Length front = shelf.low().y().plus(settings.length(frontSetback(support))).plus(rowsBack);
    Length back = shelf.high().y().minus(settings.length(backSetback(support))).plus(rowsBack);
    Row first = new Row(Row.Name.FRONT, front);
    Row last = new Row(Row.Name.BACK, back);
    boolean deep = shelf.size(Axis.Y).isMoreThan(settings.length(Setting.MIDDLE_ROW_FROM));
    return deep && !(support instanceof Support.Cleats)
        ? List.of(first, new Row(Row.Name.MIDDLE, front.plus(back).over(2)), last)
        : List.of(first, last);
  }

  static Setting frontSetback(Support support) {
    return isPinned(support) ? Setting.FRONT_ROW : Setting.STANDARD_SETBACK;
  }

  static Setting backSetback(Support support) {
    return isPinned(support) ? Setting.BACK_ROW : Setting.STANDARD_SETBACK;
  }

  private static boolean isPinned(Support support) {
    return support instanceof Support.Pins || support instanceof Support.Sleeved;
  }
}
