package fourpin.shop.file;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.job.Job;
import fourpin.shop.file.BadInputs.BadInput;
import fourpin.shop.yaml.Problem;
import fourpin.shop.yaml.TreeReader;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class JobReaderTest {

  static List<BadInput> badInputs() {
    return BadInputs.all();
  }

  @ParameterizedTest
  @MethodSource("badInputs")
  void refusesWithThePlaceTheRuleAndARemedy(BadInput input) {
    assertThat(messages(input.text().getBytes(StandardCharsets.UTF_8))).isEqualTo(input.messages());
  }

  @Test
  void theTableIsLong() {
    assertThat(badInputs()).hasSizeGreaterThan(100);
  }

  @Test
  void theFileThatTheTableChangesIsGood() {
    assertThat(JobReader.read(BadInputs.plain().getBytes(StandardCharsets.UTF_8)))
        .isInstanceOf(JobReader.Outcome.Good.class);
  }

  @Test
  void saysWhereAFileStopsBeingUtf8() {
    byte[] latin = "title: B\u00fccher\n".getBytes(Charset.forName("ISO-8859-1"));

    assertThat(messages(latin))
        .isEqualTo(
            "job.yaml:1:9: error: the file: it is not UTF-8 text from here on. Save it as UTF-8 in the editor.");
  }

  @Test
  void saysWhereACharacterCannotBePrinted() {
    assertThat(messages("title: a\nunit: \u0007inch\n".getBytes(StandardCharsets.UTF_8)))
        .isEqualTo(
            "job.yaml:2:7: error: the file: the character '\\u0007' has no place in a text file. Delete it.");
  }

  @Test
  void readsPastAByteOrderMark() {
    String marked = "\uFEFF" + BadInputs.plain();

    assertThat(JobReader.read(marked.getBytes(StandardCharsets.UTF_8)))
        .isInstanceOf(JobReader.Outcome.Good.class);
  }

  @Test
  void refusesMoreThanAMebibyte() {
    byte[] large = "#".repeat(TreeReader.MOST_BYTES + 1).getBytes(StandardCharsets.UTF_8);

    assertThat(messages(large))
        .isEqualTo(
            "job.yaml:1:1: error: the file: it is larger than 1 MiB. State one job, or split it in several.");
  }

  @Test
  void refusesDeepNesting() {
    byte[] deep = ("a: " + "[".repeat(100_000)).getBytes(StandardCharsets.UTF_8);

    assertThat(messages(deep))
        .isEqualTo(
            "job.yaml:1:24: error: the file: values stand more than 20 deep here. Close the braces and brackets before.");
  }

  @Test
  void refusesMoreValuesThanAnyJobHas() {
    byte[] many = ("a: [" + "1,".repeat(60_000) + "]").getBytes(StandardCharsets.UTF_8);

    assertThat(messages(many))
        .endsWith(
            ": error: the file: it holds more than 50,000 values. State one job, or split it in several.");
  }

  /** Each line repeats the one before ten times: a billion values, were aliases followed. */
  @Test
  void doesNotFollowAliases() {
    StringBuilder bomb = new StringBuilder("a0: &a0 [x]\n");
    for (int i = 1; i < 10; i++) {
      String former = "*a" + (i - 1);
      bomb.append("a" + i + ": &a" + i + " [" + (former + ", ").repeat(9) + former + "]\n");
    }

    assertThat(messages(bomb.toString().getBytes(StandardCharsets.UTF_8)).lines())
        .hasSizeGreaterThan(100)
        .allMatch(m -> m.startsWith("job.yaml:"));
  }

  /** Said once, not of each key that no job has. */
  @Test
  void knowsAShopFileThatIsGivenAsAJob() {
    String shop =
        """
        shop: Harrow Mill workshop
        unit: inch
        tools:
          hand-drill: {kind: hand-drill, length: 9 1/2}
        """;

    assertThat(messages(shop.getBytes(StandardCharsets.UTF_8)))
        .isEqualTo(
            "job.yaml:3:1: error: tools: this is a shop file: it states tools, and no cases. Give"
                + " the file of a job; it reads the shop file beside it, or the one it names.");
  }

  @Test
  void leavesOutWhatTheMakerNeedNotState() {
    Job job = good(BadInputs.plain());

    assertThat(job.revision()).isEqualTo("A");
    assertThat(job.paper()).hasToString("LETTER");
    assertThat(job.cases().getFirst().quantity()).isEqualTo(1);
    assertThat(job.cases().getFirst().bays()).hasSize(1);
  }

  /** A bay states two keys of its shelves; the others are the case's. */
  @Test
  void laysABaysKeysOverTheCases() {
    Job job =
        good(
            BadInputs.plain()
                .replace(
                    "    bays: 1\n",
                    "    bays: [{width: 20, shelves: {count: 2, setback: 1}}, {shelves: 0}, {load: 30 kg/m}]\n")
                .replace(
                    "    shelves: 4\n",
                    "    shelves: {count: 4, edging: {banding: oak, thickness: 1/32}}\n"));

    assertThat(job.cases().getFirst().bays())
        .extracting(
            b ->
                b.shelves()
                    .map(s -> s.placing() + " " + s.frontSetback() + " " + s.edging().size())
                    .orElse("none"))
        .containsExactly("Evenly[count=2] 25.4 mm 1", "none", "Evenly[count=4] 0 mm 1");
    assertThat(job.cases().getFirst().bays())
        .extracting(b -> b.load().isPresent())
        .containsExactly(false, false, true);
  }

  /** Goes over the tables' as modulus and density do. */
  @Test
  void readsAStrengthOfAMakersOwn() {
    Job job =
        good(
            BadInputs.plain()
                .replace("    thickness: 3/4\n", "    thickness: 3/4\n    strength: 24.5 N/mm2\n"));
    assertThat(job.materials().getFirst().strength().orElseThrow().value()).isEqualTo(24.5);
    assertThat(good(BadInputs.plain()).materials().getFirst().strength()).isEmpty();
  }

  static Job good(String text) {
    return good(text, ShopFiles.NONE);
  }

  static Job good(String text, ShopFiles shops) {
    return switch (JobReader.read(text.getBytes(StandardCharsets.UTF_8), shops)) {
      case JobReader.Outcome.Good(Job job) -> job;
      case JobReader.Outcome.Refused refused -> throw new AssertionError(refused.toString());
    };
  }

  private static String messages(byte[] bytes) {
    return switch (JobReader.read(bytes)) {
      case JobReader.Outcome.Good good -> "";
      case JobReader.Outcome.Refused(List<Problem> problems, _) ->
          problems.stream().map(p -> p.text("job.yaml")).collect(Collectors.joining("\n"));
    };
  }
}
