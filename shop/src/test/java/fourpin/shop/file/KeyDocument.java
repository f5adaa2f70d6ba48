package fourpin.shop.file;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.shop.yaml.FileKind;
import fourpin.shop.yaml.TreeReader;
import fourpin.shop.yaml.Yaml;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Supplier;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A document that explains a file key by key: tables written from the forms between comments that
 * name them, and examples that are read.
 *
 * @param path of the document
 * @param root form of the whole file
 * @param toldElsewhere what forms state that the document need not explain
 */
record KeyDocument(String path, Form<?> root, Set<String> toldElsewhere) {

  private static final Pattern GENERATED =
      Pattern.compile("(?s)<!-- ((?!end)[^>]*) -->\n.*?<!-- end -->");
  private static final Pattern BLOCK = Pattern.compile("(?s)```yaml\n(.*?)```");

  /**
   * Holds the tables to the forms, each form once.
   *
   * @param more tables, by the name in their comment
   */
  void holdTables(Map<String, Supplier<String>> more) {
    Map<String, Supplier<String>> parts = new LinkedHashMap<>();
    forms().forEach(f -> parts.put("keys of " + f.what(), () -> table(f)));
    parts.putAll(more);
    Set<String> used = new LinkedHashSet<>();
    String current =
        GENERATED
            .matcher(Documents.read(path))
            .replaceAll(m -> Matcher.quoteReplacement(part(m, parts, used)));

    Documents.hold(path, current);
    assertThat(used).as("every group of keys has its table").isEqualTo(parts.keySet());
  }

  private static String part(MatchResult m, Map<String, Supplier<String>> parts, Set<String> used) {
    used.add(m.group(1));
    return "<!-- "
        + m.group(1)
        + " -->\n"
        + Objects.requireNonNull(parts.get(m.group(1)), m.group(1)).get()
        + "<!-- end -->";
  }

  private static String table(Form<?> form) {
    return "| key | what | without it | |\n|---|---|---|---|\n"
        + form.keys().stream().map(KeyDocument::row).collect(Collectors.joining())
        + form.picks().stream().map(KeyDocument::pick).collect(Collectors.joining());
  }

  private static String row(Key<?> key) {
    String without = key.need() == Key.Need.REQUIRED ? "must be there" : key.standard();
    return "| `%s` | %s | %s | %s |\n"
        .formatted(key.name(), what(key.kind()), without, key.meaning());
  }

  private static String pick(Form.Pick pick) {
    String names =
        pick.keys().stream().map(k -> "`" + k.name() + "`").collect(Collectors.joining(", "));
    boolean one = pick.take() == Form.Take.EXACTLY_ONE;
    return "\n" + (one ? "Exactly one of " : "At most one of ") + names + ".\n";
  }

  private static String what(Kind<?> kind) {
    return switch (kind) {
      case Word<?> word -> word.what();
      case ListOf<?> list -> "one or a list of: " + what(list.item());
      case Named<?> named -> "names, each with " + what(named.thing());
      case Short<?, ?> both -> what(both.word()) + ", or " + what(both.full());
      case Form<?> form -> "the keys of " + form.what();
      case OneOf<?> one -> "the keys of " + one.what() + " of its kind";
    };
  }

  /** Every form that the whole file leads to, each once. */
  List<Form<?>> forms() {
    Map<String, Form<?>> forms = new LinkedHashMap<>();
    collect(root, forms);
    return List.copyOf(forms.values());
  }

  private void collect(Kind<?> kind, Map<String, Form<?>> forms) {
    switch (kind) {
      case Word<?> word -> {}
      case ListOf<?> list -> collect(list.item(), forms);
      case Named<?> named -> collect(named.thing(), forms);
      case Short<?, ?> both -> collect(both.full(), forms);
      case OneOf<?> one -> one.forms().values().forEach(f -> collect(f, forms));
      case Form<?> form -> {
        boolean told = toldElsewhere.contains(form.what());
        if (!told && forms.putIfAbsent(form.what(), form) == null) {
          form.keys().forEach(k -> collect(k.kind(), forms));
        }
      }
    }
  }

  /** The examples. */
  List<String> blocks() {
    return BLOCK.matcher(Documents.read(path)).results().map(m -> m.group(1)).toList();
  }

  /** Holds that the examples, each in a whole file, show every key. */
  void holdEveryKeyShown(FileKind kind, List<String> files) {
    Set<String> shown = new LinkedHashSet<>();
    for (String file : files) {
      byte[] bytes = file.getBytes(StandardCharsets.UTF_8);
      shown.addAll(keys(TreeReader.read(bytes, kind).root().orElseThrow()));
    }
    assertThat(shown)
        .containsAll(forms().stream().flatMap(f -> f.keys().stream()).map(Key::name).toList());
  }

  private static List<String> keys(Yaml yaml) {
    List<String> keys = new ArrayList<>();
    switch (yaml) {
      case Yaml.Text text -> {}
      case Yaml.Items items -> items.items().forEach(i -> keys.addAll(keys(i)));
      case Yaml.Entries entries ->
          entries
              .entries()
              .forEach(
                  e -> {
                    keys.add(e.key().text());
                    keys.addAll(keys(e.value()));
                  });
    }
    return keys;
  }
}
