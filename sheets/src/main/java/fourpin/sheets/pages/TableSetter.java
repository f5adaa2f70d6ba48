package fourpin.sheets.pages;

import fourpin.sheets.pages.Strip.Piece;
import fourpin.sheets.paint.Mark;
import fourpin.sheets.paint.Pen;
import fourpin.sheets.paint.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * Sets a table: columns as wide as their text where there is room, else titles wrap, and then the
 * text of the widest columns, which share what the others leave by how much they hold, so that rows
 * stay low. No word breaks; smaller type only when even that is too wide.
 */
final class TableSetter {

  private static final double PAD = 1.2;
  private static final double RISE = 0.6;
  private static final double SMALL_RISE = 0.4;
  private static final double SMALL_LEADING = 1.2;
  private static final double ROUNDING = 0.01;
  private static final int HALVINGS = 50;

  /** Ems; a longer word may be broken where room is short. */
  private static final double LONG_WORD = 8;

  /** A row of more lines may go on on the next page. */
  private static final int MOST_LINES = 24;

  private static final List<Double> SIZES = List.of(3.5, 3.2, 2.9, 2.65);

  /** In small print tables are set in the least type. */
  private static double largest(Table.Lettering lettering, Block.Print print) {
    if (print == Block.Print.SMALL) {
      return SIZES.getLast();
    }
    return switch (lettering) {
      case USUAL -> SIZES.getFirst();
      case SMALL -> SIZES.get(2);
      case SMALLEST -> SIZES.getLast();
    };
  }

  private final Table table;
  private final Wrap.Type type;
  private final double[] widths;

  /** Above and below the text of a row. */
  private final double rise;

  /**
   * What a column takes, in ems: its widest word, its widest cell on one line, and its title on one
   * line.
   */
  private record Needs(double word, double line, double title) {

    double least(double size) {
      return 2 * PAD + ROUNDING + word * size;
    }

    double wanted(double size) {
      return 2 * PAD + ROUNDING + Math.max(word, line) * size;
    }

    double titled(double size) {
      return Math.max(wanted(size), 2 * PAD + ROUNDING + title * size);
    }
  }

  private TableSetter(Table table, double width, Block.Print print) {
    this.table = table;
    List<Needs> needs =
        IntStream.range(0, table.columns().size()).mapToObj(i -> needs(table, i)).toList();
    this.type =
        Types.TABLE
            .sized(size(needs, width, largest(table.lettering(), print)))
            .led(print == Block.Print.SMALL ? SMALL_LEADING : Types.TABLE.leading());
    this.rise = print == Block.Print.SMALL ? SMALL_RISE : RISE;
    this.widths = widths(needs, type.size(), width);
  }

  static List<Strip> strips(Table table, Tag parent, double width, Block.Print print) {
    return new TableSetter(table, width, print).strips(parent.add(Tag.Role.TABLE));
  }

  private static Needs needs(Table table, int index) {
    Wrap.Type em = Types.TABLE.sized(1);
    Prose title = Prose.bold(table.columns().get(index).title());
    double word = Math.min(LONG_WORD, Wrap.widestWord(title, em));
    double line = 0;
    for (Table.Row row : table.rows()) {
      Prose cell = row.cells().get(index);
      word = Math.max(word, Math.min(LONG_WORD, Wrap.widestWord(cell, em)));
      line = Math.max(line, Wrap.natural(cell, em));
    }
    return new Needs(word, line, Wrap.natural(title, em));
  }

  private double size(List<Needs> needs, double width, double largest) {
    return SIZES.stream()
        .filter(size -> size <= largest)
        .filter(size -> needs.stream().mapToDouble(n -> n.least(size)).sum() <= width)
        .findFirst()
        .orElseThrow(
            () -> new OverflowException("A table is too wide for the page: " + table.columns()));
  }

  /** Titles wrap only where cells leave them no room. */
  private static double[] widths(List<Needs> needs, double size, double width) {
    double[] least = needs.stream().mapToDouble(n -> n.least(size)).toArray();
    // A cell of many lines must not leave the other columns a word's width.
    double[] cells = needs.stream().mapToDouble(n -> Math.min(width, n.wanted(size))).toArray();
    double[] titled = needs.stream().mapToDouble(n -> n.titled(size)).toArray();
    double[] wanted = sum(cells) > width ? cells : titled;
    return shared(least, wanted, limited(least, wanted, width), width);
  }

  private static double sum(double[] widths) {
    return DoubleStream.of(widths).sum();
  }

  /**
   * Every column as wide as it wants up to one common limit, the largest for which all have room.
   */
  private static double[] limited(double[] least, double[] wanted, double width) {
    double low = 0;
    double high = width;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      boolean fits = sum(upTo(middle, least, wanted)) <= width;
      low = fits ? middle : low;
      high = fits ? high : middle;
    }
    return upTo(low, least, wanted);
  }

  private static double[] upTo(double limit, double[] least, double[] wanted) {
    return IntStream.range(0, least.length)
        .mapToDouble(i -> Math.max(least[i], Math.min(limit, wanted[i])))
        .toArray();
  }

  /** Columns that got less than they want share what they got in all, by what each wants more. */
  private static double[] shared(double[] least, double[] wanted, double[] got, double width) {
    double spare = width;
    double more = 0;
    for (int i = 0; i < got.length; i++) {
      boolean wraps = got[i] < wanted[i];
      spare -= wraps ? least[i] : got[i];
      more += wraps ? wanted[i] - least[i] : 0;
    }
    double share = more > 0 ? spare / more : 0;
    return IntStream.range(0, got.length)
        .mapToDouble(i -> got[i] < wanted[i] ? least[i] + share * (wanted[i] - least[i]) : got[i])
        .toArray();
  }

  private List<Strip> strips(Tag tag) {
    List<Strip> strips = new ArrayList<>();
    Strip head = head(tag);
    strips.add(head);
    Strip repeated = decorationOnly(head);
    for (Table.Row row : table.rows()) {
      row(tag, row).forEach(strip -> strips.add(strip.under(repeated)));
    }
    return keepFirstRowWithHead(strips);
  }

  private static List<Strip> keepFirstRowWithHead(List<Strip> strips) {
    if (strips.size() > 1) {
      strips.set(1, strips.get(1).starting(Strip.Start.WITH_LAST));
    }
    return strips;
  }

  private Strip head(Tag tag) {
    Tag row = tag.add(Tag.Role.ROW);
    List<Prose> titles = table.columns().stream().map(c -> Prose.bold(c.title())).toList();
    Strip strip = cells(row, Tag.Role.HEADER_CELL, titles).getFirst();
    return strip
        .plus(Piece.decoration(List.of(rule(0, Pen.EDGE))))
        .plus(Piece.decoration(List.of(rule(-strip.height(), Pen.OUTLINE))));
  }

  private List<Strip> row(Tag tag, Table.Row row) {
    List<Strip> strips = cells(tag.add(Tag.Role.ROW), Tag.Role.CELL, row.cells());
    strips.add(ruledBelow(strips.removeLast()));
    if (row.kind() == Table.Kind.SUM) {
      strips.set(0, strips.getFirst().plus(Piece.decoration(List.of(rule(0, Pen.EDGE)))));
    }
    return strips;
  }

  private Strip ruledBelow(Strip strip) {
    return strip.plus(Piece.decoration(List.of(rule(-strip.height(), Pen.HATCH))));
  }

  private Mark rule(double y, Pen pen) {
    double right = DoubleStream.of(widths).sum();
    return Mark.Path.line(new Point(0, y), new Point(right, y), pen);
  }

  /** A row as one strip, or as several where it is too high to be kept on one page. */
  private List<Strip> cells(Tag row, Tag.Role role, List<Prose> cells) {
    List<Cell> wrapped = new ArrayList<>();
    for (int i = 0; i < cells.size(); i++) {
      wrapped.add(new Cell(row.add(role), Wrap.lines(cells.get(i), type, widths[i] - 2 * PAD)));
    }
    int lines = wrapped.stream().mapToInt(cell -> cell.lines.size()).max().orElse(1);
    List<Strip> strips = new ArrayList<>();
    for (int from = 0; from < lines; from += MOST_LINES) {
      strips.add(strip(wrapped, from, Math.min(lines, from + MOST_LINES)));
    }
    return strips;
  }

  private record Cell(Tag tag, List<Wrap.Line> lines) {

    List<Wrap.Line> between(int from, int to) {
      return lines.subList(Math.min(from, lines.size()), Math.min(to, lines.size()));
    }
  }

  private Strip strip(List<Cell> cells, int from, int to) {
    List<Piece> pieces = new ArrayList<>();
    double left = 0;
    for (int i = 0; i < cells.size(); i++) {
      pieces.add(Piece.of(cells.get(i).tag, marks(cells.get(i).between(from, to), left, i)));
      left += widths[i];
    }
    return Strip.of((to - from) * type.lineHeight() + 2 * rise, pieces);
  }

  private List<Mark> marks(List<Wrap.Line> lines, double left, int column) {
    List<Mark> marks = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      double slack = widths[column] - 2 * PAD - lines.get(i).width();
      double indent = table.columns().get(column).align() == Table.Align.RIGHT ? slack : 0;
      marks.addAll(lines.get(i).marks(left + PAD + indent, type, rise + i * type.lineHeight()));
    }
    return marks;
  }

  /** The head on a later page is a repetition for the eye, not for the ear. */
  private static Strip decorationOnly(Strip head) {
    List<Mark> marks = head.pieces().stream().flatMap(p -> p.marks().stream()).toList();
    return Strip.of(head.height(), List.of(Piece.decoration(marks)));
  }
}
