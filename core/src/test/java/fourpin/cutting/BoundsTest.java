package fourpin.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class BoundsTest {
  /** Of both there are many divisors, few of which are powers of two. */
  private static final int LENGTH = 2520;

  private static final int WIDTH = 1260;
  private static final int[] SHARES = {1, 3, 5, 6, 7, 9, 10, 12, 14, 15, 18, 20, 21, 28, 30};

  static LongStream seeds() {
    return LongStream.range(0, 300);
  }

  private static StockSheet sheet(String name, int width, long price) {
    return new StockSheet(
        name,
        Length.mm(LENGTH),
        Length.mm(width),
        SheetGrain.ALONG_LENGTH,
        Supply.unlimited(),
        price,
        Origin.TO_BUY);
  }

  private static int share(Random random) {
    return SHARES[random.nextInt(SHARES.length)];
  }

  /**
   * Parts that fill thousands of sheets without a rest, priced by the square millimetre: the price
   * of these sheets is the least, some 100,000,000,000 in steps of 1.
   */
  @ParameterizedTest
  @MethodSource("seeds")
  void roundsUpNoFurtherThanTheLeast(long seed) {
    Random random = new Random(seed);
    long area = (long) LENGTH * WIDTH;
    List<Part> parts = new ArrayList<>();
    long sheets = 0;
    for (int i = 0; i < 2 + random.nextInt(5); i++) {
      int along = share(random);
      int across = share(random);
      int full = 1 + random.nextInt(10_000);
      Length length = Length.mm(LENGTH / along);
      parts.add(Examples.part("P" + i, length, Length.mm(WIDTH / across), full * along * across));
      sheets += full;
    }
    Inflated inflated =
        new Inflated(
            new SheetProblem(
                parts,
                List.of(sheet("filled", WIDTH, area), sheet("dearer", WIDTH, area + 1)),
                new Saw(Length.ZERO, Trim.NONE)));
    LowerBound bound = new Bounds(inflated, inflated.demand).bound();
    assertThat(bound).isEqualTo(new LowerBound(sheets * area, sheets));
  }

  /**
   * By hand: a part larger than half of each sheet both ways takes one of its own, 30, 30 and 50.
   */
  @Test
  void asManySheetsAsAreNeededCostTheCheapestOfThem() {
    Part rail = Examples.part("rail", Length.mm(1500), Length.mm(101), 3);
    StockSheet cheap = limited("cheap", LENGTH, 200, 2, 30);
    StockSheet dear = limited("dear", LENGTH, 201, 9, 50);
    assertThat(bound(rail, cheap, dear).price()).isEqualTo(2 * 30 + 50);
  }

  /** Wood too short for the part would come cheaper by area. */
  @Test
  void sheetsThatNoPartFitsOnAreNotCounted() {
    Part rail = Examples.part("rail", Length.mm(1500), Length.mm(100), 10);
    StockSheet sheet = limited("sheet", LENGTH, 600, 9, 50);
    StockSheet tooShort = limited("short", 1400, 1000, 99, 1);
    assertThat(bound(rail, sheet, tooShort)).isEqualTo(bound(rail, sheet));
    assertThat(bound(rail, sheet).price()).isEqualTo(2 * 50);
  }

  private static StockSheet limited(String name, int length, int width, int count, long price) {
    return new StockSheet(
        name,
        Length.mm(length),
        Length.mm(width),
        SheetGrain.ALONG_LENGTH,
        Supply.of(count),
        price,
        Origin.TO_BUY);
  }

  private static LowerBound bound(Part part, StockSheet... stock) {
    Saw saw = new Saw(Length.ZERO, Trim.NONE);
    Inflated inflated = new Inflated(new SheetProblem(List.of(part), List.of(stock), saw));
    return new Bounds(inflated, inflated.demand).bound();
  }
}
