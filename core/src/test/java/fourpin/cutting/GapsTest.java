package fourpin.cutting;

import static fourpin.cutting.SawLimits.FREE;
import static fourpin.cutting.SawLimits.FirstCut.EITHER;
import static org.assertj.core.api.Assertions.assertThat;

import fourpin.cutting.ClearPieces.Cuts;
import fourpin.cutting.ClearPieces.Gaps;
import fourpin.cutting.ThoroughCutter.Limit;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** One cut in the gap between two defects instead of one on either side of it. */
class GapsTest {
  private static final ThoroughCutter CUTTER = new ThoroughCutter(Examples.AIMS);

  private static StockSheet board(
      String name, int length, int width, Supply supply, long price, Defect... defects) {
    return new StockSheet(
        name,
        Length.mm(length),
        Length.mm(width),
        SheetGrain.ALONG_LENGTH,
        supply,
        price,
        price == 0 ? Origin.ON_HAND : Origin.TO_BUY,
        List.of(defects),
        Length.mm(3));
  }

  private static Defect defect(int x, int y, int length, int width) {
    return new Defect(Length.mm(x), Length.mm(y), Length.mm(length), Length.mm(width));
  }

  /** Ripped at 94 mm and each strip crosscut beside its knot, one board holds all, by hand. */
  private static SheetProblem knotsAtBothEdges() {
    StockSheet knotty =
        board(
            "knotty", 2000, 150, Supply.of(1), 0, defect(900, 100, 100, 50), defect(25, 0, 35, 20));
    StockSheet clear = board("clear", 2000, 150, Supply.unlimited(), 2000);
    return new SheetProblem(
        List.of(Examples.part("rail", 900, 90, 2), Examples.part("slat", 850, 45, 2)),
        List.of(knotty, clear),
        new Saw(Length.mm(3), new Trim(Length.ZERO, Length.ZERO, Length.mm(10), Length.mm(10))));
  }

  @Test
  void oneRipBetweenKnotsAtBothEdgesLeavesTwoWideStrips() {
    Layout layout = CUTTER.cut(knotsAtBothEdges());
    assertThat(VirtualSaw.check(knotsAtBothEdges(), layout)).isEmpty();
    assertThat(layout.unplaced()).isEmpty();
    assertThat(layout.price()).isZero();
  }

  /** By hand: board 100 long and 10 wide, knots 2 high at both edges, the gap from 2 to 8. */
  @ParameterizedTest
  @EnumSource(Gaps.class)
  void theCutStandsWhereItIsSaid(Gaps gaps) {
    StockSheet board =
        new StockSheet(
            "ash",
            Length.inches(100),
            Length.inches(10),
            SheetGrain.ALONG_LENGTH,
            Supply.of(1),
            0,
            Origin.ON_HAND,
            List.of(inches(20, 0), inches(60, 8)),
            Length.ZERO);
    Saw saw = new Saw(Length.inches(1), Trim.NONE);
    List<Length> widths =
        new ClearPieces(board, saw, new Cuts(Direction.RIP, gaps), Length.ZERO)
            .pieces().stream()
                .map(clear -> new Length(clear.width(), board.width().unit()))
                .distinct()
                .toList();
    List<Length> byHand =
        switch (gaps) {
          case CLEAR -> List.of(Length.inches(2), Length.inches(5), Length.inches(1));
          case AFTER -> List.of(Length.inches(2), Length.inches(7), Length.inches(5));
          case MIDDLE -> List.of(Length.inches(9, 2), Length.inches(3, 2), Length.inches(5, 2));
          case BEFORE -> List.of(Length.inches(7), Length.inches(4), Length.inches(2));
        };
    assertThat(widths).containsExactlyElementsOf(byHand);
  }

  private static Defect inches(int x, int y) {
    return new Defect(Length.inches(x), Length.inches(y), Length.inches(4), Length.inches(2));
  }

  /** A board of 24 by 8 units of 50 by 20 mm with two defects, and parts that may just fit. */
  private static SheetProblem random(long seed) {
    Random random = new Random(seed);
    Defect[] defects = new Defect[2];
    Arrays.setAll(defects, i -> defect(50 * random.nextInt(23), 20 * random.nextInt(7), 50, 20));
    List<Part> parts = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      parts.add(
          Examples.part("P" + i, 50 * (6 + random.nextInt(8)), 20 * (1 + random.nextInt(4)), 1));
    }
    StockSheet board =
        new StockSheet(
            "ash",
            Length.mm(24 * 50),
            Length.mm(8 * 20),
            SheetGrain.ALONG_LENGTH,
            Supply.of(1),
            0,
            Origin.ON_HAND,
            List.of(defects),
            Length.ZERO);
    return new SheetProblem(parts, List.of(board), new Saw(Length.ZERO, Trim.NONE));
  }

  /** Every way to part a board into whole units from edge to edge, again and again. */
  private static final class EveryCut {
    private static final int LONG = 24;
    private static final int WIDE = 8;
    private final int[][] parts;
    private final int[][] defects;
    private final byte[] known =
        new byte[(LONG + 1) * (LONG + 1) * (WIDE + 1) * (WIDE + 1) * (1 << 4)];

    EveryCut(SheetProblem problem) {
      parts =
          problem.parts().stream()
              .map(p -> new int[] {(int) p.length().mm() / 50, (int) p.width().mm() / 20})
              .toArray(int[][]::new);
      defects =
          problem.stock().getFirst().defects().stream()
              .map(d -> new int[] {(int) d.x().mm() / 50, (int) d.y().mm() / 20})
              .toArray(int[][]::new);
    }

    boolean holdsAll() {
      return holds(0, LONG, 0, WIDE, (1 << parts.length) - 1);
    }

    private boolean holds(int x0, int x1, int y0, int y1, int set) {
      int key = (((x0 * (LONG + 1) + x1) * (WIDE + 1) + y0) * (WIDE + 1) + y1) * (1 << 4) + set;
      if (known[key] == 0) {
        boolean one = Integer.bitCount(set) == 1 && fits(x0, x1, y0, y1, set);
        known[key] = (byte) (set == 0 || one || isParted(x0, x1, y0, y1, set) ? 1 : 2);
      }
      return known[key] == 1;
    }

    private boolean fits(int x0, int x1, int y0, int y1, int set) {
      int[] part = parts[Integer.numberOfTrailingZeros(set)];
      return x1 - x0 == part[0]
          && y1 - y0 == part[1]
          && Arrays.stream(defects)
              .noneMatch(d -> d[0] >= x0 && d[0] < x1 && d[1] >= y0 && d[1] < y1);
    }

    private boolean isParted(int x0, int x1, int y0, int y1, int set) {
      for (int near = set; near >= 0; near = near == 0 ? -1 : (near - 1) & set) {
        for (int x = x0 + 1; x < x1; x++) {
          if (holds(x0, x, y0, y1, near) && holds(x, x1, y0, y1, set & ~near)) {
            return true;
          }
        }
        for (int y = y0 + 1; y < y1; y++) {
          if (holds(x0, x1, y0, y, near) && holds(x0, x1, y, y1, set & ~near)) {
            return true;
          }
        }
      }
      return false;
    }
  }

  /** Nothing is found that can't be cut, and nearly all that can. */
  @Test
  void whatCanBeCutFromABoardIsMostlyFound() {
    int fitting = 0;
    int found = 0;
    int onlyByOneCut = 0;
    for (long seed = 0; seed < 30; seed++) {
      SheetProblem problem = random(seed);
      Layout layout = CUTTER.cut(problem);
      assertThat(VirtualSaw.check(problem, layout)).isEmpty();
      boolean all = layout.unplaced().isEmpty();
      boolean fits = new EveryCut(problem).holdsAll();
      assertThat(fits || !all).as("seed " + seed).isTrue();
      fitting += fits ? 1 : 0;
      found += all ? 1 : 0;
      onlyByOneCut += all && !isFoundWithoutGaps(problem, CUTTER) ? 1 : 0;
    }
    assertThat(fitting).isGreaterThan(20);
    assertThat(found).isGreaterThanOrEqualTo(fitting * 9 / 10);
    assertThat(onlyByOneCut).isPositive();
  }

  private static boolean isFoundWithoutGaps(SheetProblem problem, SheetCutter clear) {
    return Arrays.stream(Direction.values())
        .map(first -> new DefectCutter.Way(first, Length.ZERO, DefectCutter.Price.SHARE))
        .anyMatch(way -> DefectCutter.once(problem, way, clear).unplaced().isEmpty());
  }

  /** A lone part that just fits beside the defects of a board, kerf, rough edge, trim and all. */
  private static SheetProblem lone(long seed) {
    Random random = new Random(seed);
    Defect[] defects = new Defect[1 + random.nextInt(4)];
    Arrays.setAll(
        defects,
        i ->
            defect(
                random.nextInt(1900),
                random.nextInt(180),
                10 + random.nextInt(120),
                10 + random.nextInt(60)));
    Part part = Examples.part("P", 100 + random.nextInt(1700), 20 + random.nextInt(150), 1);
    Grain grain = random.nextInt(3) == 0 ? Grain.FREE : Grain.FIXED;
    Saw saw =
        new Saw(Length.mm(random.nextInt(4)), Trim.ends(Length.mm(10)), limits(random.nextInt(4)));
    StockSheet board = board("ash", 2000, 200, Supply.of(1), 0, defects);
    Together alone = new Together("alone", List.of("P"));
    Ties ties = new Ties(List.of(), random.nextBoolean() ? List.of(alone) : List.of());
    return new SheetProblem(List.of(part.with(grain)), List.of(board), saw, ties);
  }

  private static SawLimits limits(int which) {
    return switch (which) {
      case 1 -> new SawLimits(Optional.of(Length.mm(1500)), Optional.empty(), EITHER, FREE);
      case 2 -> new SawLimits(Optional.empty(), Optional.of(Length.mm(150)), EITHER, FREE);
      default -> SawLimits.NONE;
    };
  }

  /** All places in whole millimetres. A strip before it is at least 1 mm thick, with the kerf. */
  private static boolean hasPlace(SheetProblem problem) {
    Part part = problem.parts().getFirst();
    boolean turned = part.grain() == Grain.FREE;
    return canLie(problem, (int) part.length().mm(), (int) part.width().mm())
        || (turned && canLie(problem, (int) part.width().mm(), (int) part.length().mm()));
  }

  /** It is shorter and narrower than the board, so it is both ripped and crosscut. */
  private static boolean canLie(SheetProblem problem, int length, int width) {
    SawLimits limits = problem.saw().limits();
    double rip = limits.longestRip().map(Length::mm).orElse(Double.MAX_VALUE);
    double crosscut = limits.widestCrosscut().map(Length::mm).orElse(Double.MAX_VALUE);
    boolean crosscutFirst = 197 <= crosscut && length <= rip;
    boolean ripFirst = 1980 <= rip && width <= crosscut;
    return (crosscutFirst || ripFirst) && isClear(problem, length, width);
  }

  private static boolean isClear(SheetProblem problem, int length, int width) {
    int away = 1 + (int) problem.saw().kerf().mm();
    return IntStream.rangeClosed(10, 1990 - length)
        .filter(x -> x == 10 || x >= 10 + away)
        .anyMatch(
            x ->
                IntStream.rangeClosed(3, 200 - width)
                    .filter(y -> y == 3 || y >= 3 + away)
                    .anyMatch(y -> isClear(problem, x, y, length, width)));
  }

  private static boolean isClear(SheetProblem problem, int x, int y, int length, int width) {
    return problem.stock().getFirst().defects().stream()
        .noneMatch(
            d ->
                d.x().mm() < x + length
                    && x < d.x().mm() + d.length().mm()
                    && d.y().mm() < y + width
                    && y < d.y().mm() + d.width().mm());
  }

  @Test
  void aLonePartIsAlwaysFound() {
    int fitting = 0;
    int onlyRoundIt = 0;
    for (long seed = 0; seed < 400; seed++) {
      SheetProblem problem = lone(seed);
      Layout layout = new StripCutter().cut(problem);
      assertThat(VirtualSaw.check(problem, layout)).as("seed " + seed).isEmpty();
      boolean fits = hasPlace(problem);
      assertThat(layout.unplaced().isEmpty()).as("seed " + seed).isEqualTo(fits);
      fitting += fits ? 1 : 0;
      onlyRoundIt += fits && !isFoundWithoutGaps(problem, new StripCutter()) ? 1 : 0;
    }
    assertThat(fitting).isBetween(100, 350);
    assertThat(onlyRoundIt).isPositive();
  }

  private static SheetProblem refused(int length, int width, Defect... defects) {
    return new SheetProblem(
        List.of(Examples.part("P", length, width, 1)),
        List.of(board("ash", 2000, 200, Supply.of(1), 0, defects)),
        new Saw(Length.mm(3), Trim.ends(Length.mm(10))));
  }

  /** By hand: crosscut at 327, ripped 100 mm off to 200 wide; or the whole length ripped. */
  @Test
  void partsThatLieBetweenDefectsAreCut() {
    SheetProblem between =
        refused(
            1039,
            137,
            defect(211, 34, 71, 43),
            defect(429, 22, 51, 31),
            defect(305, 6, 22, 39),
            defect(1373, 128, 107, 72));
    SheetProblem above =
        refused(
            1670,
            59,
            defect(1590, 68, 110, 47),
            defect(298, 134, 69, 66),
            defect(1686, 4, 114, 68),
            defect(832, 103, 75, 56));
    for (SheetProblem problem : List.of(between, above)) {
      Layout layout = CUTTER.cut(problem);
      assertThat(VirtualSaw.check(problem, layout)).isEmpty();
      assertThat(layout.unplaced()).isEmpty();
    }
  }

  @Test
  void whereDefectsAreInTheWayTheyAreTheReason() {
    SheetProblem knotty = refused(1000, 150, defect(980, 90, 40, 40));
    assertThat(CUTTER.cut(knotty).unplaced())
        .containsExactly(new Unplaced("P", 1, Unplaced.Reason.DEFECTS));
  }

  /** Any other reason is false, and so is this one where a place is clear. */
  @Test
  void theVirtualSawJudgesReasonsOfBoardsWithDefects() {
    SheetProblem knotty = refused(1000, 150, defect(980, 90, 40, 40));
    SheetProblem clear = refused(900, 150, defect(980, 90, 40, 40));
    for (Unplaced.Reason reason : Unplaced.Reason.values()) {
      boolean ofGroups =
          reason == Unplaced.Reason.TOO_MUCH_FOR_ONE_SHEET
              || reason == Unplaced.Reason.NOT_ON_ONE_SHEET;
      Layout out =
          new Layout(List.of(), List.of(new Unplaced("P", 1, reason)), new LowerBound(0, 0));
      if (!ofGroups) {
        assertThat(VirtualSaw.check(clear, out)).as(reason.name()).isNotEmpty();
        assertThat(VirtualSaw.check(knotty, out).isEmpty())
            .as(reason.name())
            .isEqualTo(reason == Unplaced.Reason.DEFECTS);
      }
    }
  }

  /** Of two boards one is ripped between its knots, the other crosscut beside its own. */
  @Test
  void eachBoardIsCutInItsOwnWay() {
    SheetProblem one = knotsAtBothEdges();
    StockSheet other = board("split", 2000, 150, Supply.of(1), 0, defect(960, 0, 40, 150));
    List<Part> parts = new ArrayList<>(one.parts());
    parts.add(Examples.part("wide", 900, 140, 2));
    List<StockSheet> stock = new ArrayList<>(one.stock());
    stock.add(other);
    SheetProblem problem = new SheetProblem(parts, stock, one.saw());
    Layout layout = CUTTER.cut(problem);
    assertThat(VirtualSaw.check(problem, layout)).isEmpty();
    assertThat(layout.unplaced()).isEmpty();
    assertThat(layout.price()).isZero();
  }

  /** Once time is up, one way is tried and no more. */
  @Test
  void inAHurryFewWaysAreTried() {
    int[] asked = {0, 0};
    Watch hurried = Watch.until(() -> asked[0]++ >= 0);
    Watch patient = Watch.until(() -> asked[1]++ < 0);
    SheetProblem problem = two(knotsAtBothEdges());
    for (Map.Entry<Limit, Watch> each :
        List.of(Map.entry(Limit.WATCH, hurried), Map.entry(Limit.WORK, patient))) {
      Layout layout =
          new ThoroughCutter(Examples.AIMS, each.getKey(), each.getValue()).cut(problem);
      assertThat(VirtualSaw.check(problem, layout)).isEmpty();
      assertThat(layout.unplaced()).isEmpty();
    }
    assertThat(asked[0]).isLessThan(asked[1] / 4);
  }

  /** Twice the parts: one board of them to be bought. */
  private static SheetProblem two(SheetProblem one) {
    List<Part> parts = one.parts().stream().map(part -> part.times(4)).toList();
    return new SheetProblem(parts, one.stock(), one.saw());
  }
}
