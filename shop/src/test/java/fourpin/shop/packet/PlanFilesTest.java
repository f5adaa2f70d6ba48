package fourpin.shop.packet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import fourpin.measure.Figure;
import fourpin.plan.Plan;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class PlanFilesTest {

  private static final JsonMapper JSON = JsonMapper.builder().build();
  private static final Path EXAMPLES = Path.of("..", "examples");

  static List<Path> examples() {
    try (Stream<Path> files =
        Stream.concat(Files.list(EXAMPLES), Files.list(EXAMPLES.resolve("ways")))) {
      return files
          .filter(f -> f.toString().endsWith(".yaml") && !f.toString().endsWith("shop.yaml"))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @ParameterizedTest
  @MethodSource("examples")
  void planJsonIsAsItsSchemaSays(Path example) throws IOException {
    Schema schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(
                Files.readString(Path.of("..", "docs", "plan.schema.json")), InputFormat.JSON);

    assertThat(schema.validate(PlanJson.text(Examples.plan(example)), InputFormat.JSON)).isEmpty();
  }

  /** So that the schema is held to guides and clampings as well. */
  @Test
  void theExamplesHoldMethodsOfEveryKind() throws IOException {
    Set<String> kinds = new TreeSet<>();
    for (Path example : examples()) {
      for (JsonNode boring : JSON.readTree(PlanJson.text(Examples.plan(example))).path("borings")) {
        boring.path("ways").forEach(way -> kinds.add(way.at("/method/kind").asString("none")));
      }
    }
    assertThat(kinds).contains("guided", "marked", "programmed", "grooved", "blanks");
  }

  /** Many small strips on one board; a door that is hardly wider than its dashes. */
  @ParameterizedTest
  @ValueSource(strings = {"many-strips.yaml", "narrow-door.yaml"})
  void packetsOfOddJobsAreWritten(String name) throws IOException {
    Path job = Path.of("src", "test", "resources", "fourpin", "shop", "packet", name);
    assertThat(PlanFiles.of(Examples.plan(job))).isNotEmpty();
  }

  /** 25 lb/ft by the factors of NIST SP 811: 25 x 14.59390 N/m is 0.36485 N/mm. */
  @Test
  void planJsonStatesTheUnitThatItsValuesAreIn() throws IOException {
    JsonNode json =
        JSON.readTree(PlanJson.text(Examples.plan(EXAMPLES.resolve("reading-room.yaml"))));
    for (JsonNode figure : json.path("figures")) {
      if (figure.path("id").stringValue().equals("bookcase/shelf-1-s1/load")) {
        assertThat(figure.path("unit").stringValue()).isEqualTo("N/mm");
        assertThat(figure.path("value").doubleValue()).isCloseTo(0.36485, within(1e-5));
        return;
      }
    }
    throw new AssertionError("no figure of the load");
  }

  /** The sheet of a step is one of faces that holes or grooves go into. */
  @ParameterizedTest
  @MethodSource("examples")
  void planJsonNamesTheSheetOfEachStep(Path example) throws IOException {
    Plan plan = Examples.plan(example);
    JsonNode steps = JSON.readTree(PlanJson.text(plan)).path("steps");
    assertThat(steps).hasSameSizeAs(plan.steps());
    int onSheets = 0;
    for (int i = 0; i < plan.steps().size(); i++) {
      List<String> named = new ArrayList<>();
      for (JsonNode up : steps.path(i).path("sheet")) {
        named.add(up.path("part").stringValue() + " " + up.path("face").stringValue());
      }
      assertThat(named)
          .containsExactlyElementsOf(
              plan.steps().get(i).sheet().stream()
                  .map(up -> up.part() + " " + up.face().name().toLowerCase(Locale.ROOT))
                  .toList());
      onSheets += named.isEmpty() ? 0 : 1;
    }
    assertThat(onSheets).isPositive();
  }

  /** Every id that is named is the id of a figure. */
  @ParameterizedTest
  @MethodSource("examples")
  void planJsonNamesNoFigureThatItDoesNotHold(Path example) throws IOException {
    Plan plan = Examples.plan(example);
    JsonNode json = JSON.readTree(PlanJson.text(plan));
    List<String> ids = plan.figures().stream().map(Figure::id).toList();

    List<String> named = new ArrayList<>();
    json.path("totals").forEach(id -> named.add(id.stringValue()));
    json.path("shelves").forEach(s -> s.path("figures").forEach(id -> named.add(id.stringValue())));
    json.path("findings")
        .forEach(f -> f.path("figures").forEach(id -> named.add(id.stringValue())));

    assertThat(ids).doesNotHaveDuplicates().containsAll(named);
    assertThat(named).isNotEmpty();
  }

  /** 17.8 mm comes out as it went in, to the last digit. */
  @Test
  void planJsonKeepsLengthsExact() throws IOException {
    JsonNode side =
        JSON.readTree(PlanJson.text(Examples.plan(EXAMPLES.resolve("music-library.yaml"))))
            .at("/cases/0/parts/0/box/high");

    assertThat(side.toString()).isEqualTo("[17.8,400,1150]");
  }

  @ParameterizedTest
  @MethodSource("examples")
  void theSamePlanIsTheSameBytes(Path example) throws IOException {
    assertThat(contents(PlanFiles.of(Examples.plan(example))))
        .isEqualTo(contents(PlanFiles.of(Examples.plan(example))));
  }

  @ParameterizedTest
  @MethodSource("examples")
  void holdsEveryFileOfAPacket(Path example) throws IOException {
    Plan plan = Examples.plan(example);
    Map<String, String> files = contents(PlanFiles.of(plan));

    assertThat(files.keySet())
        .filteredOn(name -> name.endsWith(".glb"))
        .hasSameSizeAs(plan.cases());
    assertThat(files).containsKeys("packet.pdf", "plan.json", "cut-list.csv", "buying.csv");
    assertThat(files.keySet()).filteredOn(n -> n.startsWith("drawings/")).hasSizeGreaterThan(5);
    assertThat(files.values()).allSatisfy(text -> assertThat(text).isNotEmpty());
  }

  /** Each line of the cut list stands in the table, with its cut length in inches and in mm. */
  @ParameterizedTest
  @MethodSource("examples")
  void theCutListHoldsEveryLine(Path example) throws IOException {
    Plan plan = Examples.plan(example);

    List<String> lines = new Tables(plan).cutList().text().lines().toList();

    assertThat(lines).hasSize(plan.cutList().size() + 1);
    for (int i = 0; i < plan.cutList().size(); i++) {
      assertThat(lines.get(i + 1))
          .startsWith(plan.cutList().get(i).line() + ",")
          .contains(
              "," + decimal(plan.cutList().get(i).cutLength().total().exactMm()) + ",",
              ","
                  + decimal(BigDecimal.valueOf(plan.cutList().get(i).cutLength().total().inches()))
                  + ",");
    }
  }

  /** A column for each unit, whatever the job is written in, and no more than three places. */
  @ParameterizedTest
  @MethodSource("examples")
  void lengthsArePlainDecimalsToReckonWith(Path example) throws IOException {
    Tables tables = new Tables(Examples.plan(example));
    assertThat(tables.cutList().header()).contains("cut length in", "cut length mm");
    assertThat(tables.buying().header()).contains("length in", "length mm");
    for (Csv csv : List.of(tables.cutList(), tables.buying())) {
      for (int column = 0; column < csv.header().size(); column++) {
        if (csv.header().get(column).matches(".* (in|mm)")) {
          int at = column;
          assertThat(csv.rows())
              .allSatisfy(row -> assertThat(row.get(at)).matches("(\\d+(\\.\\d{1,3})?)?"));
        }
      }
    }
  }

  private static String decimal(BigDecimal value) {
    return value.setScale(3, RoundingMode.HALF_UP).stripTrailingZeros().toPlainString();
  }

  /** Stock, hardware and tools, line by line as the plan has them, and no sums. */
  @ParameterizedTest
  @MethodSource("examples")
  void theBuyingListHoldsTheRowsOfThePage(Path example) throws IOException {
    Plan plan = Examples.plan(example);
    List<String> whats = new ArrayList<>();
    plan.materials().forEach(m -> m.stock().forEach(_ -> whats.add(m.material().name())));
    plan.hardware().forEach(h -> whats.add(h.name()));
    plan.tools().forEach(t -> whats.add("tool: " + t.tool().name()));
    assertThat(new Tables(plan).buying().rows())
        .extracting(List::getFirst)
        .containsExactlyElementsOf(whats);
  }

  /** A price without one who stated it is not to be relied on. */
  @ParameterizedTest
  @MethodSource("examples")
  void everyPriceOfTheBuyingListSaysWhereItIsFrom(Path example) throws IOException {
    Csv buying = new Tables(Examples.plan(example)).buying();
    int price = buying.header().indexOf("price of one");
    int from = buying.header().indexOf("price from");
    assertThat(buying.rows())
        .allSatisfy(r -> assertThat(r.get(from).isEmpty()).isEqualTo(r.get(price).isEmpty()))
        .allSatisfy(r -> assertThat(r).hasSameSizeAs(buying.header()));
  }

  @Test
  void aPriceThatTheShopFileStatesIsToldToBeFromThere() throws IOException {
    Plan plan = Examples.plan(EXAMPLES.resolve(Path.of("ways", "short-guide.yaml")));
    assertThat(new Tables(plan).buying().rows())
        .filteredOn(row -> row.getFirst().startsWith("tool: "))
        .singleElement()
        .satisfies(
            row ->
                assertThat(row)
                    .contains("tool: guide-bit", "9.50", "the shop file (stated by the maker)"));
    assertThat(JSON.readTree(PlanJson.text(plan)).at("/tools/0/priceFrom/title").stringValue())
        .isEqualTo("the shop file");
  }

  @Test
  void quotesAndGuardsCells() {
    Csv csv =
        new Csv(
            List.of("a", "b"),
            List.of(
                List.of("=1+1", "say \"oak\""),
                List.of("-12.5", "-x"),
                List.of("@home", "one, two"),
                List.of("+49", "two\nlines"),
                List.of("ash", "")));

    assertThat(csv.text())
        .isEqualTo(
            "a,b\r\n"
                + "'=1+1,\"say \"\"oak\"\"\"\r\n"
                + "-12.5,'-x\r\n"
                + "'@home,\"one, two\"\r\n"
                + "'+49,\"two\n"
                + "lines\"\r\n"
                + "ash,\r\n");
  }

  private static Map<String, String> contents(List<PacketFile> files) throws IOException {
    Map<String, String> contents = new LinkedHashMap<>();
    for (PacketFile file : files) {
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      file.content().writeTo(out);
      contents.put(file.name(), out.toString(StandardCharsets.ISO_8859_1));
    }
    return contents;
  }
}
