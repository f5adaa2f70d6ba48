package fourpin.plan;

import static fourpin.job.SampleJobs.in;
import static fourpin.job.SampleJobs.job;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fourpin.cutting.Allowance;
import fourpin.cutting.Blank;
import fourpin.cutting.Grain;
import fourpin.cutting.Part;
import fourpin.cutting.Piece;
import fourpin.cutting.SetUp;
import fourpin.cutting.Ties;
import fourpin.job.Supply;
import fourpin.measure.Figure;
import fourpin.measure.Length;
import fourpin.measure.Unit;
import fourpin.plan.MaterialPlan.StockLayout;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Volumes of wood, by hand and counted at the saw; boards lose 1 in at both ends, kerf 1/8 in. */
class YieldTest {

  private static Stock board(Length length, Length width, int number) {
    return new Stock(
        Stock.name(number, length, width, Supply.TO_BUY, job().style()),
        length,
        width,
        Optional.empty(),
        Optional.of(BigDecimal.TEN),
        Supply.TO_BUY);
  }

  private static Wanted boards(List<Part> parts, List<Stock> stock, Optional<Length> thickness) {
    return new Wanted(
        "oak",
        Wanted.Kind.BOARDS,
        parts,
        stock,
        Ties.NONE,
        Map.of(),
        thickness,
        Optional.empty(),
        0,
        Map.of());
  }

  private static Wanted rails(Optional<Length> thickness) {
    return boards(
        List.of(new Part("1 rail", in("31"), in("5 1/2"), 7, Grain.FIXED)),
        List.of(board(in("96"), in("5 1/2"), 1)),
        thickness);
  }

  /**
   * Three rails to a board, so three boards of 8 ft by 5 1/2 in by 5/4: 3 x 8 x 5.5 x 1.25 / 12 =
   * 13.75 board feet; seven rails are 7 x (31 / 12) x 5.5 x 1.25 / 12 = 10.360 of them.
   */
  @Test
  void countsBoardFeetAsByHand() {
    CutPlan plan = CutPlanner.plan(job(), List.of(rails(Optional.of(Length.inches(5, 4)))));
    assertThat(plan.yields()).hasSize(1);
    Yield yield = plan.yields().getFirst();
    assertThat(yield.taken().value().text(Unit.INCH)).isEqualTo("13.8 bd ft");
    assertThat(boardFeet(yield.taken())).isCloseTo(13.75, within(1e-9));
    assertThat(boardFeet(yield.inParts())).isCloseTo(7 * 31 / 12.0 * 5.5 * 1.25 / 12, within(1e-9));
    assertThat(yield.share().value().text(Unit.INCH)).isEqualTo("75.3 %");
    assertThat(plan.figures())
        .extracting(Figure::id)
        .contains("job/oak/yield-taken", "job/oak/yield-parts", "job/oak/yield");
  }

  /** Worked examples of dealers in hardwood: thickness, width and length in inches. */
  @ParameterizedTest
  @CsvSource({"2 in, 6, 60, 5", "1 1/2 in, 9, 96, 9"})
  void boardsComeToWhatDealersReckon(String thickness, int width, int length, double boardFeet) {
    Part part = new Part("1 part", Length.inches(length - 2), Length.inches(width), 1, Grain.FIXED);
    Stock board = board(Length.inches(length), Length.inches(width), 1);
    Wanted wanted = boards(List.of(part), List.of(board), Optional.of(in(thickness)));
    Yield yield = CutPlanner.plan(job(), List.of(wanted)).yields().getFirst();
    assertThat(boardFeet(yield.taken())).isCloseTo(boardFeet, within(1e-9));
  }

  private static double boardFeet(Figure figure) {
    return figure.value().value() * figure.value().unit().factor(Unit.INCH);
  }

  /** Five rails of 900 by 100 from two boards of 3 m by 100, 25 thick: 0.015 and 0.01125 m³. */
  @Test
  void countsCubicMetresAsByHand() {
    Wanted wanted =
        boards(
            List.of(new Part("1 rail", Length.mm(900), Length.mm(100), 5, Grain.FIXED)),
            List.of(board(Length.mm(3000), Length.mm(100), 1)),
            Optional.of(Length.mm(25)));
    Yield yield = CutPlanner.plan(job(), List.of(wanted)).yields().getFirst();
    assertThat(yield.taken().value().text(Unit.MILLIMETRE)).isEqualTo("0.015 m³");
    assertThat(yield.inParts().value().value()).isCloseTo(0.01125, within(1e-12));
    assertThat(yield.share().value().text(Unit.MILLIMETRE)).isEqualTo("75 %");
  }

  @Test
  void saysNothingOfBoardsWithoutAThickness() {
    assertThat(CutPlanner.plan(job(), List.of(rails(Optional.empty()))).yields()).isEmpty();
  }

  static LongStream seeds() {
    return LongStream.range(0, 20);
  }

  /** What comes off the saw, piece by piece, is what the figure says, and no more than went in. */
  @ParameterizedTest
  @MethodSource("seeds")
  void neverMoreComesOutThanGoesIn(long seed) {
    CutPlan plan = CutPlanner.plan(job(), List.of(random(new Random(seed))));
    Yield yield = plan.yields().getFirst();
    double cut = 0;
    double whole = 0;
    for (StockLayout layout : plan.materials().getFirst().layouts()) {
      List<List<SetUp>> setUps = layout.setUps();
      for (int i = 0; i < setUps.size(); i++) {
        var pattern = layout.layout().patterns().get(i);
        cut += pattern.quantity() * finished(setUps.get(i));
        whole += pattern.quantity() * area(pattern.sheet().length(), pattern.sheet().width());
      }
    }
    double thickness = 1;
    assertThat(boardFeet(yield.taken())).isCloseTo(whole * thickness / 144, within(1e-6));
    assertThat(boardFeet(yield.inParts())).isCloseTo(cut * thickness / 144, within(1e-6));
    assertThat(yield.share().value().value()).isPositive().isLessThanOrEqualTo(100);
  }

  /** Panels that are glued: what they are worked to is less than what the saw gives. */
  @ParameterizedTest
  @MethodSource("seeds")
  void workedPartsAreLessThanWhatComesOffTheSaw(long seed) {
    Random random = new Random(seed);
    Allowance allowance = new Allowance(Length.inches(1), Length.inches(1, 4), Length.inches(1, 8));
    Blank whole =
        Blank.whole(
            "1 top", Length.inches(20 + random.nextInt(60)), Length.inches(8, 1), allowance);
    Length step = Wanted.stripStep(Unit.INCH);
    Blank.Widths widths =
        new Blank.Widths(Length.inches(1), Length.inches(32 + random.nextInt(40), 16));
    Blank top = Blank.glued(whole, widths, step).orElseThrow();
    Part strips = top.pieces(1 + random.nextInt(3), Grain.FIXED, step);
    Wanted wanted =
        new Wanted(
            "oak",
            Wanted.Kind.BOARDS,
            List.of(strips),
            List.of(board(in("96"), Length.inches(6 + random.nextInt(4)), 1)),
            Ties.NONE,
            Map.of(),
            Optional.of(Length.inches(1)),
            Optional.empty(),
            0,
            Map.of(strips.mark(), new Finished(top, Optional.of(in("3/4")))));
    Yield yield = CutPlanner.plan(job(), List.of(wanted)).yields().getFirst();
    double sawn = strips.count() * area(strips.length(), strips.width()) / 144;
    double finished =
        (double) strips.count() / top.strips() * area(top.length(), top.width()) * 0.75 / 144;
    assertThat(boardFeet(yield.inParts())).isCloseTo(finished, within(1e-9)).isLessThan(sawn);
    assertThat(boardFeet(yield.taken())).isGreaterThan(sawn);
  }

  /** One board of 96 gives three of four strips 30 long and 5 wide: no top is whole. */
  @Test
  void aGlueUpThatLacksAStripCountsNothing() {
    Blank whole = Blank.whole("1 top", in("30"), in("20"), Allowance.NONE);
    Length step = Wanted.stripStep(Unit.INCH);
    Blank top = Blank.glued(whole, new Blank.Widths(in("2"), in("5")), step).orElseThrow();
    Stock one =
        new Stock(
            "1: 96 x 5 in, on hand",
            in("96"),
            in("5"),
            Optional.of(1),
            Optional.empty(),
            Supply.ON_HAND);
    Wanted wanted =
        new Wanted(
            "oak",
            Wanted.Kind.BOARDS,
            List.of(top.pieces(1, Grain.FIXED, step)),
            List.of(one),
            Ties.NONE,
            Map.of(),
            Optional.of(in("1")),
            Optional.empty(),
            0,
            Map.of("1 top", new Finished(top, Optional.of(in("3/4")))));
    CutPlan plan = CutPlanner.plan(job(), List.of(wanted));
    assertThat(plan.complete()).isFalse();
    assertThat(plan.yields().getFirst().inParts().value().value()).isZero();
  }

  private static double finished(List<SetUp> setUps) {
    return setUps.stream()
        .flatMap(setUp -> setUp.steps().stream())
        .flatMap(step -> Stream.concat(Stream.of(step.near()), step.far().stream()))
        .filter(piece -> piece.content() instanceof Piece.Content.FinishedPart)
        .mapToDouble(piece -> area(piece.length(), piece.width()))
        .sum();
  }

  private static double area(Length length, Length width) {
    return length.inches() * width.inches();
  }

  private static Wanted random(Random random) {
    List<Part> parts = new ArrayList<>();
    for (int i = 1; i <= 1 + random.nextInt(5); i++) {
      parts.add(
          new Part(
              i + " part",
              Length.inches(80 + random.nextInt(1000), 16),
              Length.inches(16 + random.nextInt(70), 16),
              1 + random.nextInt(6),
              Grain.FIXED));
    }
    List<Stock> stock =
        List.of(
            board(in("96"), in("5 1/2"), 1),
            board(Length.inches(60 + random.nextInt(60)), Length.inches(6 + random.nextInt(5)), 2));
    return boards(parts, stock, Optional.of(Length.inches(1)));
  }
}
