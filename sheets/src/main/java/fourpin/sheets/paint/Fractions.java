package fourpin.sheets.paint;

import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * Sets fractions as fractions, so that 31 1/2 cannot be read as 311/2: halves to eighths with their
 * own letters, others with raised and lowered figures round a fraction slash.
 */
public final class Fractions {

  private static final Pattern FRACTION =
      Pattern.compile(
          "(?<![\\p{L}\\d/.,:-])(?:(\\d+)[ -])?(\\d{1,3})[/⁄](\\d{1,4})(?![\\p{L}\\d/])");
  private static final Map<String, String> LETTERS =
      Map.of("1/2", "½", "1/4", "¼", "3/4", "¾", "1/8", "⅛", "3/8", "⅜", "5/8", "⅝", "7/8", "⅞");
  private static final String RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹";
  private static final String LOWERED = "₀₁₂₃₄₅₆₇₈₉";
  private static final char NO_BREAK_SPACE = '\u00a0';

  private Fractions() {}

  public static String set(String text) {
    boolean possible = text.indexOf('/') >= 0 || text.indexOf('⁄') >= 0;
    return possible ? FRACTION.matcher(text).replaceAll(Fractions::set) : text;
  }

  private static String set(MatchResult found) {
    String fraction = set(found.group(2), found.group(3));
    return found.group(1) == null ? fraction : found.group(1) + NO_BREAK_SPACE + fraction;
  }

  private static String set(String numerator, String denominator) {
    String letter = LETTERS.get(numerator + "/" + denominator);
    return letter != null
        ? letter
        : figures(numerator, RAISED) + "⁄" + figures(denominator, LOWERED);
  }

  private static String figures(String digits, String alphabet) {
    StringBuilder figures = new StringBuilder();
    digits.chars().forEach(digit -> figures.append(alphabet.charAt(digit - '0')));
    return figures.toString();
  }
}
