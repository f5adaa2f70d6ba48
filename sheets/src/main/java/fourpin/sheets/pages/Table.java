package fourpin.sheets.pages;

import java.util.List;
import java.util.stream.Stream;

/**
 * A table whose head is repeated on every page that it reaches.
 *
 * @param columns at least one
 * @param rows each with one cell for each column
 */
public record Table(List<Column> columns, List<Row> rows, Lettering lettering) implements Block {

  /** How large its text is set where columns have room. */
  public enum Lettering {
    USUAL,
    /** For many words that belong on one page. */
    SMALL,
    /** For very many. */
    SMALLEST
  }

  /** Text to the left, numbers to the right so that their places line up. */
  public enum Align {
    LEFT,
    RIGHT
  }

  public record Column(String title, Align align) {}

  /** Sums stand out from what they add up. */
  public enum Kind {
    ITEM,
    SUM
  }

  public record Row(Kind kind, List<Prose> cells) {

    public Row {
      cells = List.copyOf(cells);
    }
  }

  public Table {
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
    for (Row row : rows) {
      if (row.cells().size() != columns.size()) {
        throw new IllegalArgumentException(
            "A row of " + columns.size() + " columns has " + row.cells().size() + " cells: " + row);
      }
    }
  }

  public Table(List<Column> columns, List<Row> rows) {
    this(columns, rows, Lettering.USUAL);
  }

  public static Column left(String title) {
    return new Column(title, Align.LEFT);
  }

  public static Column right(String title) {
    return new Column(title, Align.RIGHT);
  }

  public static Row row(String... cells) {
    return new Row(Kind.ITEM, Stream.of(cells).map(Prose::plain).toList());
  }

  public static Row sum(String... cells) {
    return new Row(Kind.SUM, Stream.of(cells).map(Prose::bold).toList());
  }
}
