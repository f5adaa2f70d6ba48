package fourpin.shop.yaml;

import java.util.Comparator;

/** A place in a text, as editors count: lines and columns from 1, columns in whole characters. */
public record Place(int line, int column) implements Comparable<Place> {

  public static final Place START = new Place(1, 1);

  private static final Comparator<Place> ORDER =
      Comparator.comparingInt(Place::line).thenComparingInt(Place::column);

  /** Where the first {@code count} characters of the text end. */
  static Place after(String text, int count) {
    String before = text.substring(0, Math.min(count, text.length()));
    int lineStart = before.lastIndexOf('\n') + 1;
    long lines = before.chars().filter(c -> c == '\n').count();
    return new Place((int) lines + 1, before.codePointCount(lineStart, before.length()) + 1);
  }

  @Override
  public int compareTo(Place other) {
    return ORDER.compare(this, other);
  }
}
