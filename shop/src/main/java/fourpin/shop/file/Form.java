package fourpin.shop.file;

import fourpin.measure.Spelling;
import fourpin.shop.yaml.Yaml;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * A group of keys.
 *
 * @param what it states: "a kick"
 * @param keys in the order of the documents
 * @param picks keys that stand for each other
 * @param make the value, or nothing with a complaint; asked only when every key was good, and
 *     dropped if it left a complaint
 */
public record Form<T>(
    String what, List<Key<?>> keys, List<Pick> picks, Function<Values, Optional<T>> make)
    implements Kind<T> {

  /** Keys that stand for each other. */
  public record Pick(Take take, List<Key<?>> keys) {

    static Pick one(Key<?>... keys) {
      return new Pick(Take.EXACTLY_ONE, List.of(keys));
    }

    static Pick oneAtMost(Key<?>... keys) {
      return new Pick(Take.AT_MOST_ONE, List.of(keys));
    }

    private String names() {
      return keys.stream().map(Key::name).collect(Collectors.joining(", "));
    }
  }

  /** How many of them must be there. */
  public enum Take {
    EXACTLY_ONE,
    AT_MOST_ONE
  }

  /** A group without keys that stand for each other, and with nothing to check between its keys. */
  static <T> Form<T> of(String what, List<Key<?>> keys, Function<Values, T> make) {
    return new Form<>(what, keys, List.of(), make.andThen(Optional::of));
  }

  @Override
  public Optional<T> read(Spot spot) {
    if (!(spot.value() instanceof Yaml.Entries entries)) {
      return spot.refuse(
          "a group of keys is expected, not " + spot.value().what(),
          "write its keys on lines of their own below, each with a colon: " + names());
    }
    int before = spot.problems().size();
    entries.entries().forEach(e -> checkKnown(e, entries, spot));
    picks.forEach(p -> check(p, entries, spot));
    Values values = new Values(spot);
    keys.forEach(k -> readKey(k, entries, values));
    return spot.problems().size() == before
        ? make.apply(values).filter(_ -> spot.problems().size() == before)
        : Optional.empty();
  }

  private String names() {
    return keys.stream().map(Key::name).collect(Collectors.joining(", "));
  }

  private void checkKnown(Yaml.Entry entry, Yaml.Entries group, Spot spot) {
    String name = entry.key().text();
    if (keys.stream().noneMatch(k -> k.name().equals(name)) && !name.equals("<<")) {
      spot.refuseAt(
          entry.key().place(),
          spot.at(entry).path().name(),
          "there is no such key in " + what,
          splitByComma(entry, group) ? comma(name) : meant(name));
    }
  }

  private static final String COMMA =
      "between { } a comma ends a value: put quotes round a value that holds one";

  private static final String DECIMAL =
      "a comma ends a value between { }: decimals take a point, as in 9.5";

  /** Digits alone after a comma are what stood behind a decimal comma. */
  private static String comma(String name) {
    return name.chars().allMatch(Character::isDigit) ? DECIMAL : COMMA;
  }

  private static boolean splitByComma(Yaml.Entry entry, Yaml.Entries group) {
    return group.layout() == Yaml.Layout.BRACES
        && entry.value() instanceof Yaml.Text text
        && text.isNothing();
  }

  private String meant(String name) {
    return nearest(name).map(k -> "did you mean '" + k + "'?").orElse("its keys are " + names());
  }

  private Optional<String> nearest(String name) {
    return Spelling.nearest(name, keys.stream().map(Key::name).toList());
  }

  /** Whether a key is there, but misspelt, which is told already. */
  private boolean isMisspelt(Key<?> key, Yaml.Entries entries) {
    return entries.entries().stream()
        .map(e -> e.key().text())
        .filter(name -> keys.stream().noneMatch(k -> k.name().equals(name)))
        .anyMatch(name -> nearest(name).filter(key.name()::equals).isPresent());
  }

  private void check(Pick pick, Yaml.Entries entries, Spot spot) {
    List<Yaml.Entry> there =
        pick.keys().stream().flatMap(k -> entries.entry(k.name()).stream()).toList();
    if (there.size() > 1) {
      Yaml.Entry second = there.get(1);
      spot.refuseAt(
          second.key().place(),
          spot.at(second).path().name(),
          "only one of " + pick.names() + " is stated",
          "keep one of them");
    }
    if (there.isEmpty() && pick.take() == Take.EXACTLY_ONE) {
      spot.refuseAt(
          spot.value().place(),
          spot.path().name(),
          "one of " + pick.names() + " is missing",
          "state one of them");
    }
  }

  private <V> void readKey(Key<V> key, Yaml.Entries entries, Values values) {
    Optional<Yaml.Entry> entry = entries.entry(key.name());
    entry.ifPresent(e -> values.read(key, e));
    if (entry.isEmpty() && key.need() == Key.Need.REQUIRED && !isMisspelt(key, entries)) {
      values
          .spot()
          .refuseAt(
              values.spot().value().place(),
              values.spot().path().name(),
              "the key " + key.name() + " is missing",
              "state " + key.name() + ": " + key.meaning());
    }
  }
}
