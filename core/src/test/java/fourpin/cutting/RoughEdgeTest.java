package fourpin.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Boards that are cut to length here and ripped there, and are straightened only where ripped. */
class RoughEdgeTest {
  private static final Length EDGE = Length.inches(1, 4);
  private static final Length EIGHTH = Length.inches(1, 8);
  private static final Saw SAW = new Saw(EIGHTH, Trim.ends(Length.inches(1)));

  private static StockSheet board(int length, int width, Supply supply, List<Defect> defects) {
    return new StockSheet(
        length + " x " + width + " " + defects.size(),
        Length.inches(length),
        Length.inches(width),
        SheetGrain.ALONG_LENGTH,
        supply,
        10L * length * width,
        Origin.TO_BUY,
        defects,
        EDGE);
  }

  private static StockSheet board(int length, int width) {
    return board(length, width, Supply.unlimited(), List.of());
  }

  private static Part part(String mark, int length, int width, int count) {
    return Examples.part(mark, Length.inches(length), Length.inches(width), count);
  }

  private static Layout sound(SheetProblem problem) {
    Layout layout = new ThoroughCutter(Examples.AIMS).cut(problem);
    assertThat(VirtualSaw.check(problem, layout)).isEmpty();
    assertThat(layout.price()).isGreaterThanOrEqualTo(layout.bound().price());
    assertThat(layout.sheets()).isGreaterThanOrEqualTo(layout.bound().sheets());
    return layout;
  }

  /**
   * A shelf of 48 by 6 and two rails of 40 by 2 7/8 beside each other: 48 + 1/8 + 40 of the 94
   * between the trimmed ends. Across, 1/4 + 2 7/8 + 1/8 + 2 3/4 are the 6 of the board.
   */
  private static SheetProblem shared(Length second) {
    return new SheetProblem(
        List.of(
            part("shelf", 48, 6, 1),
            Examples.part("rail", Length.inches(40), Length.inches(23, 8), 1),
            Examples.part("cleat", Length.inches(40), second, 1)),
        List.of(board(96, 6)),
        SAW);
  }

  @Test
  void whatIsAsWideAsTheBoardSharesItWithWhatIsRipped() {
    Layout layout = sound(shared(Length.inches(22, 8)));
    assertThat(layout.sheets()).isEqualTo(1);
    assertThat(CuttingOrder.of(layout.patterns().getFirst(), 1, SAW, HoldLimits.NONE))
        .extracting(s -> s instanceof SetUp.TrimEdge trim ? trim.edge() + "" : s.direction() + "")
        .containsExactly("NEAR_END", "FAR_END", "CROSSCUT", "CROSSCUT", "NEAR_EDGE", "RIP");
  }

  /** One sixteenth more does not fit beside the straightened edge, and the bound says so. */
  @Test
  void theStraightenedEdgeIsLost() {
    Layout layout = sound(shared(Length.inches(45, 16)));
    assertThat(layout.sheets()).isEqualTo(2);
    assertThat(layout.bound().sheets()).isEqualTo(2);
  }

  /** The whole width, though straightening would take some: nothing is ripped. */
  @Test
  void boardsThatAreOnlyCutToLengthKeepTheirEdges() {
    SheetProblem problem =
        new SheetProblem(List.of(part("shelf", 47, 6, 2)), List.of(board(97, 6)), SAW);
    Layout layout = sound(problem);
    assertThat(layout.sheets()).isEqualTo(1);
    assertThat(CuttingOrder.of(layout.patterns().getFirst(), 1, SAW, HoldLimits.NONE))
        .noneMatch(s -> s instanceof SetUp.TrimEdge trim && trim.edge() == Edge.NEAR_EDGE);
  }

  @Test
  void aStripThatIsPartedAcrossIsRippedAndSoStraightened() {
    Matched pair = new Matched("pair", Matched.Run.SIDE_BY_SIDE, List.of("a", "b"));
    List<Part> parts =
        List.of(
            Examples.part("a", Length.inches(40), Length.inches(3), 1),
            Examples.part("b", Length.inches(40), Length.inches(23, 8), 1));
    SheetProblem problem =
        new SheetProblem(parts, List.of(board(96, 6)), SAW, new Ties(List.of(pair), List.of()));
    assertThat(sound(problem).unplaced())
        .extracting(Unplaced::reason)
        .containsOnly(Unplaced.Reason.TOO_WIDE);
  }

  static LongStream seeds() {
    return LongStream.range(0, 25);
  }

  /** Parts as wide as one board or another, and narrower ones; sometimes with defects. */
  private static SheetProblem random(long seed) {
    Random random = new Random(seed);
    List<Part> parts = new ArrayList<>();
    for (int i = 0; i < 2 + random.nextInt(5); i++) {
      int width = List.of(8, 6, 6, 3, 2, 1).get(random.nextInt(6));
      parts.add(part("P" + i, 8 + random.nextInt(50), width, 1 + random.nextInt(4)));
    }
    List<StockSheet> stock = new ArrayList<>(List.of(board(96, 6), board(72, 8)));
    if (random.nextInt(3) == 0) {
      Defect knot =
          new Defect(
              Length.inches(random.nextInt(80)),
              Length.inches(random.nextInt(5)),
              Length.inches(2),
              Length.inches(1));
      stock.add(board(90, 6, Supply.of(1), List.of(knot)));
    }
    return new SheetProblem(parts, stock, SAW);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void isNeverDearerThanInTwoGoes(long seed) {
    SheetProblem problem = random(seed);
    Layout layout = sound(problem);
    assertThat(layout.unplaced()).isEmpty();
    if (!DefectCutter.isFor(problem)) {
      Apart.answer(problem, new ThoroughCutter(Examples.AIMS))
          .ifPresent(
              apart -> {
                assertThat(VirtualSaw.check(problem, apart)).isEmpty();
                assertThat(layout.price()).isLessThanOrEqualTo(apart.price());
                assertThat(layout.bound().price()).isLessThanOrEqualTo(apart.price());
              });
    }
  }

  /** A layout, written and read, and as a start for a search. */
  @ParameterizedTest
  @MethodSource("seeds")
  void aLayoutIsDraftedAgainWithTheSameParts(long seed) {
    SheetProblem problem = random(seed);
    Layout layout = sound(problem);
    assertThat(WrittenLayout.read(problem, WrittenLayout.of(problem, layout))).contains(layout);
    if (!DefectCutter.isFor(problem)) {
      Inflated inflated = new Inflated(problem);
      Layout again =
          new Answers(problem, inflated).layout(Redraft.of(inflated, layout), layout.bound());
      assertThat(VirtualSaw.check(problem, again)).isEmpty();
      assertThat(again.price()).isEqualTo(layout.price());
      assertThat(again.unplaced()).isEmpty();
    }
  }

  private static Node cut(Direction direction, Length fence, Node near, Node far) {
    return new Node.Cut(direction, fence, EIGHTH, near, far);
  }

  /** The shelf off, then the edge, then the rails: each fault is planted in that. */
  static Stream<Arguments> planted() {
    Node rails =
        cut(
            Direction.RIP,
            Length.inches(23, 8),
            new Node.Finished("rail", Lay.STRAIGHT),
            new Node.Finished("cleat", Lay.STRAIGHT));
    Node rest = cut(Direction.CROSSCUT, Length.inches(40), rails, new Node.Offcut());
    Node straight = new Node.TrimOff(Edge.NEAR_EDGE, EDGE, rest);
    return Stream.of(
        Arguments.of(whole(straight), List.of()),
        Arguments.of(whole(rest), List.of(Fault.RoughAtFence.class, Fault.WrongSize.class)),
        Arguments.of(
            whole(new Node.TrimOff(Edge.NEAR_EDGE, EDGE, straight)), List.of(Fault.LateTrim.class)),
        Arguments.of(
            whole(new Node.TrimOff(Edge.NEAR_EDGE, EIGHTH, rest)),
            List.of(Fault.WrongTrim.class, Fault.WrongSize.class)),
        Arguments.of(
            whole(new Node.TrimOff(Edge.FAR_EDGE, EDGE, rest)),
            List.of(Fault.LateTrim.class, Fault.RoughAtFence.class, Fault.WrongSize.class)),
        Arguments.of(
            new Node.TrimOff(Edge.NEAR_EDGE, EDGE, whole(rest)), List.of(Fault.WrongSize.class)));
  }

  private static Node whole(Node rest) {
    Node shelf = new Node.Finished("shelf", Lay.STRAIGHT);
    Node node = cut(Direction.CROSSCUT, Length.inches(48), shelf, rest);
    node = new Node.TrimOff(Edge.FAR_END, Length.inches(1), node);
    return new Node.TrimOff(Edge.NEAR_END, Length.inches(1), node);
  }

  @ParameterizedTest
  @MethodSource("planted")
  void theVirtualSawFindsARoughEdgeAtTheFence(Node root, List<Class<?>> faults) {
    SheetProblem problem = shared(Length.inches(22, 8));
    SheetPattern pattern = new SheetPattern(problem.stock().getFirst(), 1, root);
    Layout layout = new Layout(List.of(pattern), List.of(), new LowerBound(0, 0));
    List<Class<?>> found = new ArrayList<>();
    VirtualSaw.check(problem, layout).forEach(fault -> found.add(fault.getClass()));
    assertThat(found.stream().distinct()).containsAll(faults);
    assertThat(found.isEmpty()).isEqualTo(faults.isEmpty());
  }
}
