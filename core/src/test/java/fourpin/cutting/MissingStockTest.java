package fourpin.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every search ends with a sound layout where stock is short, used up, or not there at all. */
class MissingStockTest {
  static LongStream seeds() {
    return LongStream.range(0, 60);
  }

  private static SheetProblem tiny(Random random) {
    List<StockSheet> stock = new ArrayList<>();
    for (int i = 0; i < random.nextInt(3); i++) {
      stock.add(stock(random, "s" + i));
    }
    List<Part> parts = new ArrayList<>();
    for (int i = 0; i < 1 + random.nextInt(3); i++) {
      Length length = Length.inches(1 + random.nextInt(20));
      Length width = Length.inches(1 + random.nextInt(6));
      Grain grain = Grain.values()[random.nextInt(2)];
      parts.add(new Part("P" + i, length, width, 1 + random.nextInt(3), grain));
    }
    List<Together> groups =
        random.nextInt(4) > 0
            ? List.of()
            : List.of(new Together("group", parts.stream().map(Part::mark).toList()));
    Saw saw = new Saw(Length.inches(random.nextInt(3), 8), Trim.ends(Length.inches(1, 2)));
    return new SheetProblem(parts, stock, saw, new Ties(List.of(), groups));
  }

  private static StockSheet stock(Random random, String name) {
    return new StockSheet(
        name,
        Length.inches(4 + random.nextInt(20)),
        Length.inches(1 + random.nextInt(6)),
        SheetGrain.values()[random.nextInt(3)],
        Supply.of(random.nextInt(3)),
        random.nextInt(3),
        Origin.TO_BUY,
        List.of(),
        Length.inches(random.nextInt(3), 2));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void everySearchEnds(long seed) {
    SheetProblem problem = tiny(new Random(seed));
    List<SheetCutter> cutters =
        List.of(new StripCutter(), new PatternCutter(100_000), new ThoroughCutter(Examples.AIMS));
    for (SheetCutter cutter : cutters) {
      Layout layout = cutter.cut(problem);
      assertThat(VirtualSaw.check(problem, layout)).isEmpty();
      assertThat(layout.price()).isGreaterThanOrEqualTo(layout.bound().price());
      assertThat(layout.sheets()).isGreaterThanOrEqualTo(layout.bound().sheets());
    }
  }
}
