package fourpin.shop.yaml;

import java.util.Locale;

/**
 * Something in a file that cannot be taken, and what to do about it.
 *
 * @param thing what it is about, with its value: {@code cases.bookcase.quantity '0'}
 * @param rule what it breaks, as a clause
 * @param remedy what to write instead, as a clause
 */
public record Problem(Place place, String thing, String rule, String remedy) {

  private static final int LONGEST_VALUE = 40;

  /** {@code reading-room.yaml:7:15: error: room.width '9,5': a comma in a length. Write ...} */
  public String text(String file) {
    return printable(file)
        + ":"
        + place.line()
        + ":"
        + place.column()
        + ": error: "
        + thing
        + ": "
        + rule
        + ". "
        + sentence(remedy);
  }

  /** The same of a file that was not opened. */
  public static String ofFile(String file, String rule, String remedy) {
    return printable(file) + ": error: " + rule + ". " + sentence(remedy);
  }

  /** A text between quotes on one line, cut short when long, unprintable characters as escapes. */
  public static String quoted(String text) {
    boolean fits = text.codePointCount(0, text.length()) <= LONGEST_VALUE;
    String shown = fits ? text : text.substring(0, text.offsetByCodePoints(0, LONGEST_VALUE)) + "…";
    return "'" + printable(shown) + "'";
  }

  private static String sentence(String clause) {
    String start = clause.substring(0, 1).toUpperCase(Locale.ROOT) + clause.substring(1);
    return start.endsWith("?") || start.endsWith(".") ? start : start + ".";
  }

  private static String printable(String text) {
    StringBuilder out = new StringBuilder();
    text.codePoints()
        .forEach(
            c -> {
              if (isPrintable(c)) {
                out.appendCodePoint(c);
              } else {
                out.append("\\u").append(String.format(Locale.ROOT, "%04x", c));
              }
            });
    return out.toString();
  }

  /** Letters that turn the reading direction could make a message say something else. */
  private static boolean isPrintable(int c) {
    return switch (Character.getType(c)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.UNASSIGNED,
          Character.PRIVATE_USE,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          false;
      default -> true;
    };
  }
}
