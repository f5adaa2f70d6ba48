package fourpin.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Parts that must share one board, where boards have defects. */
class KnottyGroupsTest {
  private static final ThoroughCutter CUTTER = new ThoroughCutter(Examples.AIMS);

  private static SheetProblem problem(List<Part> parts, List<StockSheet> stock) {
    Together all = new Together("set", parts.stream().map(Part::mark).toList());
    return new SheetProblem(
        parts, stock, new Saw(Length.mm(3), Trim.NONE), new Ties(List.of(), List.of(all)));
  }

  /** Up to five boards, most with knots, and a group of up to five parts. */
  private static SheetProblem random(long seed) {
    Random random = new Random(seed);
    List<StockSheet> stock = new ArrayList<>();
    for (int i = random.nextInt(5); i >= 0; i--) {
      int length = 1200 + random.nextInt(1200);
      int width = 120 + random.nextInt(120);
      Defect[] knots = new Defect[random.nextInt(4)];
      for (int k = 0; k < knots.length; k++) {
        int x = random.nextInt(length - 60);
        int y = random.nextInt(width - 40);
        knots[k] = Examples.defect(x, y, 20 + random.nextInt(40), 10 + random.nextInt(30));
      }
      stock.add(Examples.board("board " + i, length, width, 100L * random.nextInt(5), knots));
    }
    List<Part> parts = new ArrayList<>();
    for (int i = 1 + random.nextInt(4); i >= 0; i--) {
      parts.add(Examples.part("P" + i, 200 + random.nextInt(600), 40 + random.nextInt(100), 1));
    }
    return problem(parts, stock);
  }

  /** What the cheapest of the boards costs that hold the group, each looked at alone. */
  private static OptionalLong cheapest(SheetProblem problem) {
    return problem.stock().stream()
        .filter(
            board ->
                CUTTER
                    .cut(new SheetProblem(problem.parts(), List.of(board), problem.saw()))
                    .unplaced()
                    .isEmpty())
        .mapToLong(StockSheet::price)
        .min();
  }

  /** With seed 54 a board with two knots is cheaper than the one that is found first. */
  @ParameterizedTest
  @ValueSource(longs = {0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 54})
  void eachBoardIsTried(long seed) {
    SheetProblem problem = random(seed);
    Layout layout = CUTTER.cut(problem);
    OptionalLong cheapest = cheapest(problem);
    assertThat(VirtualSaw.check(problem, layout)).isEmpty();
    assertThat(layout.unplaced().isEmpty()).isEqualTo(cheapest.isPresent());
    assertThat(layout.price()).isEqualTo(cheapest.orElse(0));
  }

  /** No sum says that a board is too small on which a cutter finds room for all. */
  @Test
  void noBoardThatHoldsAGroupLacksAnything() {
    int held = 0;
    int lacking = 0;
    for (long seed = 0; seed < 300; seed++) {
      SheetProblem problem = random(seed);
      Together group = problem.ties().together().getFirst();
      for (StockSheet board : problem.stock()) {
        SheetProblem alone = new SheetProblem(problem.parts(), List.of(board), problem.saw());
        boolean holds = new StripCutter().cut(alone).unplaced().isEmpty();
        boolean lacks = GroupLack.of(problem, group, board).isPresent();
        assertThat(holds && lacks).as(board + " of seed " + seed).isFalse();
        held += holds ? 1 : 0;
        lacking += lacks ? 1 : 0;
      }
    }
    assertThat(held).isGreaterThan(100);
    assertThat(lacking).isGreaterThan(100);
  }
}
