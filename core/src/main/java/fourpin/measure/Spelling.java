package fourpin.measure;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Finds what a maker may have meant by a word that is not known. */
public final class Spelling {

  /** A word may differ by one letter, and by one more for every so many letters that it has. */
  private static final int LETTERS_PER_SLIP = 4;

  private Spelling() {}

  /**
   * The candidate with the fewest letters put in, left out, changed or swapped with a neighbour, if
   * they are few for the word's length; of several as good, one that begins alike, then the first.
   * Case counts for nothing.
   */
  public static Optional<String> nearest(String word, Collection<String> candidates) {
    String plain = plain(word);
    return candidates.stream()
        .filter(candidate -> slips(plain, plain(candidate)) < 2 + word.length() / LETTERS_PER_SLIP)
        .min(
            Comparator.<String>comparingInt(candidate -> slips(plain, plain(candidate)))
                .thenComparingInt(candidate -> -commonStart(plain, plain(candidate))));
  }

  private static int commonStart(String a, String b) {
    int at = 0;
    while (at < a.length() && at < b.length() && a.charAt(at) == b.charAt(at)) {
      at++;
    }
    return at;
  }

  private static String plain(String word) {
    return word.strip().toLowerCase(Locale.ROOT);
  }

  /** The optimal string alignment distance, kept for three rows at a time. */
  static int slips(String a, String b) {
    int[] before = new int[b.length() + 1];
    int[] above = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      above[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int[] row = new int[b.length() + 1];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int changed = above[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        row[j] = Math.min(changed, Math.min(above[j], row[j - 1]) + 1);
        if (swapped(a, i, b, j)) {
          row[j] = Math.min(row[j], before[j - 2] + 1);
        }
      }
      before = above;
      above = row;
    }
    return above[b.length()];
  }

  private static boolean swapped(String a, int i, String b, int j) {
    return i > 1
        && j > 1
        && a.charAt(i - 1) == b.charAt(j - 2)
        && a.charAt(i - 2) == b.charAt(j - 1);
  }
}
