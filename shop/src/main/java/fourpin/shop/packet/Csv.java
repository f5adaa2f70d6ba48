package fourpin.shop.packet;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A table as comma-separated values: RFC 4180, with CRLF line ends and quotes where they are
 * needed. A spreadsheet takes a text that starts with one of = + - @ for a formula and would run
 * it; such a text gets an apostrophe in front, unless it is a number.
 */
record Csv(List<String> header, List<List<String>> rows) {

  private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");
  private static final String FORMULA_STARTS = "=+-@\t\r";

  Csv {
    rows = List.copyOf(rows);
    for (List<String> row : rows) {
      if (row.size() != header.size()) {
        throw new IllegalArgumentException("a row of " + row.size() + " under " + header.size());
      }
    }
  }

  String text() {
    return line(header) + rows.stream().map(Csv::line).collect(Collectors.joining());
  }

  private static String line(List<String> cells) {
    return cells.stream().map(Csv::cell).collect(Collectors.joining(",", "", "\r\n"));
  }

  private static String cell(String text) {
    String safe = isFormula(text) ? "'" + text : text;
    boolean quote = safe.chars().anyMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
    return quote ? '"' + safe.replace("\"", "\"\"") + '"' : safe;
  }

  private static boolean isFormula(String text) {
    return !text.isEmpty()
        && FORMULA_STARTS.indexOf(text.charAt(0)) >= 0
        && !NUMBER.matcher(text).matches();
  }
}
