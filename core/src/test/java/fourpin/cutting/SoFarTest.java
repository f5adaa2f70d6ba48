package fourpin.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.cutting.Matched.Run;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is cut stays, and the rest is planned again. */
class SoFarTest {

  static LongStream seeds() {
    return LongStream.range(0, 40);
  }

  /**
   * Some sheets of a layout are cut and one is spoilt; the sheets cut and those planned anew are a
   * layout of the whole problem, with the spoilt sheet taken from the stock.
   */
  @ParameterizedTest
  @MethodSource("seeds")
  void whatIsCutAndWhatIsPlannedAgainAreTheWhole(long seed) {
    Random random = new Random(seed);
    SheetProblem problem = Examples.bookcases(seed);
    List<SheetPattern> patterns = single(new StripCutter().cut(problem).patterns());
    int cut = random.nextInt(patterns.size());
    SoFar soFar = SoFar.cut(patterns.subList(0, cut));
    SoFar spoilt = soFar.spoilt(patterns.get(cut).sheet().name());
    SheetProblem rest = spoilt.rest(problem);
    Layout again = new StripCutter().cut(rest);
    assertThat(VirtualSaw.check(rest, again)).isEmpty();

    SheetProblem whole =
        new SheetProblem(problem.parts(), less(problem, patterns.get(cut)), problem.saw());
    assertThat(VirtualSaw.check(whole, together(whole, patterns.subList(0, cut), again))).isEmpty();
  }

  /** One sheet each. */
  private static List<SheetPattern> single(List<SheetPattern> patterns) {
    List<SheetPattern> single = new ArrayList<>();
    for (SheetPattern pattern : patterns) {
      for (int i = 0; i < pattern.quantity(); i++) {
        single.add(new SheetPattern(pattern.sheet(), 1, pattern.root()));
      }
    }
    return single;
  }

  private static List<StockSheet> less(SheetProblem problem, SheetPattern spoilt) {
    return problem.stock().stream()
        .map(
            sheet ->
                sheet.equals(spoilt.sheet()) && sheet.supply() instanceof Supply.Limited(int count)
                    ? sheet.with(Supply.of(count - 1))
                    : sheet)
        .toList();
  }

  /** With every sheet in the supply that the whole problem states. */
  private static Layout together(SheetProblem whole, List<SheetPattern> cut, Layout again) {
    List<SheetPattern> all = new ArrayList<>();
    for (List<SheetPattern> some : List.of(cut, again.patterns())) {
      for (SheetPattern pattern : some) {
        StockSheet sheet =
            whole.stock().stream()
                .filter(s -> s.name().equals(pattern.sheet().name()))
                .findFirst()
                .orElseThrow();
        all.add(new SheetPattern(sheet, pattern.quantity(), pattern.root()));
      }
    }
    return new Layout(all, again.unplaced(), again.bound());
  }

  private static Part part(String mark, int count) {
    return Examples.part(mark, Length.inches(20), Length.inches(8), count);
  }

  private static final List<Part> PARTS = List.of(part("a", 4), part("b", 2), part("c", 3));

  @Test
  void aSetWithAMissingPartIsCutAgainAsAWhole() {
    Ties ties =
        new Ties(List.of(new Matched("set", Run.END_TO_END, List.of("a", "b", "a"))), List.of());
    SoFar soFar = new SoFar(Map.of("a", 3, "b", 2, "c", 1), Map.of());
    assertThat(soFar.parts(PARTS, ties)).containsExactly(part("a", 2), part("b", 1), part("c", 2));
  }

  @Test
  void whatIsLeftOfAGroupSharesASheetOfItsOwn() {
    Ties ties = new Ties(List.of(), List.of(new Together("doors", List.of("a", "b"))));
    SheetProblem problem = new SheetProblem(PARTS, List.of(Examples.plywood()), Examples.SAW, ties);
    SheetProblem rest = new SoFar(Map.of("a", 4, "b", 1), Map.of("plywood", 1)).rest(problem);
    assertThat(rest.parts()).containsExactly(part("b", 1), part("c", 3));
    assertThat(rest.ties().together()).containsExactly(new Together("doors", List.of("b")));
  }

  /**
   * Three are taken for the first layout, one of them spoilt; the second takes two and one more.
   */
  @Test
  void whatIsWholeIsTakenForTheNextLayout() {
    SoFar first = SoFar.NOTHING.spoilt("ply").and(SoFar.whole("ply")).and(SoFar.whole("ply"));
    assertThat(first.wholeOf("ply")).isEqualTo(2);
    SoFar second = SoFar.NOTHING.spoilt("ply").and(SoFar.whole("ply")).and(SoFar.whole("ply"));
    assertThat(first.then(second).usedOf("ply")).isEqualTo(2);
    assertThat(first.then(second).wholeOf("ply")).isEqualTo(2);
    SoFar fewer = SoFar.NOTHING.spoilt("ply");
    assertThat(first.then(fewer).wholeOf("ply")).isEqualTo(1);
  }

  @Test
  void moreGoodPartsThanWantedLeaveNothing() {
    assertThat(new SoFar(Map.of("a", 9, "b", 2, "c", 3), Map.of()).parts(PARTS, Ties.NONE))
        .isEmpty();
  }
}
