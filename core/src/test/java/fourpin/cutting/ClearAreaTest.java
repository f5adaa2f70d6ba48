package fourpin.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The bound of boards with defects, by their clear area. */
class ClearAreaTest {

  private static LowerBound bound(List<Part> parts, StockSheet... boards) {
    Saw saw = new Saw(Length.mm(3), Trim.NONE);
    return Bounds.ofPlaced(new SheetProblem(parts, List.of(boards), saw), List.of());
  }

  /**
   * Half of each board is rotten: three parts of nearly half a board ask for three, not for two.
   */
  @Test
  void whatIsRottenHoldsNothing() {
    Defect rot = Examples.defect(1000, 0, 1000, 150);
    assertThat(
            bound(
                List.of(Examples.part("rail", 900, 140, 3)),
                Examples.board("a", 2000, 150, 10, rot),
                Examples.board("b", 2000, 150, 10, rot),
                Examples.board("c", 2000, 150, 10, rot)))
        .isEqualTo(new LowerBound(30, 3));
  }

  /** Two parts of 497 with their kerfs in a defect of 6 between them fill a board of 1000. */
  @Test
  void kerfsMayLieInADefect() {
    assertThat(
            bound(
                List.of(Examples.part("rail", 497, 100, 2)),
                Examples.board("a", 1000, 100, 10, Examples.defect(497, 0, 6, 100)),
                Examples.board("b", 1000, 100, 10)))
        .isEqualTo(new LowerBound(10, 1));
  }

  /** By hand: 1003 by 103 with the kerf, less 47 by 17 of the first defect. */
  @Test
  void defectsOverEachOtherCountOnce() {
    StockSheet board =
        Examples.board(
            "a", 1000, 100, 10, Examples.defect(100, 50, 50, 20), Examples.defect(110, 55, 50, 20));
    Inflated inflated =
        new Inflated(
            new SheetProblem(
                List.of(Examples.part("rail", 400, 90, 1)),
                List.of(board),
                new Saw(Length.mm(3), Trim.NONE)));
    assertThat(new ClearArea(inflated, inflated.panels.getFirst()).most().doubleValue() / 1e18)
        .isEqualTo(1003 * 103 - 47 * 17);
  }

  /** Random boards, each with two defects; layouts of what has a place. */
  @Test
  void noLayoutGoesBelowTheBound() {
    int raised = 0;
    for (long seed = 0; seed < 200; seed++) {
      Random random = new Random(seed);
      List<StockSheet> boards = new ArrayList<>();
      for (int i = 0; i < 3; i++) {
        boards.add(
            Examples.board(
                "b" + i,
                1000 + random.nextInt(1000),
                100 + random.nextInt(100),
                10 + random.nextInt(10),
                Examples.defect(
                    random.nextInt(900), random.nextInt(90), 20 + random.nextInt(500), 60),
                Examples.defect(
                    random.nextInt(900), random.nextInt(90), 20 + random.nextInt(80), 20)));
      }
      List<Part> parts = new ArrayList<>();
      for (int i = 0; i < 6; i++) {
        parts.add(Examples.part("P" + i, 100 + random.nextInt(400), 20 + random.nextInt(70), 2));
      }
      Saw saw = new Saw(Length.mm(random.nextInt(5)), Trim.allRound(Length.mm(random.nextInt(8))));
      SheetProblem problem = new SheetProblem(parts, boards, saw);
      Layout layout = new StripCutter().cut(problem);
      LowerBound bound = Bounds.ofPlaced(problem, layout.unplaced());
      assertThat(VirtualSaw.check(problem, layout)).isEmpty();
      assertThat(layout.price()).isGreaterThanOrEqualTo(bound.price());
      assertThat(layout.sheets()).isGreaterThanOrEqualTo(bound.sheets());
      List<StockSheet> clear = boards.stream().map(StockSheet::withoutDefects).toList();
      LowerBound before = Bounds.ofPlaced(new SheetProblem(parts, clear, saw), layout.unplaced());
      assertThat(bound.price()).isGreaterThanOrEqualTo(before.price());
      raised += bound.price() > before.price() ? 1 : 0;
    }
    assertThat(raised).isPositive();
  }
}
