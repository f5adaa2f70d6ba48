package fourpin.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Small problems for the tests. */
final class Examples {
  static final Length KERF = Length.inches(1, 8);
  static final Saw SAW = new Saw(KERF, Trim.NONE);

  /** What is left counts from 12 by 4 in; nothing shorter than 12 in is held at the saw. */
  static final Merit.Aims AIMS =
      new Merit.Aims(new Reusable(Length.inches(12), Length.inches(4)), Length.inches(12));

  private static final StripCutter.Effort HURRIED = new StripCutter.Effort(1_000_000, 128);
  private static final int HURRIED_STEPS = 50_000;

  private Examples() {}

  /** The quick cutter's answer and that of a short search can be sawn and keep to the bound. */
  static void requireSound(SheetProblem problem) {
    Layout quick = new StripCutter().cut(problem);
    assertThat(VirtualSaw.check(problem, quick)).isEmpty();
    Layout searched =
        new PatternCutter(HURRIED, HURRIED_STEPS, Watch.NOBODY, Starts.NONE).cut(problem);
    assertThat(VirtualSaw.check(problem, searched)).isEmpty();
    assertThat(searched.price()).isGreaterThanOrEqualTo(searched.bound().price());
    assertThat(searched.sheets()).isGreaterThanOrEqualTo(searched.bound().sheets());
  }

  /** A sheet of 96 by 48 in with the grain along its length, as many as needed, at 60.00. */
  static StockSheet plywood() {
    return sheet("plywood", 96, 48, Supply.unlimited(), 6000);
  }

  /** Its sizes in millimetres. */
  static StockSheet metric(String name, int length, int width, Supply supply, long price) {
    return new StockSheet(
        name,
        Length.mm(length),
        Length.mm(width),
        SheetGrain.ALONG_LENGTH,
        supply,
        price,
        Origin.TO_BUY);
  }

  static StockSheet sheet(String name, int length, int width, Supply supply, long price) {
    return new StockSheet(
        name,
        Length.inches(length),
        Length.inches(width),
        SheetGrain.ALONG_LENGTH,
        supply,
        price,
        Origin.TO_BUY);
  }

  /** One board, in millimetres; those that cost nothing are on hand. */
  static StockSheet board(String name, int length, int width, long price, Defect... defects) {
    return new StockSheet(
        name,
        Length.mm(length),
        Length.mm(width),
        SheetGrain.ALONG_LENGTH,
        Supply.of(1),
        price,
        price == 0 ? Origin.ON_HAND : Origin.TO_BUY,
        List.of(defects),
        Length.ZERO);
  }

  /** Boards of a width, in millimetres, of which 3 mm are ripped off along each rough edge. */
  static StockSheet rough(int length, int width, long price) {
    return new StockSheet(
        length + " x " + width,
        Length.mm(length),
        Length.mm(width),
        SheetGrain.ALONG_LENGTH,
        Supply.unlimited(),
        price,
        Origin.TO_BUY,
        List.of(),
        Length.mm(3));
  }

  /** In millimetres. */
  static Defect defect(int x, int y, int length, int width) {
    return new Defect(Length.mm(x), Length.mm(y), Length.mm(length), Length.mm(width));
  }

  /** In millimetres. */
  static Part part(String mark, int length, int width, int count) {
    return part(mark, Length.mm(length), Length.mm(width), count);
  }

  static Part part(String mark, Length length, Length width, int count) {
    return new Part(mark, length, width, count, Grain.FIXED);
  }

  /**
   * The parts of a few bookcases of all sizes, in sixteenths of an inch, with trim and kerf: drawn
   * from a seed.
   */
  static SheetProblem bookcases(long seed) {
    Random random = new Random(seed);
    List<Part> parts = new ArrayList<>();
    for (int i = 0; i < 2 + random.nextInt(10); i++) {
      parts.add(
          new Part(
              "P" + i,
              sixteenths(random, 64, 96 * 16 - 16),
              sixteenths(random, 16, 24 * 16),
              1 + random.nextInt(6),
              random.nextBoolean() ? Grain.FIXED : Grain.FREE));
    }
    return new SheetProblem(parts, stock(random), saw(random));
  }

  private static List<StockSheet> stock(Random random) {
    return List.of(
        plywood(),
        sheet("large", 120, 60, Supply.of(random.nextInt(3)), 9000),
        new StockSheet(
            "offcut",
            Length.inches(40),
            Length.inches(30),
            SheetGrain.ALONG_WIDTH,
            Supply.of(2),
            0,
            Origin.ON_HAND),
        new StockSheet(
            "fibreboard",
            Length.inches(49),
            Length.inches(97),
            SheetGrain.NONE,
            Supply.of(1),
            3000,
            Origin.ON_HAND));
  }

  private static Saw saw(Random random) {
    Length kerf = Length.inches(random.nextInt(4), 32);
    return new Saw(kerf, Trim.allRound(Length.inches(random.nextInt(3), 8)));
  }

  /** From so many sixteenths of an inch up to so many, the last left out. */
  static Length sixteenths(Random random, int from, int to) {
    return Length.inches(from + random.nextInt(to - from), 16);
  }
}
