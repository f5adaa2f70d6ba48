package fourpin.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.cutting.Pricing.Priced;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The best patterns held to plain recursion over every whole size and every number of copies. */
class PricingTest {

  static LongStream seeds() {
    return LongStream.range(0, 40);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void theBestSheetIsThatOfPlainRecursion(long seed) {
    Random random = new Random(seed);
    int length = 8 + random.nextInt(10);
    int width = 8 + random.nextInt(10);
    List<Part> parts = new ArrayList<>();
    long[] worth = new long[2 + random.nextInt(3)];
    for (int i = 0; i < worth.length; i++) {
      worth[i] = 1L + random.nextInt(50);
      parts.add(part("P" + i, 2 + random.nextInt(6), 2 + random.nextInt(6)));
    }
    Inflated problem = problem(parts, length, width);
    int[] wanted = problem.demand;
    long[] kindWorth = Arrays.copyOf(worth, problem.kinds.size());
    Priced priced = new SheetPricing(problem, Work.of(Long.MAX_VALUE)).prove(0, kindWorth, wanted);
    assertThat(priced.ceiling()).isEqualTo(best(problem, kindWorth, length, width));
    assertThat(priced.columns())
        .allSatisfy(column -> assertThat(column.worth(kindWorth)).isEqualTo(priced.ceiling()));
  }

  private static Part part(String mark, int length, int width) {
    return new Part(mark, Length.mm(length), Length.mm(width), 1_000, Grain.FREE);
  }

  private static Inflated problem(List<Part> parts, int length, int width) {
    StockSheet sheet =
        new StockSheet(
            "sheet",
            Length.mm(length),
            Length.mm(width),
            SheetGrain.ALONG_LENGTH,
            Supply.unlimited(),
            1,
            Origin.TO_BUY);
    return new Inflated(new SheetProblem(parts, List.of(sheet), new Saw(Length.ZERO, Trim.NONE)));
  }

  private static long best(Inflated problem, long[] worth, int length, int width) {
    long[][] best = new long[length + 1][width + 1];
    long mm = Length.mm(1).picometres();
    for (int x = 1; x <= length; x++) {
      for (int y = 1; y <= width; y++) {
        for (Inflated.Option o : problem.panels.getFirst().options()) {
          boolean fits = o.dx() <= x * mm && o.dy() <= y * mm;
          best[x][y] = Math.max(best[x][y], fits ? worth[o.kind()] : 0);
        }
        for (int cut = 1; cut < x; cut++) {
          best[x][y] = Math.max(best[x][y], best[cut][y] + best[x - cut][y]);
        }
        for (int cut = 1; cut < y; cut++) {
          best[x][y] = Math.max(best[x][y], best[x][cut] + best[x][y - cut]);
        }
      }
    }
    return best[length][width];
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void theBestBoardIsThatOfEveryNumberOfCopies(long seed) {
    Random random = new Random(seed);
    List<BoardPart> parts = new ArrayList<>();
    long[] worth = new long[3];
    for (int i = 0; i < worth.length; i++) {
      worth[i] = random.nextInt(50);
      parts.add(new BoardPart("P" + i, Length.mm(10 * i + 5 + random.nextInt(9)), 1 + i));
    }
    StockBoard board = new StockBoard("board", Length.mm(80), Supply.unlimited(), 1, Origin.TO_BUY);
    BoardProblem boards =
        new BoardProblem(parts, List.of(board), Length.mm(9), Length.mm(1), Length.ZERO);
    Inflated problem = new Inflated(boards.asSheets());
    Priced priced =
        new BoardPricing(problem, Work.of(Long.MAX_VALUE)).prove(0, worth, problem.demand);
    assertThat(priced.ceiling()).isEqualTo(best(problem, worth));
    if (priced.ceiling() > 0) {
      assertThat(priced.columns().getFirst().worth(worth)).isEqualTo(priced.ceiling());
    }
  }

  private static long best(Inflated problem, long[] worth) {
    long best = 0;
    for (int a = 0; a <= problem.demand[0]; a++) {
      for (int b = 0; b <= problem.demand[1]; b++) {
        for (int c = 0; c <= problem.demand[2]; c++) {
          long used = a * length(problem, 0) + b * length(problem, 1) + c * length(problem, 2);
          boolean fits = used <= problem.panels.getFirst().length();
          best = fits ? Math.max(best, a * worth[0] + b * worth[1] + c * worth[2]) : best;
        }
      }
    }
    return best;
  }

  private static long length(Inflated problem, int kind) {
    return problem.kinds.get(kind).length();
  }
}
