package fourpin.shop.cut;

import fourpin.shop.yaml.Place;
import java.util.regex.Pattern;

/**
 * What stands in a column of a row, without spaces round it, and where.
 *
 * @param decimals how its numbers may be written
 */
record Cell(String text, Place place, Decimals decimals) {

  private static final Pattern COMMA = Pattern.compile("(?<=\\d),(?=\\d)");

  /** What stands before the decimals of a number. */
  enum Decimals {
    POINT,
    /** Either, because no comma parts cells. */
    POINT_OR_COMMA
  }

  boolean isEmpty() {
    return text.isEmpty();
  }

  /** As a number is read: with a point. */
  String number() {
    boolean comma = decimals == Decimals.POINT_OR_COMMA && !text.contains(".");
    return comma ? COMMA.matcher(text).replaceAll(".") : text;
  }

  /** Some of its text. */
  Cell part(String some) {
    return new Cell(some.strip(), place, decimals);
  }
}
