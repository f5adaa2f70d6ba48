package fourpin.boring.way;

import fourpin.boring.BayGrid.Row;
import fourpin.boring.way.WayAnswer.Reason;
import fourpin.casework.Face;
import fourpin.measure.Length;
import java.util.List;
import java.util.Optional;

/**
 * How a guide's one column of holes comes over every row. Before assembly the guide lies at the
 * front edge for front and middle rows and with its far edge at the back edge for back rows; when
 * the case stands, the back edge is out of reach and all rows are taken from the front.
 *
 * @param column from the guide's index edge to the centres of its holes
 * @param width of the guide
 */
record Across(Group group, Length column, Length width) {

  /**
   * For a guide that is made for these rows: the least spacers, and the guide nowhere narrower than
   * its holes need.
   *
   * @param room between a hole's centre and the guide's edge
   */
  static Across made(Group group, Length room) {
    List<Column> columns = group.columns();
    Length front = least(rows(columns, Row.Name.FRONT).stream().map(Column::fromFront).toList());
    Length back =
        least(
            rows(columns, Row.Name.BACK).stream()
                .map(c -> group.hasBackOn() ? beforeTheBack(c) : c.fromBack())
                .toList());
    Length column = Length.max(room, front);
    return new Across(group, column, column.plus(Length.max(room, back)));
  }

  private static Length beforeTheBack(Column column) {
    return column.bay().clear().high().y().minus(column.row().y());
  }

  private static List<Column> rows(List<Column> columns, Row.Name name) {
    return columns.stream().filter(c -> c.row().name() == name).toList();
  }

  private static Length least(List<Length> lengths) {
    return lengths.stream().min(Length::compareTo).orElseThrow();
  }

  /** The panel's edge that the guide's edge lies at. */
  Face edge(Column at) {
    boolean back = at.row().name() == Row.Name.BACK && !group.isBoredAfterAssembly();
    return back ? Face.BACK : Face.FRONT;
  }

  /** From the panel's edge inwards to the guide's edge. */
  Length spacer(Column at) {
    return edge(at) == Face.BACK
        ? at.fromBack().minus(width.minus(column))
        : at.fromFront().minus(column);
  }

  /** Whether the guide is wider than the back of a standing case leaves it room at some row. */
  boolean strikesTheBack() {
    return group.hasBackOn() && beforeTheBack().isLessThan(width.minus(column));
  }

  /** The least from a row to the back behind it. */
  Length beforeTheBack() {
    return least(group.columns().stream().map(Across::beforeTheBack).toList());
  }

  /** Why the face frame of a standing case leaves the guide's edge nothing to lie at. */
  Optional<Reason> atTheFrame() {
    return new Stiles(group).against(this);
  }
}
