package fourpin.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.measure.Length;
import fourpin.measure.Unit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Few parts take the fewest sheets that guillotine cuts allow, in whatever order they come. */
class FewPartsTest {
  private static final int KERF = 4;
  private static final int LENGTH = 1180;
  private static final int WIDTH = 300;
  private static final int LEAST = 60;

  /** Sizes in millimetres. */
  private record Size(int length, int width) {}

  static LongStream seeds() {
    return LongStream.range(0, 40);
  }

  private static Layout cut(List<Part> parts, SawLimits limits) {
    StockSheet sheet =
        new StockSheet(
            "sheet",
            Length.mm(LENGTH),
            Length.mm(WIDTH),
            SheetGrain.ALONG_LENGTH,
            Supply.unlimited(),
            900,
            Origin.TO_BUY);
    Saw saw = new Saw(Length.mm(KERF), Trim.NONE, limits);
    SheetProblem problem = new SheetProblem(parts, List.of(sheet), saw);
    Layout layout = new ThoroughCutter(Examples.AIMS).cut(problem);
    assertThat(VirtualSaw.check(problem, layout)).isEmpty();
    assertThat(layout.unplaced()).isEmpty();
    return layout;
  }

  private static List<Part> parts(List<Size> sizes, Grain grain) {
    List<Part> parts = new ArrayList<>();
    for (Size size : sizes) {
      String mark = "P" + parts.size();
      parts.add(new Part(mark, Length.mm(size.length), Length.mm(size.width), 1, grain));
    }
    return parts;
  }

  /** What a sheet is sawn into goes back on one sheet: known without any search. */
  @ParameterizedTest
  @MethodSource("seeds")
  void whatWasSawnFromOneSheetTakesOne(long seed) {
    Random random = new Random(seed);
    List<Size> sizes = new ArrayList<>();
    saw(new Size(LENGTH, WIDTH), 4 + random.nextInt(5), random, sizes);
    List<Part> parts = parts(sizes, Grain.FIXED);
    assertThat(cut(parts, SawLimits.NONE).sheets()).isOne();
    Collections.shuffle(parts, random);
    assertThat(cut(parts, SawLimits.NONE).sheets()).isOne();
  }

  private static void saw(Size size, int pieces, Random random, List<Size> sawn) {
    boolean crosscut = size.length > size.width == random.nextInt(4) > 0;
    int extent = crosscut ? size.length : size.width;
    if (pieces == 1 || extent < 2 * LEAST + KERF) {
      sawn.add(size);
      return;
    }
    int fence = LEAST + random.nextInt(extent - 2 * LEAST - KERF + 1);
    int rest = extent - fence - KERF;
    int near = 1 + random.nextInt(pieces - 1);
    saw(crosscut ? new Size(fence, size.width) : new Size(size.length, fence), near, random, sawn);
    Size far = crosscut ? new Size(rest, size.width) : new Size(size.length, rest);
    saw(far, pieces - near, random, sawn);
  }

  /** Two of the smaller sheets do, worked out by trying; found first are one of each. */
  @Test
  void atOnePriceTheLeastAreaIsTaken() {
    List<Part> parts =
        List.of(
            new Part("a", Length.mm(443), Length.mm(123), 2, Grain.FREE),
            new Part("b", Length.mm(478), Length.mm(298), 3, Grain.FIXED));
    List<StockSheet> stock = List.of(sheet("small", 512, 774), sheet("large", 783, 847));
    SheetProblem problem =
        new SheetProblem(
            parts, stock, new Saw(Length.mm(KERF), Trim.allRound(Length.inches(1, 4))));
    Layout layout = new ThoroughCutter(Examples.AIMS).cut(problem);
    assertThat(VirtualSaw.check(problem, layout)).isEmpty();
    assertThat(layout.patterns()).allMatch(pattern -> pattern.sheet().name().equals("small"));
    assertThat(layout.sheets()).isEqualTo(2);
  }

  private static StockSheet sheet(String name, int length, int width) {
    return new StockSheet(
        name,
        Length.mm(length),
        Length.mm(width),
        SheetGrain.ALONG_LENGTH,
        Supply.unlimited(),
        5000,
        Origin.TO_BUY);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void asFewAsTryingEveryCutFinds(long seed) {
    Random random = new Random(seed);
    List<Size> sizes = new ArrayList<>();
    for (int i = 0; i < 5; i++) {
      sizes.add(new Size(150 + random.nextInt(600), 60 + random.nextInt(200)));
    }
    boolean turned = random.nextBoolean();
    Layout layout = cut(parts(sizes, turned ? Grain.FREE : Grain.FIXED), SawLimits.NONE);
    assertThat(layout.sheets()).isEqualTo(new EveryCut(sizes, turned).fewest(sizes));
    assertThat(layout.isProven()).isTrue();
  }

  /**
   * With limits, what is found is still cut within them, and never on fewer sheets than without.
   */
  @ParameterizedTest
  @MethodSource("seeds")
  void limitsOfTheSawAreKept(long seed) {
    Random random = new Random(seed);
    List<Size> sizes = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      sizes.add(new Size(150 + random.nextInt(600), LEAST + random.nextInt(200)));
    }
    List<Part> parts = parts(sizes, Grain.FIXED);
    long free = cut(parts, SawLimits.NONE).sheets();
    assertThat(cut(parts, SawLimits.NONE.withStages(2)).sheets()).isGreaterThanOrEqualTo(free);
  }

  /** The oak of the example with a dresser: edges and ribs, in two orders of the lines. */
  @Test
  void theOakOfTheDresserIsOneBoard() {
    List<Part> oak =
        new ArrayList<>(
            List.of(
                oak("e13", 8734, 393, 2),
                oak("e12", 4202, 393, 2),
                oak("e11", 8754, 75, 4),
                oak("rib", 8864, 200, 5),
                oak("e10", 9000, 75, 2),
                oak("e19", 11500, 75, 2)));
    assertThat(boards(oak)).isOne();
    Collections.reverse(oak);
    assertThat(boards(oak)).isOne();
  }

  private static Part oak(String mark, int length, int width, int count) {
    return new Part(mark, tenths(length), tenths(width), count, Grain.FIXED);
  }

  private static Length tenths(int tenths) {
    return new Length(Length.mm(tenths).picometres() / 10, Unit.MILLIMETRE);
  }

  private static long boards(List<Part> parts) {
    StockSheet board =
        new StockSheet(
            "board",
            Length.mm(2400),
            Length.mm(150),
            SheetGrain.ALONG_LENGTH,
            Supply.unlimited(),
            3600,
            Origin.TO_BUY);
    Trim trim = new Trim(Length.mm(3), Length.ZERO, Length.mm(25), Length.mm(25));
    SheetProblem problem =
        new SheetProblem(parts, List.of(board), new Saw(tenths(32), trim, SawLimits.NONE));
    Layout layout = new ThoroughCutter(Examples.AIMS).cut(problem);
    assertThat(VirtualSaw.check(problem, layout)).isEmpty();
    return layout.sheets();
  }

  /** Every way to part every set of parts by every cut that can matter: slow and plain. */
  private record EveryCut(List<Size> sizes, boolean turned) {

    int fewest(List<Size> all) {
      int everything = (1 << all.size()) - 1;
      int[] fewest = new int[everything + 1];
      for (int set = 1; set <= everything; set++) {
        fewest[set] = fit(set, LENGTH, WIDTH) ? 1 : all.size();
        for (int some = set & (set - 1); some > 0; some = (some - 1) & set) {
          fewest[set] = Math.min(fewest[set], fewest[some] + fewest[set - some]);
        }
      }
      return fewest[everything];
    }

    private boolean fit(int set, int length, int width) {
      if (set == 0) {
        return true;
      }
      if (length <= 0 || width <= 0 || area(set) > (long) length * width) {
        return false;
      }
      if (Integer.bitCount(set) == 1) {
        Size size = sizes.get(Integer.numberOfTrailingZeros(set));
        return (size.length <= length && size.width <= width)
            || (turned && size.width <= length && size.length <= width);
      }
      for (int near = (set - 1) & set; near > 0; near = (near - 1) & set) {
        if (parted(near, set - near, length, width)) {
          return true;
        }
      }
      return false;
    }

    private boolean parted(int near, int far, int length, int width) {
      for (int fence : fences(near)) {
        int beyond = fence + KERF;
        if (fence <= length && fit(near, fence, width) && fit(far, length - beyond, width)) {
          return true;
        }
        if (fence <= width && fit(near, length, fence) && fit(far, length, width - beyond)) {
          return true;
        }
      }
      return false;
    }

    /** Sums of lengths and widths of some of the parts, one of each, with the kerfs between. */
    private TreeSet<Integer> fences(int set) {
      TreeSet<Integer> sums = new TreeSet<>(List.of(-KERF));
      for (int i = 0; i < sizes.size(); i++) {
        if ((set >> i & 1) == 1) {
          Size size = sizes.get(i);
          for (int sum : List.copyOf(sums)) {
            sums.add(sum + KERF + size.length);
            sums.add(sum + KERF + size.width);
          }
        }
      }
      sums.remove(-KERF);
      return sums;
    }

    private long area(int set) {
      long area = 0;
      for (int i = 0; i < sizes.size(); i++) {
        area += (set >> i & 1) * (long) sizes.get(i).length * sizes.get(i).width;
      }
      return area;
    }
  }
}
