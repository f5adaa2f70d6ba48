package fourpin.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.cutting.SawLimits.FirstCut;
import fourpin.measure.Length;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What the saw and the shop can't do, kept by every cutter and looked after by the virtual saw. */
class SawLimitsTest {

  private static SheetProblem with(SheetProblem problem, SawLimits limits) {
    Saw saw = new Saw(problem.saw().kerf(), problem.saw().trim(), limits);
    return new SheetProblem(problem.parts(), problem.stock(), saw);
  }

  private static SawLimits random(Random random) {
    return new SawLimits(
        random.nextBoolean()
            ? Optional.empty()
            : Optional.of(Length.inches(20 + random.nextInt(90))),
        random.nextBoolean()
            ? Optional.empty()
            : Optional.of(Length.inches(10 + random.nextInt(50))),
        FirstCut.values()[random.nextInt(3)],
        random.nextBoolean() ? SawLimits.FREE : 1 + random.nextInt(4));
  }

  static LongStream seeds() {
    return LongStream.range(0, 80);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void everyLayoutKeepsTheLimitsAndLeavesOutOnlyWhatTheyForbid(long seed) {
    SheetProblem problem = with(Examples.bookcases(seed), random(new Random(seed)));
    Examples.requireSound(problem);
  }

  static LongStream fewSeeds() {
    return LongStream.range(0, 11);
  }

  @ParameterizedTest
  @MethodSource("fewSeeds")
  void sheetsLaidOutAnewKeepThemToo(long seed) {
    SheetProblem problem = with(Examples.bookcases(seed), random(new Random(seed)));
    Layout layout = new ThoroughCutter(Examples.AIMS).cut(problem);
    assertThat(VirtualSaw.check(problem, layout)).isEmpty();
  }

  @ParameterizedTest
  @EnumSource(FirstCut.class)
  void theFirstCutRunsAsAsked(FirstCut first) {
    SheetProblem problem =
        with(Examples.bookcases(3), SawLimits.NONE.withFirst(first).withStages(3));
    Layout layout = new StripCutter().cut(problem);
    assertThat(layout.patterns()).isNotEmpty();
    assertThat(VirtualSaw.check(problem, layout)).isEmpty();
  }

  private static final StockSheet SHEET = Examples.plywood();

  /**
   * One part on one sheet 96 by 48 in; worked out by hand, longest rip and widest crosscut in in.
   */
  @ParameterizedTest
  @CsvSource({
    "40, 20, 96, 20, cut",
    "40, 20, 95, 48, cut",
    "40, 20, 95, 47, no",
    "40, 20, 40, 48, cut",
    "40, 20, 39, 48, no",
    "40, 20, 96, 19, no",
    "96, 20, 96, 10, cut",
    "96, 20, 95, 48, no",
    "40, 48, 10, 48, cut",
    "40, 48, 96, 47, no",
    "96, 48, 1, 1, cut"
  })
  void aPartComesOutWhereOneOrderOfItsTwoCutsIsWithinReach(
      int length, int width, int rip, int crosscut, String expected) {
    SawLimits limits =
        new SawLimits(
            Optional.of(Length.inches(rip)),
            Optional.of(Length.inches(crosscut)),
            FirstCut.EITHER,
            SawLimits.FREE);
    Part part = Examples.part("A", Length.inches(length), Length.inches(width), 1);
    SheetProblem problem =
        new SheetProblem(List.of(part), List.of(SHEET), new Saw(Examples.KERF, Trim.NONE, limits));
    Layout layout = new StripCutter().cut(problem);
    assertThat(VirtualSaw.check(problem, layout)).isEmpty();
    if (expected.equals("cut")) {
      assertThat(layout.unplaced()).isEmpty();
    } else {
      assertThat(layout.unplaced())
          .containsExactly(new Unplaced("A", 1, Unplaced.Reason.SAW_LIMITS));
    }
  }

  /** A strip, a part from it, and its width trimmed: three stages, the first a rip. */
  private static SheetPattern threeStages() {
    Length kerf = Examples.KERF;
    Node part = new Node.Finished("A", Lay.STRAIGHT);
    Node trimmed = new Node.Cut(Direction.RIP, Length.inches(10), kerf, part, new Node.Offcut());
    Node strip =
        new Node.Cut(Direction.CROSSCUT, Length.inches(40), kerf, trimmed, new Node.Offcut());
    return new SheetPattern(
        SHEET, 1, new Node.Cut(Direction.RIP, Length.inches(20), kerf, strip, new Node.Offcut()));
  }

  private static List<Fault> faults(SawLimits limits) {
    Part part = Examples.part("A", Length.inches(40), Length.inches(10), 1);
    Saw saw = new Saw(Examples.KERF, Trim.NONE, limits);
    Layout layout = new Layout(List.of(threeStages()), List.of(), new LowerBound(0, 1));
    return VirtualSaw.check(new SheetProblem(List.of(part), List.of(SHEET), saw), layout);
  }

  @Test
  void theVirtualSawSeesEachLimitBroken() {
    assertThat(faults(SawLimits.NONE.withStages(3).withFirst(FirstCut.ALONG))).isEmpty();
    assertThat(faults(SawLimits.NONE.withStages(2))).containsOnly(new Fault.TooManyStages(1, 3, 2));
    assertThat(faults(SawLimits.NONE.withFirst(FirstCut.ACROSS)))
        .containsExactly(new Fault.WrongFirstCut(1, Direction.RIP));
    Length rip = Length.inches(95);
    assertThat(faults(new SawLimits(Optional.of(rip), Optional.empty(), FirstCut.EITHER, 9)))
        .containsExactly(
            new Fault.CutTooLong(1, Direction.RIP, Length.inches(96).in(rip.unit()), rip));
    Length crosscut = Length.inches(19);
    assertThat(faults(new SawLimits(Optional.empty(), Optional.of(crosscut), FirstCut.EITHER, 9)))
        .hasSize(1);
  }
}
