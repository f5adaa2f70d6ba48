package fourpin.shop.line;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.boring.way.CaseBoring;
import fourpin.boring.way.WayAnswer;
import fourpin.job.Way;
import fourpin.measure.Figure;
import fourpin.measure.Quantity;
import fourpin.measure.Source;
import fourpin.plan.Plan;
import fourpin.plan.ToolItem;
import fourpin.shop.packet.PacketFile;
import fourpin.shop.packet.PlanFiles;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Whatever the pages on boring print can be asked for. Pages print from the plan alone, so the plan
 * is walked, not a list: a field, a sentence or a step that is new is asked for as well.
 */
class ExplainedFiguresTest {

  private static final JsonMapper JSON = JsonMapper.builder().build();

  /** Numbers that count things off, and are no figures. */
  private static final Set<String> ORDINALS =
      Set.of("number", "bay", "bays", "level", "holes", "pin", "into");

  /** In mm; plan.json states lengths to the last picometre, figures as floating point. */
  private static final double SAME = 1e-9;

  private static final Map<Plan, JsonNode> WRITTEN = new IdentityHashMap<>();

  private static JsonNode json(Plan plan) throws IOException {
    JsonNode known = WRITTEN.get(plan);
    if (known != null) {
      return known;
    }
    JsonNode json = JSON.readTree(text(plan));
    WRITTEN.put(plan, json);
    return json;
  }

  private static byte[] text(Plan plan) throws IOException {
    ByteArrayOutputStream json = new ByteArrayOutputStream();
    for (PacketFile file : PlanFiles.of(plan)) {
      if (file.name().equals("plan.json")) {
        file.content().writeTo(json);
      }
    }
    return json.toByteArray();
  }

  /** A leaf of plan.json by its path, its places in lists counted from 1. */
  private record Leaf(String path, double value) {

    static List<Leaf> of(String path, JsonNode node) {
      List<Leaf> leaves = new ArrayList<>();
      if (node.isNumber()) {
        leaves.add(new Leaf(path, node.doubleValue()));
      }
      for (int i = 0; i < node.size() && node.isArray(); i++) {
        leaves.addAll(of(path + "/" + (i + 1), node.get(i)));
      }
      if (node.isObject()) {
        node.propertyNames().stream()
            .filter(
                name ->
                    !ORDINALS.contains(name)
                        || (node.get(name).get(0) instanceof JsonNode first && first.isObject()))
            .forEach(name -> leaves.addAll(of(path + "/" + name, node.get(name))));
      }
      return leaves;
    }

    /** One figure for each element of the last list, or one for all of them. */
    List<String> ids() {
      return List.of(path, path.replaceFirst("/\\d+(/[a-z]+)$", "$1"));
    }
  }

  private static List<String> missing(List<Leaf> leaves, Map<String, Figure> figures) {
    return leaves.stream()
        .filter(
            leaf ->
                leaf.ids().stream()
                    .flatMap(id -> Optional.ofNullable(figures.get(id)).stream())
                    .noneMatch(f -> Math.abs(f.value().value() - leaf.value()) < SAME))
        .map(Leaf::toString)
        .toList();
  }

  /** The id of a way's first figure, without its last level. */
  private static String prefix(JsonNode way) {
    String id = way.path("figures").get(0).stringValue();
    String key = "/" + way.path("way").stringValue() + "/";
    return id.substring(0, id.indexOf(key) + key.length() - 1);
  }

  @ParameterizedTest
  @MethodSource("fourpin.shop.line.PlannedExamples#files")
  void everyNumberOfEveryMethodHasAnIdThatSaysWhereItStands(Path example) throws IOException {
    Plan plan = PlannedExamples.plan(example);
    List<Leaf> leaves = new ArrayList<>();
    for (JsonNode boring : json(plan).path("borings")) {
      for (JsonNode way : boring.path("ways")) {
        if (way.has("method")) {
          leaves.addAll(Leaf.of(prefix(way), way.path("method")));
        }
      }
    }
    assertThat(missing(leaves, PlannedExamples.figures(plan))).isEmpty();
    assertThat(leaves).isNotEmpty();
  }

  @ParameterizedTest
  @MethodSource("fourpin.shop.line.PlannedExamples#files")
  void everyNumberOfThePatternHasAnIdThatSaysWhereItStands(Path example) throws IOException {
    Plan plan = PlannedExamples.plan(example);
    List<Leaf> leaves = new ArrayList<>();
    for (JsonNode grid : json(plan).path("grids")) {
      String id = Figure.id(grid.path("case").stringValue(), "bay-" + grid.path("bay").intValue());
      leaves.addAll(Leaf.of(id, grid));
    }
    assertThat(missing(leaves, PlannedExamples.figures(plan))).isEmpty();
    assertThat(leaves).isNotEmpty();
  }

  /** Fields of plan.json that hold ids of figures. */
  private static final Set<String> HOLD_IDS =
      Set.of(
          "figures",
          "totals",
          "sheets",
          "fewest",
          "comesTo",
          "least",
          "gap",
          "sagNow",
          "sagYears",
          "limitNow",
          "limitYears");

  private static Set<String> ids(String name, JsonNode node) {
    Set<String> ids = new TreeSet<>();
    if (node.isString() && (HOLD_IDS.contains(name) || name.equals("id"))) {
      ids.add(node.stringValue());
    }
    for (int i = 0; i < node.size() && node.isArray(); i++) {
      ids.addAll(ids(name, node.get(i)));
    }
    if (node.isObject()) {
      node.propertyNames().forEach(inner -> ids.addAll(ids(inner, node.get(inner))));
    }
    return ids;
  }

  /** Each with its title, its id, its formula, a line for each input, and its source. */
  @ParameterizedTest
  @MethodSource("fourpin.shop.line.PlannedExamples#files")
  void everyIdOfThePacketIsAnswered(Path example) throws IOException {
    Plan plan = PlannedExamples.plan(example);
    Map<String, Figure> figures = PlannedExamples.figures(plan);
    Set<String> ids = ids("", json(plan));
    assertThat(ids).hasSizeGreaterThan(100).containsAll(figures.keySet());
    for (String id : ids) {
      List<String> lines = ExplainCommand.answer(plan, id);
      assertThat(lines).as(id).hasSizeGreaterThan(3).contains("  id      " + id);
      assertThat(lines).hasSize(4 + Objects.requireNonNull(figures.get(id)).inputs().size());
    }
    assertThat(ExplainCommand.answer(plan, "job/no-such-figure")).isEmpty();
  }

  /**
   * Nothing of an answer is empty; what is neither counted nor measured says from what it comes.
   */
  @ParameterizedTest
  @MethodSource("fourpin.shop.line.PlannedExamples#files")
  void everyFigureHasFormulaInputsAndSource(Path example) {
    Plan plan = PlannedExamples.plan(example);
    assertThat(plan.figures()).allSatisfy(ExplainedFiguresTest::isWhole);
    Stream.of(
            plan.shelves().stream().flatMap(s -> s.figures().stream()),
            plan.standing().stream().flatMap(c -> c.figures().stream()))
        .flatMap(figures -> figures)
        .filter(f -> !f.source().isStated() && !f.source().equals(Source.GEOMETRY))
        .forEach(f -> assertThat(f.inputs()).as(f.id()).isNotEmpty());
  }

  private static void isWhole(Figure figure) {
    assertThat(List.of(figure.title(), figure.formula(), figure.source().title()))
        .as(figure.id())
        .noneMatch(String::isBlank);
    assertThat(figure.inputs())
        .as(figure.id())
        .allSatisfy(
            input ->
                assertThat(List.of(input.symbol(), input.meaning(), input.source().title()))
                    .noneMatch(String::isBlank));
  }

  /** So that nobody who asks for a figure on one page is told of another. */
  @ParameterizedTest
  @MethodSource("fourpin.shop.line.PlannedExamples#files")
  void noIdStandsForTwoFigures(Path example) {
    Plan plan = PlannedExamples.plan(example);
    Map<String, Figure> known = PlannedExamples.figures(plan);
    Stream.of(
            plan.totals().stream(),
            plan.shelves().stream().flatMap(s -> s.figures().stream()),
            plan.standing().stream().flatMap(c -> c.figures().stream()),
            plan.borings().stream().flatMap(b -> b.figures().stream()),
            plan.borings().stream()
                .flatMap(b -> b.answers().stream())
                .flatMap(a -> a.figures().stream()),
            plan.levelness().stream().flatMap(l -> l.figures().stream()),
            plan.mistakes().stream().flatMap(m -> m.figures().stream()),
            plan.findings().stream().flatMap(f -> f.figures().stream()))
        .flatMap(figures -> figures)
        .forEach(f -> assertThat(known.get(f.id())).as(f.id()).isEqualTo(f));
  }

  /** What a way's figures are called, without what stands before them. */
  private static Set<String> own(WayAnswer answer) {
    String before = "/" + answer.way().key() + "/";
    return answer.figures().stream()
        .map(Figure::id)
        .filter(id -> id.contains(before))
        .map(id -> id.substring(id.indexOf(before) + before.length()))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /**
   * Set-ups, clampings, holes, minutes, cost, tolerance, life of a guide; or why not, and a cure.
   */
  @ParameterizedTest
  @MethodSource("fourpin.shop.line.PlannedExamples#files")
  void everyWaySaysWhatItTakesOrWhyItCanNotBeDone(Path example) {
    for (CaseBoring boring : PlannedExamples.plan(example).borings()) {
      assertThat(boring.because()).isNotBlank();
      assertThat(boring.answer(boring.chosen()).method()).isPresent();
      for (WayAnswer answer : boring.answers()) {
        Set<String> figures = own(answer);
        if (answer.method().isPresent()) {
          assertThat(figures)
              .as(answer.way().key())
              .contains("set-ups", "clampings", "making", "minutes", "to-buy", "cost")
              .containsAnyOf("holes", "cuts")
              .contains("gap", "odds");
          assertThat(figures.contains("guide-life"))
              .as(answer.way().key())
              .isEqualTo(WEARS.contains(answer.way()));
        } else {
          assertThat(answer.reasons())
              .as(answer.way().key())
              .isNotEmpty()
              .allSatisfy(reason -> assertThat(reason.what()).isNotBlank());
          assertThat(answer.reasons().getFirst().remedy()).isNotBlank();
        }
      }
    }
  }

  /** Through guides, whose holes wear. */
  private static final Set<Way> WEARS =
      Set.of(Way.HARDBOARD_STRIP, Way.CENTRING_GUIDE, Way.ROUTER_GUIDE, Way.STEEL_STRAP);

  /** What a tool costs is in the list, in the price of the job, and in what explains them. */
  @ParameterizedTest
  @MethodSource("fourpin.shop.line.PlannedExamples#files")
  void everyToolToBuyIsPricedOrSaidToBeWithoutPrice(Path example) {
    Plan plan = PlannedExamples.plan(example);
    Map<String, Figure> figures = PlannedExamples.figures(plan);
    for (ToolItem item : plan.tools()) {
      String name = item.tool().name();
      if (item.tool().price().isPresent()) {
        assertThat(ExplainCommand.answer(plan, "job/tools-to-buy"))
            .anyMatch(line -> line.contains(name));
        assertThat(Objects.requireNonNull(figures.get("job/price")).formula()).contains("+ T");
      } else {
        assertThat(plan.findings())
            .filteredOn(f -> f.kind().equals("tool-not-stated"))
            .anyMatch(f -> f.what().contains(name + ", whose price is not stated and not counted"));
      }
    }
    assertThat(figures.containsKey("job/tools-to-buy"))
        .isEqualTo(plan.tools().stream().anyMatch(t -> t.tool().price().isPresent()));
  }

  /** Shares are printed in per cent. */
  @ParameterizedTest
  @MethodSource("fourpin.shop.line.PlannedExamples#files")
  void everyNumberOfThePageOnLevelShelvesIsThatOfAFigureOfIt(Path example) throws IOException {
    Plan plan = PlannedExamples.plan(example);
    Map<String, Figure> figures = PlannedExamples.figures(plan);
    for (JsonNode level : json(plan).path("levelness")) {
      List<Figure> own = new ArrayList<>();
      level.path("figures").forEach(id -> own.add(figures.get(id.stringValue())));
      List<Double> known = PlannedExamples.quantities(own).stream().map(Quantity::value).toList();
      assertThat(Leaf.of("level", level))
          .filteredOn(
              leaf ->
                  known.stream()
                      .noneMatch(
                          k ->
                              Math.abs(k - leaf.value()) < SAME
                                  || Math.abs(k - 100 * leaf.value()) < SAME))
          .isEmpty();
    }
  }
}
