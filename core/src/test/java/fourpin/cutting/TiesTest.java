package fourpin.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fourpin.cutting.Matched.Run;
import fourpin.cutting.SawLimits.FirstCut;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Matched sets and parts that share a sheet. */
class TiesTest {
  /** A random problem with up to two matched sets, up to two groups, and limits. */
  private static SheetProblem random(long seed) {
    Random random = new Random(seed);
    SheetProblem plain = Examples.bookcases(seed);
    List<Part> parts = new ArrayList<>(plain.parts());
    List<Matched> sets = new ArrayList<>();
    for (int i = 0; i < random.nextInt(3); i++) {
      sets.add(set("M" + i, random, parts));
    }
    parts.add(
        Examples.part(
            "S0", Examples.sixteenths(random, 64, 300), Examples.sixteenths(random, 32, 200), 2));
    parts.add(
        Examples.part(
            "S1", Examples.sixteenths(random, 64, 300), Examples.sixteenths(random, 32, 200), 2));
    List<Together> groups =
        List.of(new Together("T0", List.of("P0", "S0")), new Together("T1", List.of("P1", "S1")));
    return new SheetProblem(
        parts,
        plain.stock(),
        saw(random, plain.saw()),
        new Ties(sets, groups.subList(0, random.nextInt(3))));
  }

  private static Matched set(String name, Random random, List<Part> parts) {
    Run run = Run.values()[random.nextInt(2)];
    Grain grain = Grain.values()[random.nextInt(2)];
    int times = 1 + random.nextInt(3);
    Length same = Examples.sixteenths(random, 64, 400);
    List<String> marks = new ArrayList<>();
    for (int i = 0; i < 2 + random.nextInt(2); i++) {
      Length own = Examples.sixteenths(random, 64, 300);
      String mark = name + "-" + i;
      boolean endToEnd = run == Run.END_TO_END;
      parts.add(new Part(mark, endToEnd ? own : same, endToEnd ? same : own, times, grain));
      marks.add(mark);
    }
    return new Matched(name, run, marks);
  }

  private static Saw saw(Random random, Saw plain) {
    SawLimits limits =
        random.nextInt(3) > 0
            ? SawLimits.NONE
            : new SawLimits(
                Optional.of(Length.inches(30 + random.nextInt(70))),
                Optional.of(Length.inches(20 + random.nextInt(40))),
                FirstCut.values()[random.nextInt(3)],
                2 + random.nextInt(3));
    return new Saw(plain.kerf(), plain.trim(), limits);
  }

  static LongStream seeds() {
    return LongStream.range(0, 60);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void everyLayoutKeepsSetsAndGroups(long seed) {
    SheetProblem problem = random(seed);
    Examples.requireSound(problem);
  }

  static LongStream fewSeeds() {
    return LongStream.range(0, 8);
  }

  @ParameterizedTest
  @MethodSource("fewSeeds")
  void sheetsLaidOutAnewKeepThemToo(long seed) {
    SheetProblem problem = random(seed);
    Layout layout = new ThoroughCutter(Examples.AIMS).cut(problem);
    assertThat(VirtualSaw.check(problem, layout)).isEmpty();
  }

  private static final Saw SAW = new Saw(Length.inches(1), Trim.NONE);

  /** Three fronts 20, 10 and 5 long and 8 wide, kerf 1: 37 in long by hand. */
  private static SheetProblem drawers(int sheetLength) {
    return new SheetProblem(
        List.of(
            Examples.part("low", Length.inches(20), Length.inches(8), 1),
            Examples.part("middle", Length.inches(10), Length.inches(8), 1),
            Examples.part("high", Length.inches(5), Length.inches(8), 1)),
        List.of(Examples.sheet("board", sheetLength, 10, Supply.unlimited(), 100)),
        SAW,
        new Ties(
            List.of(new Matched("bank", Run.END_TO_END, List.of("low", "middle", "high"))),
            List.of()));
  }

  @Test
  void aSetIsAsLongAsItsPartsAndTheKerfsBetween() {
    Layout fits = new ThoroughCutter(Examples.AIMS).cut(drawers(37));
    assertThat(fits.unplaced()).isEmpty();
    assertThat(fits.patterns().getFirst().parts())
        .extracting(Placed::x)
        .containsExactly(Length.ZERO, Length.inches(21), Length.inches(32));
    Layout tooShort = new ThoroughCutter(Examples.AIMS).cut(drawers(36));
    assertThat(VirtualSaw.check(drawers(36), tooShort)).isEmpty();
    assertThat(tooShort.unplaced())
        .containsExactly(
            new Unplaced("low", 1, Unplaced.Reason.TOO_LONG),
            new Unplaced("middle", 1, Unplaced.Reason.TOO_LONG),
            new Unplaced("high", 1, Unplaced.Reason.TOO_LONG));
  }

  /** The layout of another order of the same parts: the virtual saw must see it. */
  @Test
  void theVirtualSawSeesAWrongOrder() {
    Layout layout = new StripCutter().cut(drawers(37));
    SheetProblem other =
        new SheetProblem(
            drawers(37).parts(),
            drawers(37).stock(),
            SAW,
            new Ties(
                List.of(new Matched("bank", Run.END_TO_END, List.of("high", "middle", "low"))),
                List.of()));
    assertThat(VirtualSaw.check(other, layout)).containsExactly(new Fault.NotMatched(1, "bank"));
  }

  /** Two pairs of doors, each pair too large for the rest of the sheet that the other lies on. */
  private static SheetProblem doors(int length) {
    return new SheetProblem(
        List.of(
            Examples.part("left", Length.inches(length), Length.inches(20), 2),
            Examples.part("right", Length.inches(length), Length.inches(20), 2)),
        List.of(Examples.sheet("ply", 96, 48, Supply.unlimited(), 6000)),
        Examples.SAW,
        new Ties(List.of(), List.of(new Together("doors", List.of("left", "right")))));
  }

  @Test
  void allOfAGroupComeFromOneSheetOrNone() {
    Layout one = new ThoroughCutter(Examples.AIMS).cut(doors(40));
    assertThat(one.unplaced()).isEmpty();
    assertThat(one.sheets()).isEqualTo(1);
    Layout none = new ThoroughCutter(Examples.AIMS).cut(doors(50));
    assertThat(VirtualSaw.check(doors(50), none)).isEmpty();
    assertThat(none.unplaced())
        .containsExactly(
            new Unplaced("left", 2, Unplaced.Reason.TOO_MUCH_FOR_ONE_SHEET),
            new Unplaced("right", 2, Unplaced.Reason.TOO_MUCH_FOR_ONE_SHEET));
  }

  /** One sheet for two groups, each of which fills it. */
  @Test
  void aGroupThatAnUsedUpSheetWouldHoldSaysSo() {
    SheetProblem problem =
        new SheetProblem(
            List.of(
                Examples.part("left", Length.inches(90), Length.inches(40), 1),
                Examples.part("right", Length.inches(90), Length.inches(40), 1)),
            List.of(Examples.sheet("ply", 96, 48, Supply.of(1), 6000)),
            Examples.SAW,
            new Ties(
                List.of(),
                List.of(
                    new Together("one", List.of("left")), new Together("two", List.of("right")))));
    Layout layout = new ThoroughCutter(Examples.AIMS).cut(problem);
    assertThat(VirtualSaw.check(problem, layout)).isEmpty();
    assertThat(layout.unplaced())
        .containsExactly(new Unplaced("right", 1, Unplaced.Reason.NOT_ON_ONE_SHEET));
  }

  /** A part that fits nowhere, and one that is left out because of it. */
  @Test
  void aPartOfAGroupThatFitsNowhereSaysSoItself() {
    SheetProblem problem =
        new SheetProblem(
            List.of(
                Examples.part("long", Length.inches(100), Length.inches(4), 1),
                Examples.part("short", Length.inches(10), Length.inches(4), 1)),
            List.of(Examples.plywood()),
            Examples.SAW,
            new Ties(List.of(), List.of(new Together("pair", List.of("long", "short")))));
    Layout layout = new ThoroughCutter(Examples.AIMS).cut(problem);
    assertThat(VirtualSaw.check(problem, layout)).isEmpty();
    assertThat(layout.unplaced())
        .containsExactly(
            new Unplaced("long", 1, Unplaced.Reason.TOO_LONG),
            new Unplaced("short", 1, Unplaced.Reason.TOO_MUCH_FOR_ONE_SHEET));
  }

  private static SheetProblem together(List<Part> parts, List<StockSheet> stock, Saw saw) {
    List<String> marks = parts.stream().map(Part::mark).toList();
    return new SheetProblem(
        parts, stock, saw, new Ties(List.of(), List.of(new Together("all", marks))));
  }

  /** Filled strip by strip, the last of them finds no place. */
  @Test
  void aGroupThatFillsNearlyTwoThirdsOfASheetIsFoundAPlaceOnIt() {
    List<Part> parts =
        List.of(
            new Part("p0", Length.mm(220), Length.mm(200), 1, Grain.FIXED),
            new Part("p1", Length.mm(300), Length.mm(150), 1, Grain.FIXED),
            new Part("p2", Length.mm(300), Length.mm(400), 1, Grain.FREE),
            new Part("p3", Length.mm(400), Length.mm(150), 1, Grain.FIXED));
    StockSheet sheet =
        new StockSheet(
            "ply",
            Length.mm(700),
            Length.mm(600),
            SheetGrain.ALONG_LENGTH,
            Supply.unlimited(),
            50,
            Origin.TO_BUY);
    SheetProblem problem = together(parts, List.of(sheet), new Saw(Length.mm(4), Trim.NONE));
    Layout layout = new ThoroughCutter(Examples.AIMS).cut(problem);
    assertThat(VirtualSaw.check(problem, layout)).isEmpty();
    assertThat(layout.unplaced()).isEmpty();
  }

  /** Up to five parts of round sizes on one sheet, many of which fit only just. */
  private static SheetProblem tight(long seed) {
    Random random = new Random(seed);
    int[] sizes = {100, 120, 150, 200, 220, 250, 300, 350, 400};
    List<Part> parts = new ArrayList<>();
    for (int i = 2 + random.nextInt(4); i > 0; i--) {
      Length length = Length.mm(sizes[random.nextInt(sizes.length)]);
      Length width = Length.mm(sizes[random.nextInt(sizes.length)]);
      parts.add(new Part("P" + i, length, width, 1, Grain.values()[random.nextInt(2)]));
    }
    StockSheet sheet =
        new StockSheet(
            "ply",
            Length.mm(400 + 50 * random.nextInt(12)),
            Length.mm(300 + 50 * random.nextInt(10)),
            SheetGrain.ALONG_LENGTH,
            Supply.of(1),
            50,
            Origin.TO_BUY);
    return together(parts, List.of(sheet), new Saw(Length.mm(4), Trim.NONE));
  }

  @Test
  void whatFitsOnOneSheetFitsThereAsAGroup() {
    int fitting = 0;
    for (long seed = 0; seed < 60; seed++) {
      SheetProblem group = tight(seed);
      SheetProblem free = new SheetProblem(group.parts(), group.stock(), group.saw());
      Layout layout = new ThoroughCutter(Examples.AIMS).cut(group);
      assertThat(VirtualSaw.check(group, layout)).isEmpty();
      boolean fits = new ThoroughCutter(Examples.AIMS).cut(free).unplaced().isEmpty();
      assertThat(layout.unplaced().isEmpty()).as("seed " + seed).isEqualTo(fits);
      fitting += fits ? 1 : 0;
    }
    assertThat(fitting).isGreaterThan(10);
  }

  /** One part on either side of a knot that goes all across. */
  @Test
  void theClearPiecesOfABoardAreOneBoardToAGroup() {
    List<Part> pair =
        List.of(
            Examples.part("left", Length.inches(40), Length.inches(5), 1),
            Examples.part("right", Length.inches(40), Length.inches(5), 1));
    Defect knot = new Defect(Length.inches(48), Length.ZERO, Length.inches(4), Length.inches(6));
    StockSheet board =
        new StockSheet(
            "ash",
            Length.inches(100),
            Length.inches(6),
            SheetGrain.ALONG_LENGTH,
            Supply.of(1),
            60,
            Origin.TO_BUY,
            List.of(knot),
            Length.ZERO);
    List<Part> more = new ArrayList<>(pair);
    more.add(Examples.part("long", Length.inches(90), Length.inches(5), 1));
    for (List<Part> parts : List.of(pair, more)) {
      SheetProblem problem =
          new SheetProblem(
              parts,
              List.of(board, Examples.sheet("clear", 100, 6, Supply.of(1), 90)),
              Examples.SAW,
              new Ties(List.of(), List.of(new Together("pair", List.of("left", "right")))));
      Layout layout = new ThoroughCutter(Examples.AIMS).cut(problem);
      assertThat(VirtualSaw.check(problem, layout)).isEmpty();
      assertThat(layout.unplaced()).isEmpty();
    }
  }

  /** A single part is no more of a group than itself. */
  @Test
  void theVirtualSawSeesAGroupOfOnePartLeftOutForNothing() {
    SheetProblem problem =
        together(
            List.of(Examples.part("door", Length.inches(40), Length.inches(20), 1)),
            List.of(Examples.plywood()),
            Examples.SAW);
    Layout none =
        new Layout(
            List.of(),
            List.of(new Unplaced("door", 1, Unplaced.Reason.TOO_MUCH_FOR_ONE_SHEET)),
            new LowerBound(0, 0));
    Layout usedUp =
        new Layout(
            List.of(),
            List.of(new Unplaced("door", 1, Unplaced.Reason.NOT_ON_ONE_SHEET)),
            new LowerBound(0, 0));
    assertThat(VirtualSaw.check(problem, none))
        .hasOnlyElementsOfType(Fault.NeedlesslyLeftOut.class);
    assertThat(VirtualSaw.check(problem, usedUp))
        .contains(new Fault.WrongReason("door", Unplaced.Reason.NOT_ON_ONE_SHEET));
  }

  @Test
  void theVirtualSawSeesAGroupOnTwoSheets() {
    SheetProblem free =
        new SheetProblem(doors(50).parts(), doors(50).stock(), Examples.SAW, Ties.NONE);
    Layout layout = new StripCutter().cut(free);
    assertThat(VirtualSaw.check(doors(50), layout)).containsExactly(new Fault.NotTogether("doors"));
  }

  @ParameterizedTest
  @EnumSource(Run.class)
  void partsThatCannotLieInOneStripAreRefused(Run run) {
    List<Part> parts =
        List.of(
            Examples.part("a", Length.inches(20), Length.inches(8), 1),
            Examples.part("b", Length.inches(10), Length.inches(7), 1));
    Ties ties = new Ties(List.of(new Matched("set", run, List.of("a", "b"))), List.of());
    assertThatThrownBy(() -> new SheetProblem(parts, List.of(), SAW, ties))
        .hasMessageContaining("differ");
  }
}
