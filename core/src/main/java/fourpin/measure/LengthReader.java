package fourpin.measure;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a length the ways makers write one: {@code 31 1/2}, {@code 31-1/2"}, {@code 7' 2 1/4"},
 * {@code 5⁄8 in}, {@code 5½"}, {@code 800 mm}, {@code 1.2 m}. A bare number is in the unit given to
 * the reader. Nothing is guessed: whatever could be meant two ways is refused with what to write
 * instead. The result is exact or refused. Independent of locale.
 *
 * @param bare the unit of a number that has none
 */
public record LengthReader(Unit bare) {

  /** Longer texts are refused unread, so that hostile input costs nothing. */
  private static final int LONGEST_TEXT = 60;

  private static final int MOST_DIGITS = 18;

  private static final String NUMBER = "\\d+\\.\\d+|\\d+|\\.\\d+";

  /**
   * A whole number and its fraction are parted by spaces or by a hyphen alone, lest it be a minus
   * sign.
   */
  private static final Pattern FORM =
      Pattern.compile(
          "(?:(?<feet>"
              + NUMBER
              + ")\\s*(?:'|ft\\.?|foot|feet)(?:\\s*-)?\\s*)?"
              + "(?:(?<whole>"
              + NUMBER
              + ")(?![/\\d])(?:\\s+|-(?=\\d))?)?"
              + "(?:(?<numerator>\\d+)\\s*/\\s*(?<denominator>\\d+))?"
              + "\\s*(?<unit>\"|[a-z]+)?(?:(?<=[a-z])\\.)?");

  private static final Map<String, Unit> UNITS =
      Map.ofEntries(
          Map.entry("mm", Unit.MILLIMETRE),
          Map.entry("millimetre", Unit.MILLIMETRE),
          Map.entry("millimetres", Unit.MILLIMETRE),
          Map.entry("millimeter", Unit.MILLIMETRE),
          Map.entry("millimeters", Unit.MILLIMETRE),
          Map.entry("cm", Unit.CENTIMETRE),
          Map.entry("centimetre", Unit.CENTIMETRE),
          Map.entry("centimetres", Unit.CENTIMETRE),
          Map.entry("centimeter", Unit.CENTIMETRE),
          Map.entry("centimeters", Unit.CENTIMETRE),
          Map.entry("m", Unit.METRE),
          Map.entry("metre", Unit.METRE),
          Map.entry("metres", Unit.METRE),
          Map.entry("meter", Unit.METRE),
          Map.entry("meters", Unit.METRE),
          Map.entry("\"", Unit.INCH),
          Map.entry("in", Unit.INCH),
          Map.entry("inch", Unit.INCH),
          Map.entry("inches", Unit.INCH));

  private static final String VULGAR = "½¼¾⅛⅜⅝⅞⅓⅔⅕⅖⅗⅘⅙⅚";
  private static final String[] SPELLED = {
    "1/2", "1/4", "3/4", "1/8", "3/8", "5/8", "7/8", "1/3", "2/3", "1/5", "2/5", "3/5", "4/5",
    "1/6", "5/6"
  };
  private static final BigDecimal INCHES_PER_FOOT = BigDecimal.valueOf(12);

  /** Reads one length of zero or more. */
  public Reading<Length> read(String text) {
    if (text.length() > LONGEST_TEXT) {
      return Reading.bad(
          "a length has at most " + LONGEST_TEXT + " characters",
          "write it like 31 1/2 in or 800 mm");
    }
    String plain = plain(text);
    return suspicious(plain).orElseGet(() -> parse(plain));
  }

  private Reading<Length> parse(String plain) {
    Matcher m = FORM.matcher(plain);
    if (!m.matches()
        || (m.group("feet") == null && m.group("whole") == null && m.group("numerator") == null)) {
      return Reading.bad(
          "this is not a length", "write it like 31 1/2 in, 7' 2 1/4\", 800 mm or 1.2 m");
    }
    return m.group("feet") == null ? single(m) : withFeet(m);
  }

  private Reading<Length> single(Matcher m) {
    String name = Optional.ofNullable(m.group("unit")).orElse("");
    if (!name.isEmpty() && !UNITS.containsKey(name)) {
      return Reading.bad(
          "'" + name + "' is not a unit of length", "use mm, cm, m, in, ft, \" or '");
    }
    Unit unit = name.isEmpty() ? bare : UNITS.getOrDefault(name, bare);
    if (name.isEmpty() && m.group("numerator") != null && !bare.customary()) {
      return Reading.bad(
          "a fraction without a unit, in a job that is in " + bare.symbol(),
          "write the unit, as in 5/8 in");
    }
    return amount(m).then(amount -> exact(amount, unit));
  }

  private static Reading<Length> withFeet(Matcher m) {
    Reading<Length> feet = exact(Amount.of(m.group("feet")), Unit.FOOT);
    boolean more = m.group("whole") != null || m.group("numerator") != null;
    if (!more) {
      return m.group("unit") == null
          ? feet
          : Reading.bad("a unit stands after the feet", "write 7' or 7 ft");
    }
    if (m.group("feet").contains(".")) {
      return Reading.bad("feet with decimals and inches together", "write either 7.5 ft or 7' 6\"");
    }
    if (m.group("unit") == null || UNITS.get(m.group("unit")) != Unit.INCH) {
      return Reading.bad("what follows the feet must say inches", "write it like 7' 2 1/4\"");
    }
    return amount(m)
        .then(inches -> underAFoot(inches))
        .then(
            inches -> feet.then(f -> exact(inches, Unit.INCH).then(i -> Reading.good(f.plus(i)))));
  }

  private static Reading<Amount> underAFoot(Amount inches) {
    boolean fits = inches.numerator().compareTo(INCHES_PER_FOOT.multiply(inches.denominator())) < 0;
    return fits
        ? Reading.good(inches)
        : Reading.bad("inches after feet stay below 12", "carry the foot: 8' 2\" for 7' 14\"");
  }

  private static Reading<Amount> amount(Matcher m) {
    String whole = Optional.ofNullable(m.group("whole")).orElse("0");
    if (m.group("numerator") == null) {
      return Reading.good(Amount.of(whole));
    }
    BigDecimal top = new BigDecimal(m.group("numerator"));
    BigDecimal below = new BigDecimal(m.group("denominator"));
    if (below.signum() == 0) {
      return Reading.bad("a fraction over zero", "correct the number under the stroke");
    }
    if (m.group("whole") != null && (whole.contains(".") || top.compareTo(below) >= 0)) {
      return Reading.bad("a whole number goes with a fraction below one", "write it like 31 1/2");
    }
    return Reading.good(new Amount(new BigDecimal(whole).multiply(below).add(top), below));
  }

  /** A number of units as one fraction, so that nothing is rounded before the unit is known. */
  private record Amount(BigDecimal numerator, BigDecimal denominator) {
    static Amount of(String number) {
      return new Amount(new BigDecimal(number), BigDecimal.ONE);
    }
  }

  private static Reading<Length> exact(Amount amount, Unit unit) {
    BigDecimal[] parts =
        amount
            .numerator()
            .multiply(BigDecimal.valueOf(unit.picometres()))
            .divideAndRemainder(amount.denominator());
    if (parts[1].signum() != 0 || parts[0].stripTrailingZeros().scale() > 0) {
      return Reading.bad(
          "finer than Fourpin keeps (whole picometres: 256ths and ten-thousandths of an inch, micrometres)",
          "write a decimal with fewer digits, or a fraction in halves, quarters, eighths ...");
    }
    if (parts[0].precision() - parts[0].scale() > MOST_DIGITS) {
      return Reading.bad("longer than Fourpin can keep", "check the number and its unit");
    }
    return Reading.good(new Length(parts[0].longValueExact(), unit));
  }

  private static Optional<Reading<Length>> suspicious(String plain) {
    if (plain.contains(",")) {
      return Optional.of(
          Reading.bad(
              "a comma in a length", "write decimals with a point, and no thousands marks"));
    }
    if (plain.startsWith("-") || plain.startsWith("−")) {
      return Optional.of(Reading.bad("a length is not negative", "leave the minus sign out"));
    }
    return plain.isEmpty()
        ? Optional.of(Reading.bad("no length was given", "write it like 31 1/2 in or 800 mm"))
        : Optional.empty();
  }

  /** Small letters, plain spaces, and one sign each for feet, inches and the fraction stroke. */
  private static String plain(String text) {
    StringBuilder out = new StringBuilder();
    for (char c : text.strip().toLowerCase(Locale.ROOT).toCharArray()) {
      int vulgar = VULGAR.indexOf(c);
      out.append(vulgar < 0 ? Character.toString(unified(c)) : spelled(vulgar, out));
    }
    return out.toString().replace("''", "\"").strip();
  }

  /** With spaces that keep the digits around it out: "½4" is refused, not read as 1/24. */
  private static String spelled(int vulgar, StringBuilder before) {
    boolean afterHyphen = !before.isEmpty() && unified(before.charAt(before.length() - 1)) == '-';
    return (afterHyphen ? "" : " ") + SPELLED[vulgar] + " ";
  }

  private static char unified(char c) {
    return switch (c) {
      case '⁄', '∕' -> '/';
      case '″', '“', '”' -> '"';
      case '′', '‘', '’' -> '\'';
      case '‐', '‑', '–' -> '-';
      case '\u00a0', '\u2009', '\u202f', '\t' -> ' ';
      default -> c;
    };
  }
}
