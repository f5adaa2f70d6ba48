package fourpin.plan;

import static fourpin.job.SampleJobs.in;
import static org.assertj.core.api.Assertions.assertThat;

import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.job.Bay;
import fourpin.job.BoardStock;
import fourpin.job.Edging;
import fourpin.job.Job;
import fourpin.job.JobDraft;
import fourpin.job.Material;
import fourpin.job.SampleJobs;
import fourpin.job.SheetStock;
import fourpin.job.Shelves;
import fourpin.job.Supply;
import fourpin.measure.CommaDecimals;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Cures that take other wood are told apart by whether the stock gives it, as the planner finds.
 */
@ExtendWith(CommaDecimals.class)
class CuresOfStockTest {

  private static final String TOO_SMALL = "that is large enough";
  private static final String PLYWOOD = "plywood, veneer core";
  private static final String PLAIN = "make it of 'thick', 1 1/4 in";

  /** Two bays of shelves 34 13/16 in long and 11 in deep. */
  private static Job job(
      Shelves shelves, List<SheetStock> sheets, String boards, Material... materials) {
    Bay bay =
        new Bay(
            Optional.empty(),
            List.of(),
            Optional.of(shelves),
            Optional.of(SampleJobs.pins()),
            Optional.empty());
    Job job = SampleJobs.job(SampleJobs.bookcase(bay, bay));
    BoardStock oak =
        new BoardStock(
            "oak",
            in(boards),
            in("5 1/2"),
            Optional.empty(),
            Optional.of(new BigDecimal("10")),
            Supply.TO_BUY);
    return JobDraft.changed(
        job,
        d -> {
          d.materials = Stream.concat(job.materials().stream(), Stream.of(materials)).toList();
          d.sheets = Stream.concat(job.sheets().stream(), sheets.stream()).toList();
          d.boards = List.of(oak);
        });
  }

  private static Material thick() {
    return SampleJobs.sheet("thick", PLYWOOD, "1 1/4", "1 1/4");
  }

  private static Material layer() {
    return SampleJobs.sheet("layer", PLYWOOD, "3/4", "3/4");
  }

  private static Material twoLayers() {
    Material.Layer one =
        new Material.Layer(PLYWOOD, in("3/4"), 1, Material.Turn.ALONG, Optional.of("layer"));
    return new Material(
        "two",
        Material.Kind.SHEET,
        PLYWOOD,
        in("1 1/2"),
        Optional.empty(),
        Material.Grain.LENGTHWISE,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        List.of(one, one));
  }

  private static List<SheetStock> thick(String length, String width) {
    return stock("thick", length, width);
  }

  private static List<SheetStock> stock(String of, String length, String width) {
    return List.of(
        new SheetStock(
            of,
            in(length),
            in(width),
            Optional.empty(),
            Optional.of(new BigDecimal("200")),
            Supply.TO_BUY));
  }

  private static Shelves shelves(String material, List<Edging> edging) {
    return new Shelves(new Shelves.Placing.Evenly(2), material, edging, in("0"));
  }

  private static Remedy cure(Job job, String with) {
    return ofKind(Planner.plan(job), "sag").getFirst().remedies().stream()
        .filter(remedy -> remedy.what().contains(with))
        .findFirst()
        .orElseThrow();
  }

  /** Whether a line of the cut list of that name can't be laid out. */
  private static boolean isShort(Plan plan, String name) {
    return ofKind(plan, "not-laid-out").stream().anyMatch(f -> f.what().contains(" " + name));
  }

  private static List<Finding> ofKind(Plan plan, String kind) {
    return plan.findings().stream().filter(f -> f.kind().equals(kind)).toList();
  }

  /** A shelf is cut 1/2 in longer than it comes to, and 1/4 in is trimmed off each edge. */
  @ParameterizedTest
  @CsvSource({
    "34, 24, true",
    "35 3/4, 24, true",
    "35 51/64, 24, false",
    "36, 24, false",
    "48, 11, true",
    "48, 11 13/16, true",
    "48, 11 27/32, false",
    "24, 48, true"
  })
  void whatThePlannerCanNotCutIsToldOfThickerShelves(String length, String width, boolean bars) {
    List<SheetStock> sheets = thick(length, width);
    Remedy told = cure(job(shelves("ply", List.of()), sheets, "96", thick()), PLAIN);
    Plan built = Planner.plan(job(shelves("thick", List.of()), sheets, "96", thick()));
    assertThat(isShort(built, "shelf")).isEqualTo(bars);
    assertBars(told, bars);
    assertThat(told.cost().contains("$")).isNotEqualTo(bars);
  }

  private static void assertBars(Remedy told, boolean bars) {
    assertThat(told.what().contains(TOO_SMALL)).isEqualTo(bars);
    assertThat(told.stated().isEmpty()).isEqualTo(bars);
  }

  /** Ends of boards are trimmed too. */
  @ParameterizedTest
  @CsvSource({"30, true", "36, true", "37 1/4, true", "37 19/64, false", "96, false"})
  void whatThePlannerCanNotCutIsToldOfStrips(String boards, boolean bars) {
    Remedy told = cure(job(shelves("ply", List.of()), List.of(), boards), "to the front edge");
    Edging strip =
        new Edging(
            Edging.Kind.STRIP,
            "oak",
            in("3/4"),
            in("1 1/2"),
            List.of(Edging.Edge.FRONT, Edging.Edge.BACK));
    Plan built = Planner.plan(job(shelves("ply", List.of(strip)), List.of(), boards));
    assertThat(isShort(built, "edge strip")).isEqualTo(bars);
    assertBars(told, bars);
  }

  /** Layers are cut over size, to be trimmed when they are glued. */
  @ParameterizedTest
  @CsvSource({"34, true", "36, true", "36 3/4, true", "36 51/64, false", "96, false"})
  void whatThePlannerCanNotCutIsToldOfLayers(String length, boolean bars) {
    List<SheetStock> sheets = stock("layer", length, "48");
    Remedy told =
        cure(job(shelves("layer", List.of()), sheets, "96", layer()), "glue two layers of");
    Job two = job(shelves("two", List.of()), sheets, "96", layer(), twoLayers());
    assertThat(isShort(Planner.plan(two), "layer")).isEqualTo(bars);
    assertBars(told, bars);
  }
}
