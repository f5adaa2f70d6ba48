package fourpin.shop.web;

import fourpin.measure.Length;
import fourpin.measure.LengthReader;
import fourpin.measure.LengthStyle;
import fourpin.measure.Reading;
import fourpin.measure.Unit;
import fourpin.shop.fields.Field;
import fourpin.shop.file.Signs;
import fourpin.shop.store.Piece;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/** A piece of the rack from what was typed, or what is wrong at which blank. */
final class RackFields {

  private static final int LONGEST_MATERIAL = 40;
  private static final int LONGEST_NOTE = 80;
  private static final int MOST_PIECES = 9_999;
  private static final Length LARGEST = Length.mm(10_000);

  private final Unit unit;
  private final UnaryOperator<String> form;
  private final Map<String, Typing.Typed> typed = new LinkedHashMap<>();

  private RackFields(Unit unit, UnaryOperator<String> form) {
    this.unit = unit;
    this.form = form;
  }

  /** What comes of the blanks. */
  sealed interface Outcome {
    record Good(Piece piece) implements Outcome {}

    record Wrong(Typing typing) implements Outcome {}
  }

  static List<Field.Shown> blanks(Unit unit) {
    String numbers = unit.customary() ? "bare numbers are inches" : "bare numbers are mm";
    return List.of(
        shown("material", "Material", List.of(), "as the shop calls it"),
        shown(
            "form",
            "What it is",
            Stream.of(Piece.Form.values()).map(f -> Field.Choice.of(plain(f))).toList(),
            ""),
        shown("thickness", "Thickness", List.of(), numbers),
        shown("length", "Length", List.of(), "along the grain"),
        shown("width", "Width", List.of(), "across the grain"),
        shown("count", "How many", List.of(), "1 if left empty"),
        shown("price", "Price of one", List.of(), "may be left empty"),
        shown("note", "Note", List.of(), "where it stands, what it is left from"));
  }

  private static Field.Shown shown(
      String key, String label, List<Field.Choice> choices, String note) {
    String written = choices.isEmpty() ? "" : choices.getFirst().value();
    return new Field.Shown("rack_" + key, label, choices, written, "", note);
  }

  static String plain(Piece.Form form) {
    return form.name().toLowerCase(Locale.ROOT);
  }

  /**
   * @param form what was typed for each key
   */
  static Outcome read(Unit unit, UnaryOperator<String> form) {
    return new RackFields(unit, form).read();
  }

  private Outcome read() {
    Optional<String> material = line("material", 1, LONGEST_MATERIAL);
    Optional<Length> thickness = length("thickness");
    Optional<Length> length = length("length");
    Optional<Length> width = length("width");
    Optional<Integer> count = count();
    Optional<Optional<BigDecimal>> price = price();
    Optional<String> note = line("note", 0, LONGEST_NOTE);
    Piece.Form kind =
        Stream.of(Piece.Form.values())
            .filter(f -> plain(f).equals(word("form")))
            .findFirst()
            .orElse(Piece.Form.OFFCUT);
    typed.put("rack_form", new Typing.Typed(plain(kind), Optional.empty()));
    boolean good = typed.values().stream().allMatch(t -> t.trouble().isEmpty());
    return good
        ? new Outcome.Good(
            new Piece(
                material.orElseThrow(),
                kind,
                thickness.orElseThrow(),
                length.orElseThrow(),
                width.orElseThrow(),
                count.orElseThrow(),
                price.orElseThrow(),
                note.orElseThrow()))
        : new Outcome.Wrong(new Typing(typed));
  }

  private String word(String key) {
    return form.apply(key).strip();
  }

  private <T> Optional<T> take(String key, Reading<T> reading) {
    return switch (reading) {
      case Reading.Good<T>(T good) -> {
        typed.put("rack_" + key, new Typing.Typed(word(key), Optional.empty()));
        yield Optional.of(good);
      }
      case Reading.Bad<T>(String rule, String remedy) -> {
        typed.put("rack_" + key, Typing.Typed.wrong(word(key), rule, remedy));
        yield Optional.empty();
      }
    };
  }

  private Optional<Length> length(String key) {
    return take(
        key,
        new LengthReader(unit)
            .read(word(key))
            .then(
                l ->
                    l.isPositive() && LARGEST.isAtLeast(l)
                        ? Reading.good(l)
                        : Reading.bad("it is above 0, and at most 10 m", "check the number")));
  }

  private Optional<String> line(String key, int least, int longest) {
    String word = word(key);
    int size = word.codePointCount(0, word.length());
    boolean fits = size >= least && size <= longest && Signs.arePrinted(word);
    return take(
        key,
        fits
            ? Reading.good(word)
            : Reading.bad(
                "it has from " + least + " to " + longest + " characters on one line",
                "write it so"));
  }

  private Optional<Integer> count() {
    return take("count", count(word("count").isEmpty() ? "1" : word("count")));
  }

  static Reading<Integer> count(String word) {
    boolean fits = word.matches("[1-9]\\d{0,3}") && Integer.parseInt(word) <= MOST_PIECES;
    return fits
        ? Reading.good(Integer.valueOf(word))
        : Reading.bad(
            "it is a whole number from 1 to " + MOST_PIECES, "take the line out if none is left");
  }

  private Optional<Optional<BigDecimal>> price() {
    String word = word("price");
    Reading<Optional<BigDecimal>> price =
        word.isEmpty()
            ? Reading.good(Optional.empty())
            : word.matches("\\d{1,9}(\\.\\d{1,2})?")
                ? Reading.good(Optional.of(new BigDecimal(word)))
                : Reading.bad(
                    "an amount has digits, with at most two after a point",
                    "write it like 92.50, without the currency");
    return take("price", price);
  }

  /** A length in its own unit, as it is printed. */
  static String shown(Length length) {
    return ShopPage.style(length.unit()).text(length);
  }

  /** A length so that it reads the same again, in its own unit where that can print it. */
  static String written(Length length) {
    List<LengthStyle> styles =
        List.of(
            ShopPage.style(length.unit()),
            new LengthStyle(Unit.INCH, 256),
            new LengthStyle(Unit.MILLIMETRE, 1000));
    return styles.stream()
        .map(style -> style.text(length))
        .filter(text -> reads(text, length))
        .findFirst()
        .orElseGet(() -> BayFields.plain(new LengthStyle(Unit.MILLIMETRE, 1000).text(length)));
  }

  private static boolean reads(String text, Length length) {
    return new LengthReader(Unit.MILLIMETRE).read(text) instanceof Reading.Good<Length>(Length l)
        && l.picometres() == length.picometres();
  }
}
