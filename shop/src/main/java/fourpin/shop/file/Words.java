package fourpin.shop.file;

import fourpin.job.Material;
import fourpin.job.QuantityReader;
import fourpin.job.Setting;
import fourpin.job.SettingReader;
import fourpin.job.SettingValue;
import fourpin.measure.Length;
import fourpin.measure.LengthReader;
import fourpin.measure.Quantity;
import fourpin.measure.Reading;
import fourpin.measure.Spelling;
import fourpin.measure.Unit;
import fourpin.reference.Catalogue;
import fourpin.reference.Listed;
import fourpin.shop.file.Word.Grain;
import fourpin.shop.file.Word.Shape;
import java.math.BigDecimal;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The single values of a file. */
final class Words {

  private static final Pattern DIGITS = Pattern.compile("\\d{1,9}");
  private static final Pattern BARE = Pattern.compile("[\\d.]+");
  private static final Pattern AMOUNT = Pattern.compile("\\d{1,9}(\\.\\d{1,2})?");
  private static final Pattern LONG_AMOUNT = Pattern.compile("\\d{10,}(\\.\\d{1,2})?");

  private static final double MOST_MONEY = 999_999_999.99;

  private Words() {}

  /** A length within limits, both written as in a job file with a unit. */
  static Word<Length> length(String least, String most) {
    Length low = limit(least);
    Length high = limit(most);
    return new Word<>(
        "a length",
        "31 1/2 in or 800 mm",
        new Shape.Measure(least, most),
        (text, c) ->
            new LengthReader(c.unit()).read(text).then(l -> within(l, low, high, text, c.unit())));
  }

  private static Length limit(String text) {
    return new LengthReader(Unit.MILLIMETRE).read(text).orThrow();
  }

  private static Reading<Length> within(
      Length length, Length low, Length high, String text, Unit unit) {
    if (length.isAtLeast(low) && high.isAtLeast(length)) {
      return Reading.good(length);
    }
    String rule =
        "it is from "
            + Quantity.of(low).text(unit)
            + " to "
            + Quantity.of(high).text(unit)
            + " here";
    Unit other = unit.customary() ? Unit.MILLIMETRE : Unit.INCH;
    boolean meant =
        BARE.matcher(text).matches()
            && new LengthReader(other).read(text) instanceof Reading.Good<Length>(Length l)
            && l.isAtLeast(low)
            && high.isAtLeast(l);
    return Reading.bad(
        rule,
        meant
            ? "write '" + text + " " + other.symbol() + "' if that is meant"
            : "check the number and its unit");
  }

  /** Words of the maker's own on one line. */
  static Word<String> free(String what, String example, int longest) {
    return new Word<>(what, example, new Shape.Free(longest), (text, c) -> line(text, longest));
  }

  private static Reading<String> line(String text, int longest) {
    if (text.isEmpty()) {
      return Reading.bad("it is empty", "write something between the quotes");
    }
    if (text.codePointCount(0, text.length()) > longest) {
      return Reading.bad("it has more than " + longest + " characters", "shorten it");
    }
    if (text.contains("\n") || text.contains("\r")) {
      return Reading.bad("it goes over more than one line", "write it on one line");
    }
    return Signs.arePrinted(text)
        ? Reading.good(text)
        : Reading.bad(
            "it holds a tab or a sign that does not print",
            "write it in letters, figures and signs");
  }

  static Word<Integer> whole(int least, int most) {
    return new Word<>(
        "a whole number",
        Integer.toString(Math.max(least, 1)),
        new Shape.Number(Grain.WHOLE, least, most),
        (text, c) -> whole(text, least, most));
  }

  private static Reading<Integer> whole(String text, int least, int most) {
    boolean fits =
        DIGITS.matcher(text).matches()
            && Integer.parseInt(text) >= least
            && Integer.parseInt(text) <= most;
    return fits
        ? Reading.good(Integer.valueOf(text))
        : Reading.bad(
            "it is a whole number from " + least + " to " + most + " here",
            DIGITS.matcher(text).matches() ? "check the number" : "write digits only");
  }

  static Word<BigDecimal> money() {
    return new Word<>(
        "an amount of money",
        "92.50",
        new Shape.Number(Grain.DECIMAL, 0, MOST_MONEY),
        (text, c) -> amount(text));
  }

  private static Reading<BigDecimal> amount(String text) {
    if (AMOUNT.matcher(text).matches()) {
      return Reading.good(new BigDecimal(text));
    }
    return LONG_AMOUNT.matcher(text).matches()
        ? Reading.bad("an amount has at most nine digits before a point", "check the number")
        : Reading.bad(
            "an amount has digits, with at most two after a point",
            "write it like 92.50, without the currency");
  }

  /** One constant of an enum, in small letters with hyphens. */
  static <E extends Enum<E>> Word<E> choice(Class<E> type) {
    Map<String, E> choices = new LinkedHashMap<>();
    for (E constant : type.getEnumConstants()) {
      choices.put(plain(constant), constant);
    }
    return choice(choices);
  }

  static String plain(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** One of some words. */
  static Word<String> choice(Collection<String> words) {
    Map<String, String> choices = new LinkedHashMap<>();
    words.forEach(w -> choices.put(w, w));
    return choice(choices);
  }

  static <E> Word<E> choice(Map<String, E> choices) {
    List<String> words = List.copyOf(choices.keySet());
    String all = String.join(", ", words);
    return new Word<>(
        "one of " + all,
        words.getFirst(),
        new Shape.Choice(words),
        (text, c) ->
            Optional.ofNullable(choices.get(text))
                .map(Reading::good)
                .orElseGet(() -> Reading.bad("it is one of " + all, meant(text, words))));
  }

  /** What may have been meant, as a remedy. */
  static String meant(String word, Collection<String> known) {
    return Spelling.nearest(word, known)
        .map(k -> "did you mean '" + k + "'?")
        .orElse("choose one of them");
  }

  /** A quantity within limits, both in the metric unit. */
  static Word<Quantity> quantity(QuantityReader reader, String example, double least, double most) {
    return new Word<>(
        reader.what(),
        example,
        Shape.Measure.ANY,
        (text, c) -> reader.read(text).then(q -> within(q, least, most, c.unit())));
  }

  private static Reading<Quantity> within(Quantity q, double least, double most, Unit unit) {
    return q.value() >= least && q.value() <= most
        ? Reading.good(q)
        : Reading.bad(
            "it is from "
                + Quantity.of(least, q.unit()).text(unit)
                + " to "
                + Quantity.of(most, q.unit()).text(unit)
                + " here",
            "check the number and its unit");
  }

  /** A row of a reference table. */
  static <T extends Listed> Word<String> row(String what, String example, Catalogue<T> table) {
    return new Word<>(
        what,
        example,
        new Shape.Row(table.rows().stream().map(Listed::name).toList()),
        (text, c) ->
            table
                .find(text)
                .map(row -> Reading.good(row.name()))
                .orElseGet(
                    () -> Reading.bad("the reference tables do not list it", near(text, table))));
  }

  private static <T extends Listed> String near(String text, Catalogue<T> table) {
    List<String> near = table.nearest(text);
    String quoted = near.stream().map(n -> "'" + n + "'").collect(Collectors.joining(", "));
    return near.isEmpty()
        ? "choose from the list in the documents"
        : "did you mean " + quoted + "?";
  }

  /** The name of a material of the job, of one of some kinds. */
  static Word<String> material(Material.Kind... kinds) {
    List<Material.Kind> fit = List.of(kinds);
    return new Word<>(
        "the name of a material",
        "oak-ply",
        new Shape.OfMaterial(fit),
        (text, c) ->
            c.materials().isEmpty() || c.materials().containsKey(text)
                ? ofKind(text, c, fit)
                : Reading.bad("no material of the job has this name", meantMaterial(text, c)));
  }

  /** The name of a case of the job; whether there is one is seen when all are read. */
  static Word<String> ofCase() {
    return new Word<>(
        "a case of the job", "base", new Shape.OfCase(), (text, c) -> line(text, Named.LONGEST));
  }

  private static String meantMaterial(String text, Context c) {
    return Spelling.nearest(text, c.materials().keySet())
        .map(k -> "did you mean '" + k + "'?")
        .orElse("state it under materials");
  }

  private static Reading<String> ofKind(String text, Context c, List<Material.Kind> fit) {
    boolean fits = c.material(text).map(m -> fit.contains(m.kind())).orElse(true);
    String kinds = fit.stream().map(Words::plain).collect(Collectors.joining(" or "));
    return fits
        ? Reading.good(text)
        : Reading.bad(
            "this material is of kind " + c.material(text).map(m -> plain(m.kind())).orElse(""),
            "name one of kind " + kinds);
  }

  /** The value of a setting. */
  static Word<SettingValue> setting(Setting setting) {
    return new Word<>(
        "a value",
        Stream.of(setting.inchDefault(), setting.least())
            .filter(t -> !t.isEmpty())
            .findFirst()
            .orElse(""),
        shape(setting),
        (text, c) -> SettingReader.read(setting, text, c.unit()));
  }

  private static Shape shape(Setting setting) {
    return switch (setting.kind()) {
      case LENGTH, LINE_LOAD -> new Shape.Measure(setting.least(), setting.most());
      case NUMBER -> number(setting, Grain.DECIMAL);
      case COUNT -> number(setting, Grain.WHOLE);
      case CHOICE -> new Shape.Choice(setting.choices());
    };
  }

  private static Shape number(Setting setting, Grain grain) {
    return new Shape.Number(
        grain, Double.parseDouble(setting.least()), Double.parseDouble(setting.most()));
  }
}
