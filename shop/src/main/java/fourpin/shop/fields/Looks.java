package fourpin.shop.fields;

import fourpin.job.Setting;
import fourpin.shop.file.Form;
import fourpin.shop.file.Forms;
import fourpin.shop.file.Key;
import fourpin.shop.file.Kind;
import fourpin.shop.file.ListOf;
import fourpin.shop.file.Word;
import fourpin.shop.file.Word.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** How a key with a single value, or with several in a row, looks as a field. */
record Looks(Known known) {

  /** The single value that a kind is made of; nothing for groups. */
  static Optional<Word<?>> word(Kind<?> kind) {
    return switch (kind) {
      case Word<?> word -> Optional.of(word);
      case ListOf<?>(Word<?> word, _) -> Optional.of(word);
      default -> Optional.empty();
    };
  }

  /** A key that is there or may be. */
  Field.Shown field(String id, Form<?> form, Key<?> key, Word<?> word, String written) {
    Optional<Setting> setting = setting(form, key);
    String standing = setting.map(known::standing).orElse(key.standard());
    return new Field.Shown(
        id,
        Ids.label(key.name()),
        choices(key, word, standing),
        written,
        standing,
        note(form, key));
  }

  /** A key of a group that is not there yet. */
  Field.Shown blank(String id, Form<?> form, String path, Key<?> key, Word<?> word) {
    List<Field.Choice> choices = choices(key, word, "not stated");
    String start =
        choices.isEmpty()
            ? known.start(Ids.bare(form.what()), key.name())
            : choices.getFirst().value();
    return new Field.Shown(id, Ids.label(path), choices, start, "", note(form, key));
  }

  static Optional<Setting> setting(Form<?> form, Key<?> key) {
    return form.equals(Forms.SETTINGS) ? Setting.named(key.name()) : Optional.empty();
  }

  private List<Field.Choice> choices(Key<?> key, Word<?> word, String standing) {
    List<Field.Choice> known = known(word);
    if (known.isEmpty() || key.need() == Key.Need.REQUIRED) {
      return known;
    }
    List<Field.Choice> all = new ArrayList<>();
    all.add(new Field.Choice("", standing.isEmpty() ? "not stated" : "as usual: " + standing));
    all.addAll(known);
    return all;
  }

  private List<Field.Choice> known(Word<?> word) {
    return switch (word.shape()) {
      case Shape.Choice(var words) -> words.stream().map(Field.Choice::of).toList();
      case Shape.Row(var names) -> names.stream().map(Field.Choice::of).toList();
      case Shape.OfMaterial(var kinds) -> known.materials(kinds);
      case Shape.OfCase() -> known.cases().stream().map(Field.Choice::of).toList();
      case Shape.Measure _, Shape.Number _, Shape.Free _ -> List.of();
    };
  }

  /** What makers disagree about comes with its range and its origin. */
  private String note(Form<?> form, Key<?> key) {
    Optional<Setting> setting = setting(form, key);
    return Stream.of(
            key.meaning(),
            setting.flatMap(_ -> word(key.kind())).map(this::range).orElse(""),
            setting.map(s -> s.origin().text()).orElse(""))
        .filter(s -> !s.isEmpty())
        .collect(Collectors.joining("; "));
  }

  private static String plain(double number) {
    return Double.toString(number).replaceFirst("\\.0$", "");
  }

  private String range(Word<?> word) {
    return switch (word.shape()) {
      case Shape.Measure(String least, String most) when !least.isEmpty() ->
          "from " + known.limit(least) + " to " + known.limit(most);
      case Shape.Number(_, double least, double most) ->
          "from " + plain(least) + " to " + plain(most);
      default -> "";
    };
  }
}
