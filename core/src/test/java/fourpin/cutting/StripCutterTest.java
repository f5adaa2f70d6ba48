package fourpin.cutting;

import static fourpin.cutting.Examples.part;
import static fourpin.cutting.Examples.plywood;
import static fourpin.cutting.Examples.sheet;
import static org.assertj.core.api.Assertions.assertThat;

import fourpin.cutting.Unplaced.Reason;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class StripCutterTest {
  private final SheetCutter cutter = new StripCutter();

  private Layout sound(SheetProblem problem) {
    Layout layout = cutter.cut(problem);
    assertThat(VirtualSaw.check(problem, layout)).isEmpty();
    return layout;
  }

  private static SheetProblem problem(Part part, StockSheet... stock) {
    return new SheetProblem(List.of(part), List.of(stock), Examples.SAW);
  }

  /**
   * Strips along a sheet 48 in wide, kerf 1/8: four of 12 in do not come from it, four of 11 7/8
   * do, and three kerfs leave 11 29/32 as the widest (4 w + 3/8 = 48). The first two are a
   * well-known rule of the trade, the last is computed by hand.
   */
  @ParameterizedTest
  @CsvSource({"384, 2", "381, 1", "380, 1", "376, 1"})
  void fourStripsFromFortyEightInches(int thirtySeconds, int sheets) {
    Part strip = part("strip", Length.inches(96), Length.inches(thirtySeconds, 32), 4);
    assertThat(sound(problem(strip, plywood())).sheets()).isEqualTo(sheets);
  }

  /** One picometre more than fits: 4 w + 3 k = 48 in is exact to the picometre. */
  @Test
  void aPicometreTooMuchNeedsAnotherSheet() {
    Length widest = Length.inches(381, 32);
    Length wider = new Length(widest.picometres() + 1, widest.unit());
    assertThat(sound(problem(part("strip", Length.inches(96), widest, 4), plywood())).sheets())
        .isEqualTo(1);
    assertThat(sound(problem(part("strip", Length.inches(96), wider, 4), plywood())).sheets())
        .isEqualTo(2);
  }

  @Test
  void onePartAsLargeAsTheSheetNeedsNoCut() {
    Layout layout =
        sound(problem(part("panel", Length.inches(96), Length.inches(48), 1), plywood()));
    assertThat(layout.patterns())
        .containsExactly(new SheetPattern(plywood(), 1, new Node.Finished("panel", Lay.STRAIGHT)));
    assertThat(layout.price()).isEqualTo(6000);
    assertThat(layout.priceGap()).isZero();
  }

  @Test
  void onePartAsLargeAsTheTrimmedSheetNeedsOnlyTrimming() {
    Saw saw = new Saw(Examples.KERF, Trim.allRound(Length.inches(1, 4)));
    Part panel = part("panel", Length.inches(191, 2), Length.inches(95, 2), 2);
    SheetProblem problem = new SheetProblem(List.of(panel), List.of(plywood()), saw);
    Layout layout = sound(problem);
    assertThat(layout.patterns()).singleElement().extracting(SheetPattern::quantity).isEqualTo(2);
    assertThat(layout.patterns().getFirst().parts())
        .singleElement()
        .satisfies(
            placed -> {
              assertThat(placed.x()).isEqualTo(Length.inches(1, 4));
              assertThat(placed.length()).isEqualTo(Length.inches(191, 2));
            });
  }

  @Test
  void nothingToCutNeedsNothing() {
    SheetProblem nothing = new SheetProblem(List.of(), List.of(plywood()), Examples.SAW);
    assertThat(sound(nothing)).isEqualTo(new Layout(List.of(), List.of(), new LowerBound(0, 0)));
  }

  @Test
  void withoutStockEverythingIsLeftOut() {
    Layout layout = sound(problem(part("side", Length.inches(30), Length.inches(10), 3)));
    assertThat(layout.unplaced()).containsExactly(new Unplaced("side", 3, Reason.NO_SHEETS_LEFT));
  }

  /** Sheets 96 x 48 and 30 x 60 with the grain along the first size. */
  @ParameterizedTest
  @CsvSource({
    "97, 10, FIXED, TOO_LONG",
    "97, 10, FREE, TOO_LONG",
    "20, 61, FIXED, GRAIN_FORBIDS_TURNING",
    "20, 97, FIXED, TOO_WIDE",
    "49, 49, FREE, TOO_WIDE",
    "40, 55, FIXED, GRAIN_FORBIDS_TURNING",
    "50, 55, FIXED, NO_SHEET_BOTH_WAYS",
    "61, 40, FIXED, ''",
    "40, 90, FREE, ''"
  })
  void saysWhyAPartDoesNotFit(int length, int width, Grain grain, String reason) {
    Part part = new Part("P", Length.inches(length), Length.inches(width), 2, grain);
    Layout layout =
        sound(problem(part, plywood(), sheet("narrow", 30, 60, Supply.unlimited(), 2000)));
    List<Unplaced> expected =
        reason.isEmpty() ? List.of() : List.of(new Unplaced("P", 2, Reason.valueOf(reason)));
    assertThat(layout.unplaced()).isEqualTo(expected);
  }

  @Test
  void placesWhatItCanWhenSheetsRunOut() {
    Part side = part("side", Length.inches(96), Length.inches(15), 10);
    Layout layout = sound(problem(side, sheet("last ones", 96, 48, Supply.of(2), 6000)));
    assertThat(layout.sheets()).isEqualTo(2);
    assertThat(layout.unplaced()).containsExactly(new Unplaced("side", 4, Reason.NO_SHEETS_LEFT));
    assertThat(layout.bound()).isEqualTo(new LowerBound(12000, 2));
  }

  /** Another lot took it: no run of the search takes any work, and so none ends it. */
  @Test
  void endsWhereNoSheetIsLeft() {
    Part side = part("side", Length.inches(96), Length.inches(15), 10);
    SheetProblem none = problem(side, sheet("taken", 96, 48, Supply.of(0), 6000));
    Unplaced all = new Unplaced("side", 10, Reason.NO_SHEETS_LEFT);
    assertThat(sound(none).unplaced()).containsExactly(all);
    assertThat(new ThoroughCutter(Examples.AIMS).cut(none).unplaced()).containsExactly(all);
  }

  @Test
  void foldsIdenticalSheets() {
    Part side = part("side", Length.inches(96), Length.inches(15), 9);
    Layout layout = sound(problem(side, plywood()));
    assertThat(layout.patterns()).singleElement().extracting(SheetPattern::quantity).isEqualTo(3);
  }

  @Test
  void takesWhatIsPaidForBeforeBuying() {
    StockSheet offcut =
        new StockSheet(
            "offcut",
            Length.inches(40),
            Length.inches(20),
            SheetGrain.ALONG_LENGTH,
            Supply.of(1),
            0,
            Origin.ON_HAND);
    Layout layout =
        sound(problem(part("shelf", Length.inches(36), Length.inches(9), 2), plywood(), offcut));
    assertThat(layout.price()).isZero();
    assertThat(layout.priceGap()).isZero();
    assertThat(layout.patterns()).singleElement().extracting(SheetPattern::sheet).isEqualTo(offcut);
  }

  @Test
  void takesTheCheaperOfTwoSizes() {
    StockSheet large = sheet("large", 120, 60, Supply.unlimited(), 20000);
    StockSheet half = sheet("half", 48, 48, Supply.unlimited(), 3500);
    Layout one =
        sound(
            problem(
                part("shelf", Length.inches(36), Length.inches(11), 4), plywood(), large, half));
    assertThat(one.price()).isEqualTo(3500);
    Layout many =
        sound(
            problem(
                part("shelf", Length.inches(36), Length.inches(11), 8), plywood(), large, half));
    assertThat(many.price()).isEqualTo(6000);
  }

  @Test
  void followsTheGrainOfEachSheet() {
    StockSheet across =
        new StockSheet(
            "across",
            Length.inches(48),
            Length.inches(96),
            SheetGrain.ALONG_WIDTH,
            Supply.unlimited(),
            6000,
            Origin.TO_BUY);
    Layout layout = sound(problem(part("side", Length.inches(90), Length.inches(11), 4), across));
    assertThat(layout.patterns().getFirst().parts())
        .allMatch(p -> p.node().equals(new Node.Finished("side", Lay.TURNED)))
        .hasSize(4);
  }

  @Test
  void keepsTheMarksOfEqualParts() {
    SheetProblem problem =
        new SheetProblem(
            List.of(
                part("left side", Length.inches(30), Length.inches(11), 1),
                part("right side", Length.inches(30), Length.inches(11), 1),
                part("partition", Length.inches(30), Length.inches(11), 2)),
            List.of(plywood()),
            Examples.SAW);
    assertThat(sound(problem).patterns().getFirst().parts())
        .extracting(p -> ((Node.Finished) p.node()).mark())
        .containsExactlyInAnyOrder("left side", "right side", "partition", "partition");
  }

  @Test
  void fiveThousandEqualPartsComeInOnePattern() {
    Part block = part("block", Length.inches(12), Length.inches(11), 5000);
    Layout layout = sound(problem(block, plywood()));
    assertThat(layout.unplaced()).isEmpty();
    assertThat(layout.sheets()).isEqualTo(179);
    assertThat(layout.patterns()).hasSizeLessThanOrEqualTo(2);
  }

  @Test
  void fiveThousandPartsOfManySizes() {
    List<Part> parts = new ArrayList<>();
    for (int i = 0; i < 250; i++) {
      Length length = Length.inches(160 + 37 * i % 1000, 16);
      parts.add(part("P" + i, length, Length.inches(64 + 53 * i % 160, 16), 20));
    }
    SheetProblem problem = new SheetProblem(parts, List.of(plywood()), Examples.SAW);
    Layout layout = sound(problem);
    assertThat(layout.unplaced()).isEmpty();
    assertThat(layout.sheetGap()).isLessThan(0.1);
  }

  /** Deep trees must not exhaust the stack: one board, thousands of cuts one after the other. */
  @Test
  void thousandsOfCutsInOneBoard() {
    Part slip = part("slip", Length.mm(2), Length.mm(50), 5000);
    StockSheet board =
        new StockSheet(
            "board",
            Length.mm(15_000),
            Length.mm(50),
            SheetGrain.ALONG_LENGTH,
            Supply.of(1),
            1,
            Origin.ON_HAND);
    SheetProblem problem =
        new SheetProblem(List.of(slip), List.of(board), new Saw(Length.mm(1), Trim.NONE));
    Layout layout = sound(problem);
    assertThat(layout.patterns().getFirst().parts()).hasSize(5000);
    assertThat(CuttingOrder.of(layout.patterns().getFirst(), 1, problem.saw(), HoldLimits.NONE))
        .extracting(setUp -> setUp.hold() + " " + setUp.steps().size())
        .containsExactly("GAUGE 4984", "FENCE 16");
  }

  static LongStream seeds() {
    return LongStream.range(0, 60);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void everyLayoutIsSoundAndAboveItsBound(long seed) {
    Layout layout = sound(Examples.bookcases(seed));
    assertThat(layout.price()).isGreaterThanOrEqualTo(layout.bound().price());
    assertThat(layout.sheets()).isGreaterThanOrEqualTo(layout.bound().sheets());
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void theSameProblemGivesTheSameLayout(long seed) {
    SheetProblem problem = Examples.bookcases(seed);
    assertThat(new StripCutter().cut(problem)).isEqualTo(cutter.cut(problem));
  }

  /** Length and width exchanged everywhere: sound as well, and with the same lower bound. */
  @ParameterizedTest
  @MethodSource("seeds")
  void theTurnedProblemIsSoundWithTheSameBound(long seed) {
    SheetProblem problem = Examples.bookcases(seed);
    Layout turned = sound(turned(problem));
    Layout layout = sound(problem);
    if (layout.unplaced().isEmpty() && turned.unplaced().isEmpty()) {
      assertThat(turned.bound()).isEqualTo(layout.bound());
    }
  }

  private static SheetProblem turned(SheetProblem problem) {
    return new SheetProblem(
        problem.parts(),
        problem.stock().stream().map(StripCutterTest::turned).toList(),
        problem.saw());
  }

  private static StockSheet turned(StockSheet s) {
    SheetGrain grain =
        switch (s.grain()) {
          case ALONG_LENGTH -> SheetGrain.ALONG_WIDTH;
          case ALONG_WIDTH -> SheetGrain.ALONG_LENGTH;
          case NONE -> SheetGrain.NONE;
        };
    return new StockSheet(
        s.name(), s.width(), s.length(), grain, s.supply(), s.price(), s.origin());
  }

  /**
   * A wider kerf can only raise the bound: what can be cut with it can be cut with a thinner one.
   */
  @ParameterizedTest
  @MethodSource("seeds")
  void aWiderKerfNeverLowersTheAreaNeeded(long seed) {
    SheetProblem problem = Examples.bookcases(seed);
    Layout thin = sound(withKerf(problem, Length.ZERO));
    Layout wide = sound(withKerf(problem, Length.inches(1, 4)));
    if (thin.unplaced().isEmpty() && wide.unplaced().isEmpty()) {
      assertThat(wide.sheets()).isGreaterThanOrEqualTo(thin.bound().sheets());
      assertThat(wide.price()).isGreaterThanOrEqualTo(thin.bound().price());
    }
  }

  private static SheetProblem withKerf(SheetProblem problem, Length kerf) {
    return new SheetProblem(problem.parts(), problem.stock(), new Saw(kerf, problem.saw().trim()));
  }
}
