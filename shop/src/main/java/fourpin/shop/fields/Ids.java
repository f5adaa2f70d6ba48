package fourpin.shop.fields;

import java.util.Locale;

/** Words that name things on a page. */
final class Ids {

  private Ids() {}

  /** Names hold no underscore afterwards, so that what is joined by them is told apart. */
  static String below(String id, String key) {
    String slug = key.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-");
    return id.isEmpty() ? slug : id + "_" + slug;
  }

  /** "plate-setback" as "Plate setback". */
  static String label(String key) {
    String words = key.replace('-', ' ').replace(".", ": ");
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  /** "a kick" as "kick". */
  static String bare(String what) {
    return what.replaceFirst("^an? ", "");
  }
}
