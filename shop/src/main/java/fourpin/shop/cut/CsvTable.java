package fourpin.shop.cut;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import fourpin.measure.Spelling;
import fourpin.shop.yaml.Place;
import fourpin.shop.yaml.Problem;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A table of comma-separated values (RFC 4180) with the names of its columns in the first line, in
 * any order and case. Semicolons part the cells where the first line has them and no comma. UTF-8.
 */
final class CsvTable {

  /** How large a table may be; keeps hostile input cheap. */
  enum Size {
    /** By hand: more parts than a shop cuts at a time. */
    STATED(5_000, 1),
    /** By Fourpin, which writes a line for each sheet, and for each part on each layout. */
    WRITTEN(250_000, 32);

    private final int lines;
    private final int megabytes;

    Size(int lines, int megabytes) {
      this.lines = lines;
      this.megabytes = megabytes;
    }

    int bytes() {
      return megabytes << MEBI;
    }
  }

  /** Bits of a megabyte. */
  private static final int MEBI = 20;

  private static final String BYTE_ORDER_MARK = "\uFEFF";

  private final List<Column> columns;
  private final Size size;
  private final List<Problem> problems;
  private final List<Row> rows = new ArrayList<>();
  private Extent extent = Extent.WHOLE;

  /** How much of a table was read. */
  enum Extent {
    WHOLE,
    /** What else stands in it is not known. */
    CUT_OFF
  }

  /** What could be read of a table. */
  record Read(List<Row> rows, Extent extent) {}

  /** The cells of one line by the names of their columns. */
  record Row(Place place, Map<String, Cell> cells) {

    /** The cell, empty where the table does not have the column. */
    Cell cell(String column) {
      return cells.getOrDefault(column, new Cell("", place, Cell.Decimals.POINT));
    }
  }

  private CsvTable(List<Column> columns, Size size, List<Problem> problems) {
    this.columns = columns;
    this.size = size;
    this.problems = problems;
  }

  /**
   * The rows that could be read.
   *
   * @param problems gets what is wrong
   */
  static Read read(byte[] bytes, List<Column> columns, List<Problem> problems) {
    return read(bytes, columns, Size.STATED, problems);
  }

  /** The same of a table of any size. */
  static Read read(byte[] bytes, List<Column> columns, Size size, List<Problem> problems) {
    CsvTable table = new CsvTable(columns, size, problems);
    if (bytes.length > size.bytes()) {
      table.wrong(
          Place.START,
          "the file",
          "it is larger than " + size.megabytes + " MB",
          "cut in several goes, each on its own");
    } else {
      text(bytes).ifPresentOrElse(table::read, table::notText);
    }
    return new Read(table.rows, table.extent);
  }

  /** The columns that the first line names, as far as it can be read. */
  static Set<String> heading(byte[] bytes) {
    String head = text(bytes).map(CsvTable::head).orElse("");
    CsvTable alone = new CsvTable(List.of(), Size.STATED, new ArrayList<>());
    return alone.records(head, separator(head)).stream()
        .flatMap(line -> line.getFields().stream())
        .map(name -> name.strip().toLowerCase(Locale.ROOT))
        .collect(Collectors.toSet());
  }

  private static String head(String text) {
    return text.lines().findFirst().orElse("");
  }

  private static char separator(String head) {
    return head.contains(";") && !head.contains(",") ? ';' : ',';
  }

  private static Optional<String> text(byte[] bytes) {
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      return Optional.of(
          text.startsWith(BYTE_ORDER_MARK) ? text.substring(BYTE_ORDER_MARK.length()) : text);
    } catch (CharacterCodingException e) {
      return Optional.empty();
    }
  }

  private void notText() {
    wrong(Place.START, "the file", "it is not text in UTF-8", "save it as CSV UTF-8");
  }

  private void read(String text) {
    char separator = separator(head(text));
    List<CsvRecord> records = records(text, separator);
    if (records.isEmpty() && extent == Extent.WHOLE) {
      wrong(Place.START, "the file", "it is empty", "write the names of the columns in line 1");
    }
    if (!records.isEmpty()) {
      read(records, new CsvText(text, separator), separator);
    }
  }

  /** A quote that is not closed takes in all that stands behind it, which is no cell then. */
  private void read(List<CsvRecord> records, CsvText places, char separator) {
    List<Cell> first = cells(records.getFirst(), places);
    if (places.open().isPresent()) {
      quotes(places.open().get());
      return;
    }
    List<String> names = head(first);
    for (CsvRecord each : records.subList(1, records.size())) {
      List<Cell> cells = cells(each, places);
      places.open().ifPresentOrElse(this::quotes, () -> row(cells, names, separator));
    }
    if (records.size() == 1 && problems.isEmpty()) {
      wrong(Place.START, "the file", "it has no line below its first", "write a line for each");
    }
    if (missing(names)) {
      rows.clear();
    }
  }

  /** Without a column there is no use in saying at every line that nothing stands there. */
  private boolean missing(List<String> names) {
    return columns.stream()
        .anyMatch(c -> c.need() == Column.Need.REQUIRED && !names.contains(c.name()));
  }

  /** As many as can be read. */
  private List<CsvRecord> records(String text, char separator) {
    List<CsvRecord> records = new ArrayList<>();
    try (CsvReader<CsvRecord> reader =
        CsvReader.builder()
            .fieldSeparator(separator)
            .allowExtraFields(true)
            .allowMissingFields(true)
            .ofCsvRecord(text)) {
      for (CsvRecord each : reader) {
        if (records.size() > size.lines) {
          wrong(
              new Place((int) each.getStartingLineNumber(), 1),
              "the file",
              "it has more than " + size.lines + " lines",
              "cut in several goes, each on its own");
          extent = Extent.CUT_OFF;
          return records;
        }
        records.add(each);
      }
    } catch (CsvParseException e) {
      int line = records.isEmpty() ? 1 : (int) records.getLast().getStartingLineNumber() + 1;
      quotes(new Place(line, 1));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return records;
  }

  private void quotes(Place place) {
    extent = Extent.CUT_OFF;
    wrong(
        place,
        "the line",
        "a quote is opened and not closed, or something stands after a closed one",
        "write a quote within quotes twice, or leave all quotes out: 31 1/2 in");
  }

  private static List<Cell> cells(CsvRecord line, CsvText places) {
    places.goTo(line.getStartingLineNumber());
    List<Cell> cells = new ArrayList<>();
    for (String field : line.getFields()) {
      cells.add(new Cell(field.strip(), places.next(), places.decimals()));
    }
    return cells;
  }

  /** The names of the columns, empty for those that say nothing. */
  private List<String> head(List<Cell> cells) {
    List<String> names = new ArrayList<>();
    for (Cell cell : cells) {
      names.add(known(cell, names));
    }
    for (Column column : columns) {
      if (column.need() == Column.Need.REQUIRED && !names.contains(column.name())) {
        wrong(
            Place.START,
            "the first line",
            "it has no column '" + column.name() + "'",
            "write the columns " + String.join(", ", names()) + " in any order");
      }
    }
    return names;
  }

  private List<String> names() {
    return columns.stream().map(Column::name).toList();
  }

  private String known(Cell cell, List<String> before) {
    String name = cell.text().toLowerCase(Locale.ROOT);
    if (name.isEmpty()) {
      return "";
    }
    if (!names().contains(name)) {
      wrong(
          cell.place(),
          "column " + Problem.quoted(cell.text()),
          "there is no such column",
          Spelling.nearest(name, names())
              .map(near -> "did you mean '" + near + "'?")
              .orElse("the columns are " + String.join(", ", names())));
      return "";
    }
    if (before.contains(name)) {
      wrong(cell.place(), "column '" + name + "'", "it stands twice", "leave one of them out");
    }
    return name;
  }

  private void row(List<Cell> cells, List<String> names, char separator) {
    if (cells.stream().allMatch(Cell::isEmpty)) {
      return;
    }
    Map<String, Cell> byName = new LinkedHashMap<>();
    for (int i = 0; i < Math.min(cells.size(), names.size()); i++) {
      if (!names.get(i).isEmpty()) {
        byName.putIfAbsent(names.get(i), cells.get(i));
      }
    }
    for (int i = names.size(); i < cells.size(); i++) {
      if (!cells.get(i).isEmpty()) {
        wrong(
            cells.get(i).place(),
            Problem.quoted(cells.get(i).text()),
            "there are more cells than columns",
            "put quotes round a cell that holds a " + named(separator));
      }
    }
    rows.add(new Row(new Place(cells.getFirst().place().line(), 1), byName));
  }

  /** Where it is not the usual one, it is told that the first line chose it. */
  private static String named(char separator) {
    return separator == ',' ? "comma" : "semicolon, which parts the cells as in the first line";
  }

  private void wrong(Place place, String thing, String rule, String remedy) {
    problems.add(new Problem(place, thing, rule, remedy));
  }
}
