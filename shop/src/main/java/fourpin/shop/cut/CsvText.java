package fourpin.shop.cut;

import fourpin.shop.yaml.Place;
import java.util.Optional;

/** Finds the places of cells in the text of a table; the cells themselves are read by a library. */
final class CsvText {

  private static final char QUOTE = '"';

  private final String text;
  private final char separator;
  private int at;
  private int line = 1;
  private int column = 1;
  private Optional<Place> open = Optional.empty();

  CsvText(String text, char separator) {
    this.text = text;
    this.separator = separator;
  }

  /** Goes on to the start of a line, numbered from 1. */
  void goTo(long wanted) {
    while (line < wanted && at < text.length()) {
      step();
    }
  }

  /** The place of the next cell, which is then passed over. */
  Place next() {
    Place place = new Place(line, column);
    if (at < text.length() && text.charAt(at) == QUOTE) {
      passQuoted(place);
    }
    while (at < text.length() && text.charAt(at) != separator && !isLineEnd()) {
      step();
    }
    if (at < text.length() && text.charAt(at) == separator) {
      step();
    }
    return place;
  }

  /** A comma that parts no cells is a decimal one. */
  Cell.Decimals decimals() {
    return separator == ',' ? Cell.Decimals.POINT : Cell.Decimals.POINT_OR_COMMA;
  }

  /** Where a quote was opened that is never closed. */
  Optional<Place> open() {
    return open;
  }

  /** A quote within quotes is written twice, and so opens again at once. */
  private void passQuoted(Place start) {
    do {
      step();
      while (at < text.length() && text.charAt(at) != QUOTE) {
        step();
      }
      open = at == text.length() ? Optional.of(start) : open;
      step();
    } while (at < text.length() && text.charAt(at) == QUOTE);
  }

  private boolean isLineEnd() {
    return text.charAt(at) == '\n' || text.charAt(at) == '\r';
  }

  private void step() {
    if (at >= text.length()) {
      return;
    }
    int c = text.codePointAt(at);
    boolean lineEnd =
        c == '\n' || (c == '\r' && (at + 1 == text.length() || text.charAt(at + 1) != '\n'));
    at += Character.charCount(c);
    line += lineEnd ? 1 : 0;
    column = lineEnd ? 1 : column + 1;
  }
}
