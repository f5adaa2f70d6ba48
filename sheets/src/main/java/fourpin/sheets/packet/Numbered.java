package fourpin.sheets.packet;

import fourpin.measure.Length;
import fourpin.sheets.pages.Prose;
import fourpin.sheets.pages.Table;
import fourpin.sheets.pages.Table.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Tables of numbered things with a length of each, in several columns read downwards.
 *
 * @param number head of the numbers, {@code length} of the lengths
 */
record Numbered(String number, String length, Words words) {

  /** A thing as it is called, and its length. */
  record Line(String name, Length length) {}

  /** Of things called 1, 2, 3 and so on. */
  Table numbered(List<Length> lengths, int columns) {
    return table(
        IntStream.range(0, lengths.size())
            .mapToObj(i -> new Line(Integer.toString(i + 1), lengths.get(i)))
            .toList(),
        columns);
  }

  Table table(List<Line> lines, int columns) {
    int rows = Math.ceilDiv(lines.size(), columns);
    return new Table(
        IntStream.range(0, columns)
            .boxed()
            .flatMap(_ -> Stream.of(Table.right(number), Table.right(length)))
            .toList(),
        IntStream.range(0, rows).mapToObj(row -> row(lines, row, rows, columns)).toList());
  }

  private Row row(List<Line> lines, int row, int rows, int columns) {
    List<Prose> cells = new ArrayList<>();
    for (int column = 0; column < columns; column++) {
      int index = column * rows + row;
      boolean there = index < lines.size();
      cells.add(Prose.plain(there ? lines.get(index).name() : ""));
      cells.add(Prose.plain(there ? words.number(lines.get(index).length()) : ""));
    }
    return new Row(Table.Kind.ITEM, cells);
  }
}
