package fourpin.plan;

import static fourpin.job.SampleJobs.in;
import static fourpin.job.SampleJobs.job;
import static org.assertj.core.api.Assertions.assertThat;

import fourpin.bench.Caution;
import fourpin.casework.Finding;
import fourpin.cutting.Edge;
import fourpin.cutting.Grain;
import fourpin.cutting.Part;
import fourpin.cutting.SawLimits.FirstCut;
import fourpin.cutting.SetUp;
import fourpin.cutting.ThoroughCutter;
import fourpin.cutting.VirtualSaw;
import fourpin.cutting.Watch;
import fourpin.job.Job;
import fourpin.job.JobDraft;
import fourpin.job.Setting;
import fourpin.job.SettingReader;
import fourpin.job.Supply;
import fourpin.measure.Figure;
import fourpin.measure.Unit;
import fourpin.plan.MaterialPlan.Kept;
import fourpin.plan.MaterialPlan.StockLayout;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Layouts worked out by hand: kerf 1/8, sheets trimmed by 1/4 all round, boards by 1 at the ends.
 */
class CutPlannerTest {

  private static Part part(String mark, String length, String width, int count) {
    return new Part(mark, in(length), in(width), count, Grain.FIXED);
  }

  private static Stock stock(String length, String width, String price) {
    return new Stock(
        length + " x " + width,
        in(length),
        in(width),
        Optional.empty(),
        price.isEmpty() ? Optional.empty() : Optional.of(new BigDecimal(price)),
        Supply.TO_BUY);
  }

  /** One that is on hand. */
  private static Stock one(String length, String width) {
    return new Stock(
        length + " x " + width,
        in(length),
        in(width),
        Optional.of(1),
        Optional.empty(),
        Supply.ON_HAND);
  }

  private static Wanted sheets(List<Part> parts, Stock... stock) {
    return new Wanted("ply", Wanted.Kind.SHEETS, parts, List.of(stock));
  }

  private static Wanted boards(List<Part> parts, Stock... stock) {
    return new Wanted("oak", Wanted.Kind.BOARDS, parts, List.of(stock));
  }

  private static CutPlan plan(Wanted... wanted) {
    return CutPlanner.plan(job(), List.of(wanted));
  }

  private static Job with(Setting setting, String value) {
    Job job = job();
    return JobDraft.changed(
        job,
        d ->
            d.settings =
                job.settings()
                    .with(setting, SettingReader.read(setting, value, Unit.INCH).orThrow()));
  }

  private static StockLayout only(CutPlan plan) {
    assertThat(plan.materials()).hasSize(1);
    assertThat(plan.materials().getFirst().layouts()).hasSize(1);
    StockLayout layout = plan.materials().getFirst().layouts().getFirst();
    assertThat(VirtualSaw.check(layout.problem(), layout.layout())).isEmpty();
    return layout;
  }

  /**
   * Four of 47 1/2 by 23 1/2 and their kerfs fill 95 1/2 by 47 1/2 less 3/8: one sheet for four.
   */
  @Test
  void tellsHowManySheetsAndThatNoLayoutNeedsFewer() {
    CutPlan plan =
        plan(sheets(List.of(part("side", "47 1/2", "23 1/2", 9)), stock("96", "48", "92")));
    StockLayout layout = only(plan);
    assertThat(layout.near().sheets().id()).isEqualTo("job/ply/sheets");
    assertThat(layout.near().sheets().value().value()).isEqualTo(3);
    assertThat(layout.near().sheets().inputs())
        .filteredOn(input -> input.symbol().equals("L"))
        .singleElement()
        .satisfies(least -> assertThat(least.value().value()).isEqualTo(3));
    assertThat(layout.near().gap().value().value()).isZero();
    assertThat(plan.figures())
        .extracting(Figure::id)
        .containsExactly(
            "job/ply/sheets",
            "job/ply/sheets-fewest",
            "job/ply/sheets-cost",
            "job/ply/sheets-least",
            "job/ply/sheets-gap");
    assertThat(plan.complete()).isTrue();
  }

  /** The plan keeps the order of the job, whether its searches follow each other or take turns. */
  @ParameterizedTest
  @EnumSource(ThoroughCutter.Limit.class)
  void materialsOfFewPartsAreLaidOutFirst(ThoroughCutter.Limit limit) {
    List<String> begun = new ArrayList<>();
    CutWatch watch =
        new CutWatch() {
          private long now;

          @Override
          public Watch begin(LayoutFigures lot) {
            begun.add(lot.what());
            return Watch.NOBODY;
          }

          @Override
          public long nanos() {
            return now += Turns.TURN;
          }
        };
    List<Wanted> wanted =
        List.of(
            sheets(List.of(part("side", "47 1/2", "23 1/2", 9)), stock("96", "48", "92")),
            boards(List.of(part("rail", "31", "5 1/2", 2)), stock("96", "5 1/2", "31.50")));
    CutPlan plan = CutPlanner.plan(job(), wanted, limit, watch);
    assertThat(begun).containsExactly("oak, boards 5 1/2 in wide, cut to length", "ply, sheets");
    assertThat(plan.materials()).extracting(CutMaterial::material).containsExactly("ply", "oak");
  }

  /**
   * A shelf as wide as the board shares it with rails that are ripped only if it comes off first.
   */
  @Test
  void boardsAreCutFirstTheWayTheMaterialOrTheSettingSays() {
    List<Part> parts = List.of(part("shelf", "40", "6", 1), part("rail", "36", "2 1/2", 2));
    Wanted plain = boards(parts, stock("96", "6", "31.50"));
    assertThat(only(plan(plain)).layout().sheets()).isEqualTo(1);
    Job along = with(Setting.BOARD_FIRST_CUT, "along");
    assertThat(only(CutPlanner.plan(along, List.of(plain))).layout().sheets()).isEqualTo(2);
    Wanted across =
        new Wanted(
            plain.material(),
            plain.kind(),
            plain.parts(),
            plain.stock(),
            plain.ties(),
            plain.spares(),
            plain.thickness(),
            Optional.of(FirstCut.ACROSS),
            0,
            plain.finished());
    assertThat(only(CutPlanner.plan(along, List.of(across))).layout().sheets()).isEqualTo(1);
  }

  /** The gap is of money only where all that is bought has a price. */
  @Test
  void comparesByAreaWhereAPriceIsMissing() {
    Wanted half =
        sheets(
            List.of(part("side", "40", "20", 2)), stock("96", "48", "92"), stock("60", "48", ""));
    StockLayout layout = only(plan(half));
    assertThat(layout.near().gap().title()).contains("area above the least possible");
    assertThat(layout.layout().patterns())
        .extracting(p -> p.sheet().name())
        .containsExactly("60 x 48");
  }

  /** 96 less twice 1 holds three of 31 and two kerfs; a board to each three. */
  @Test
  void cutsPartsAsWideAsTheBoardToLength() {
    StockLayout layout =
        only(plan(boards(List.of(part("rail", "31", "5 1/2", 7)), stock("96", "5 1/2", "31.50"))));
    assertThat(layout.title()).isEqualTo("boards 5 1/2 in wide, cut to length");
    assertThat(layout.near().sheets().id()).isEqualTo("job/oak/boards-5-1-2");
    assertThat(layout.near().sheets().value().value()).isEqualTo(3);
    assertThat(layout.layout().bound().sheets()).isEqualTo(3);
  }

  /**
   * Five strips of 1 and the four kerfs between them are 5 1/2, the whole board: once 1/8 is gone
   * from its edge, the fifth needs another board.
   */
  @Test
  void straightensOneEdgeOfBoardsThatAreRipped() {
    Wanted strips = boards(List.of(part("strip", "90", "1", 5)), stock("96", "5 1/2", "31.50"));
    StockLayout straight =
        only(CutPlanner.plan(with(Setting.BOARD_EDGE_TRIM, "0"), List.of(strips)));
    assertThat(straight.near().sheets().value().value()).isEqualTo(1);
    StockLayout rough = only(plan(strips));
    assertThat(rough.near().sheets().value().value()).isEqualTo(2);
    assertThat(rough.setUps().getFirst())
        .anyMatch(s -> s instanceof SetUp.TrimEdge trim && trim.edge() == Edge.NEAR_EDGE);
  }

  /**
   * A shelf of 50 as wide as the board, and two rails of 40 by 2 1/2 beside each other behind it:
   * in two goes they took two boards.
   */
  @Test
  void laysFullWidthAndRippedPartsOutTogether() {
    StockLayout layout =
        only(
            plan(
                boards(
                    List.of(part("shelf", "50", "5 1/2", 1), part("rail", "40", "2 1/2", 2)),
                    stock("96", "5 1/2", "31.50"))));
    assertThat(layout.title()).isEqualTo("boards, cut to length and width");
    assertThat(layout.near().sheets().id()).isEqualTo("job/oak/boards");
    assertThat(layout.near().sheets().value().value()).isEqualTo(1);
    assertThat(layout.near().gap().value().value()).isZero();
  }

  /** Of boards of two widths the wider serve for parts as wide as the narrower. */
  @Test
  void ripsFromWiderBoardsWhatIsAsWideAsThoseUsedUp() {
    List<Part> parts = List.of(part("rail", "40", "5 1/2", 3));
    Wanted rails = boards(parts, one("96", "5 1/2"), stock("96", "7 1/4", "40"));
    CutPlan plan = plan(rails);
    assertThat(plan.findings()).isEmpty();
    assertThat(only(plan).near().sheets().value().value()).isEqualTo(2);
  }

  @Test
  void namesWhatIsWorthKeeping() {
    Wanted one = sheets(List.of(part("side", "60", "47 1/2", 1)), stock("96", "48", "92"));
    assertThat(only(plan(one)).kept())
        .singleElement()
        .satisfies(
            kept -> {
              // 95 1/2 less 60 and the kerf.
              assertThat(kept.length()).isEqualTo(in("35 3/8"));
              assertThat(kept.width()).isEqualTo(in("47 1/2"));
            });
    assertThat(only(CutPlanner.plan(with(Setting.OFFCUT_LENGTH, "48"), List.of(one))).kept())
        .extracting(Kept::name)
        .isEmpty();
  }

  @Test
  void warnsOfPiecesTooSmallToHold() {
    Wanted blocks = sheets(List.of(part("block", "4", "3", 40)), stock("24", "24", "9"));
    CutPlan plan = plan(blocks);
    assertThat(only(plan).small()).isNotEmpty();
    assertThat(plan.cautions()).extracting(Caution::hazard).contains("small pieces");
    CutPlan large = plan(sheets(List.of(part("side", "60", "20", 2)), stock("96", "48", "92")));
    assertThat(only(large).small()).isEmpty();
    assertThat(large.cautions()).extracting(Caution::hazard).doesNotContain("small pieces");
  }

  @Test
  void saysWhatHasNoPlace() {
    CutPlan plan =
        plan(
            sheets(List.of(part("side", "120", "12", 2)), stock("96", "48", "92")),
            boards(List.of(part("rail", "30", "2", 1))));
    assertThat(plan.complete()).isFalse();
    assertThat(plan.findings())
        .extracting(Finding::what)
        .containsExactly(
            "2 of line side can't be cut from ply: it is longer than any of the stock, trimmed (it"
                + " is 120 x 12 in, the largest of the stock 96 x 48 in, trimmed 95 1/2 x 47 1/2"
                + " in)",
            "1 parts are to be cut from oak, of which the job states no stock");
  }
}
