package fourpin.shop.file;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.job.Setting;
import fourpin.reference.HeldThing;
import fourpin.reference.Reference;
import fourpin.shop.yaml.FileKind;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** docs/job-file.md tells every key and setting as the reader knows them. */
class JobFileDocumentTest {

  private static final KeyDocument DOCUMENT =
      new KeyDocument("docs/job-file.md", JobForm.FORM, Set.of("settings", "inside sizes"));
  private static final Pattern KEY = Pattern.compile("([a-z-]+):.*");

  @Test
  void tablesAreCurrent() {
    Map<String, Supplier<String>> more = new LinkedHashMap<>();
    more.put("settings", JobFileDocumentTest::settings);
    more.put("substances", JobFileDocumentTest::substances);
    more.put("things", JobFileDocumentTest::things);
    DOCUMENT.holdTables(more);
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

  static List<String> blocks() {
    return DOCUMENT.blocks();
  }

  @ParameterizedTest
  @MethodSource("blocks")
  void readsEveryExample(String block) {
    String job = inAJob(block);

    assertThat(JobReaderTest.good(job, ShopReaderTest.given(BadInputs.plainShop()))).isNotNull();
    assertThat(SchemaTest.complaints(job)).isEmpty();
  }

  @Test
  void givesAnExampleOfEveryKey() {
    DOCUMENT.holdEveryKeyShown(
        FileKind.JOB, blocks().stream().map(JobFileDocumentTest::inAJob).toList());
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
