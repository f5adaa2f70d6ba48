package fourpin.shop.file;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.job.Setting;
import fourpin.reference.HeldThing;
import fourpin.reference.Reference;
import fourpin.shop.yaml.Yaml;
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
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** docs/job-file.md tells every key and setting as the reader knows them. */
class JobFileDocumentTest {

  private static final String PATH = "docs/job-file.md";
  private static final Pattern GENERATED =
      Pattern.compile("(?s)<!-- ((?!end)[^>]*) -->\n.*?<!-- end -->");
  private static final Pattern BLOCK = Pattern.compile("(?s)```yaml\n(.*?)```");
  private static final Set<String> TOLD_ELSEWHERE = Set.of("settings", "inside sizes");
  private static final Pattern KEY = Pattern.compile("([a-z-]+):.*");

  @Test
  void tablesAreCurrent() {
    Map<String, Supplier<String>> parts = parts();
    Set<String> used = new LinkedHashSet<>();
    String current =
        GENERATED
            .matcher(Documents.read(PATH))
            .replaceAll(m -> Matcher.quoteReplacement(part(m, parts, used)));

    Documents.hold(PATH, current);
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

  private static Map<String, Supplier<String>> parts() {
    Map<String, Supplier<String>> parts = new LinkedHashMap<>();
    for (Form<?> form : forms()) {
      parts.put("keys of " + form.what(), () -> table(form));
    }
    parts.put("settings", JobFileDocumentTest::settings);
    parts.put("substances", JobFileDocumentTest::substances);
    parts.put("things", JobFileDocumentTest::things);
    return parts;
  }

  private static String table(Form<?> form) {
    return "| key | what | without it | |\n|---|---|---|---|\n"
        + form.keys().stream().map(JobFileDocumentTest::row).collect(Collectors.joining())
        + form.picks().stream().map(JobFileDocumentTest::pick).collect(Collectors.joining());
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
    };
  }

  private static String settings() {
    return "| setting | for inch | for mm | range | what | origin |\n|---|---|---|---|---|---|\n"
        + Stream.of(Setting.values()).map(JobFileDocumentTest::row).collect(Collectors.joining());
  }

  private static String row(Setting s) {
    String range =
        s.kind() == Setting.Kind.CHOICE
            ? String.join(", ", s.choices())
            : s.least() + " to " + s.most();
    return "| `%s` | %s | %s | %s | %s | %s |\n"
        .formatted(
            s.key(),
            orNone(s.inchDefault()),
            orNone(s.metricDefault()),
            range,
            s.meaning(),
            s.origin().text());
  }

  private static String orNone(String text) {
    return text.isEmpty() ? "none" : text;
  }

  private static String substances() {
    return Reference.substances().rows().stream()
            .map(s -> "`" + s.name() + "`")
            .collect(Collectors.joining(", "))
        + ".\n";
  }

  private static String things() {
    return "| thing | light | usual | heavy |\n|---|---|---|---|\n"
        + Reference.things().rows().stream()
            .map(JobFileDocumentTest::row)
            .collect(Collectors.joining());
  }

  private static String row(HeldThing t) {
    return "| `%s` | %s | %s | %s |\n"
        .formatted(
            t.name(),
            t.load().low().text(fourpin.measure.Unit.MILLIMETRE),
            t.load().typical().text(fourpin.measure.Unit.MILLIMETRE),
            t.load().high().text(fourpin.measure.Unit.MILLIMETRE));
  }

  /** Every form that the whole file leads to, each once. */
  private static List<Form<?>> forms() {
    Map<String, Form<?>> forms = new LinkedHashMap<>();
    collect(JobForm.FORM, forms);
    return List.copyOf(forms.values());
  }

  private static void collect(Kind<?> kind, Map<String, Form<?>> forms) {
    switch (kind) {
      case Word<?> word -> {}
      case ListOf<?> list -> collect(list.item(), forms);
      case Named<?> named -> collect(named.thing(), forms);
      case Short<?, ?> both -> collect(both.full(), forms);
      case Form<?> form -> {
        boolean told = TOLD_ELSEWHERE.contains(form.what());
        if (!told && forms.putIfAbsent(form.what(), form) == null) {
          form.keys().forEach(k -> collect(k.kind(), forms));
        }
      }
    }
  }

  static List<String> blocks() {
    return BLOCK.matcher(Documents.read(PATH)).results().map(m -> m.group(1)).toList();
  }

  @ParameterizedTest
  @MethodSource("blocks")
  void readsEveryExample(String block) {
    String job = inAJob(block);

    assertThat(JobReaderTest.good(job)).isNotNull();
    assertThat(SchemaTest.complaints(job)).isEmpty();
  }

  @Test
  void givesAnExampleOfEveryKey() {
    Set<String> shown = new LinkedHashSet<>();
    for (String block : blocks()) {
      shown.addAll(
          keys(fourpin.shop.yaml.TreeReader.read(bytes(inAJob(block))).root().orElseThrow()));
    }
    assertThat(shown)
        .containsAll(forms().stream().flatMap(f -> f.keys().stream()).map(Key::name).toList());
  }

  private static byte[] bytes(String text) {
    return text.getBytes(java.nio.charset.StandardCharsets.UTF_8);
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

  /**
   * A block that states no whole job states keys of a job or of a case: puts it in a job around it.
   */
  private static String inAJob(String block) {
    if (block.contains("title:")) {
      return block;
    }
    Map<String, List<String>> job = sections(BadInputs.resource("around.yaml").lines().toList());
    Map<String, List<String>> more = sections(block.lines().toList());
    boolean ofJob = more.keySet().stream().allMatch(k -> isKeyOf(JobForm.FORM, k));
    if (more.containsKey("materials")) {
      of(job, "materials").addAll(of(more, "materials").stream().skip(1).toList());
    } else if (ofJob) {
      job.putAll(more);
    } else {
      job.put("cases", caseWith(of(job, "cases"), more));
    }
    return job.values().stream()
        .flatMap(List::stream)
        .map(l -> l + "\n")
        .collect(Collectors.joining());
  }

  private static List<String> of(Map<String, List<String>> sections, String key) {
    return Objects.requireNonNull(sections.get(key), key);
  }

  private static boolean isKeyOf(Form<?> form, String key) {
    return form.keys().stream().anyMatch(k -> k.name().equals(key));
  }

  private static List<String> caseWith(List<String> cases, Map<String, List<String>> more) {
    Map<String, List<String>> keys =
        sections(cases.stream().skip(2).map(l -> l.substring(4)).toList());
    keys.putAll(more);
    List<String> lines = new ArrayList<>(cases.subList(0, 2));
    keys.values().stream().flatMap(List::stream).map(l -> "    " + l).forEach(lines::add);
    return lines;
  }

  /** The lines of each key at the top. */
  private static Map<String, List<String>> sections(List<String> lines) {
    Map<String, List<String>> sections = new LinkedHashMap<>();
    String key = "";
    for (String line : lines) {
      Matcher m = KEY.matcher(line);
      key = m.matches() ? m.group(1) : key;
      sections.computeIfAbsent(key, k -> new ArrayList<>()).add(line);
    }
    return sections;
  }
}
