package fourpin.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CuttingOrderTest {

  /**
   * Two rips at 11 7/8 and three crosscuts at 30 in each strip: five cuts of two kinds, two
   * settings.
   */
  @Test
  void readsAsAMakerWouldCut() {
    Length width = Length.inches(95, 8);
    SheetProblem problem =
        new SheetProblem(
            List.of(Examples.part("side", Length.inches(30), width, 6)),
            List.of(Examples.sheet("half sheet", 96, 24, Supply.of(1), 3000)),
            new Saw(
                Examples.KERF, new Trim(Length.inches(1, 8), zero(), Length.inches(1, 2), zero())));
    Layout layout = new StripCutter().cut(problem);
    assertThat(VirtualSaw.check(problem, layout)).isEmpty();
    List<SetUp> order =
        CuttingOrder.of(layout.patterns().getFirst(), 1, problem.saw(), HoldLimits.NONE);
    assertThat(text(order))
        .isEqualTo(
            """
            trim NEAR_EDGE 1/8: S1 -> S1-A waste 96 x 0 | S1 96 x 23 7/8
            trim NEAR_END 1/2: S1 -> S1-B waste 3/8 x 23 7/8 | S1 95 1/2 x 23 7/8
            CROSSCUT at 30: S1 -> S1-C piece 30 x 23 7/8 | S1-D piece 65 3/8 x 23 7/8; \
            S1-D -> S1-E piece 30 x 23 7/8 | S1-F piece 35 1/4 x 23 7/8; \
            S1-F -> S1-G piece 30 x 23 7/8 | S1-H offcut 5 1/8 x 23 7/8
            RIP at 11 7/8: S1-C -> S1-I side 30 x 11 7/8 | S1-J side 30 x 11 7/8; \
            S1-E -> S1-K side 30 x 11 7/8 | S1-L side 30 x 11 7/8; \
            S1-G -> S1-M side 30 x 11 7/8 | S1-N side 30 x 11 7/8
            """);
  }

  private static Length zero() {
    return Length.ZERO;
  }

  private static String text(List<SetUp> order) {
    return order.stream().map(CuttingOrderTest::text).collect(Collectors.joining("\n", "", "\n"));
  }

  private static String text(SetUp setUp) {
    String head =
        switch (setUp) {
          case SetUp.TrimEdge t -> "trim " + t.edge() + " " + eighths(t.off());
          case SetUp.CutTo c -> c.direction() + " at " + eighths(c.fence());
        };
    return head
        + ": "
        + setUp.steps().stream().map(CuttingOrderTest::text).collect(Collectors.joining("; "));
  }

  private static String text(SawStep step) {
    String far = step.far().map(CuttingOrderTest::text).orElse("dust");
    return step.from().name() + " -> " + text(step.near()) + " | " + far;
  }

  private static String text(Piece piece) {
    String what =
        switch (piece.content()) {
          case Piece.Content.ToCut c -> piece.name().contains("-") ? " piece" : "";
          case Piece.Content.FinishedPart(String mark, Lay lay) -> " " + mark;
          case Piece.Content.LeftOver l -> " offcut";
          case Piece.Content.TrimWaste w -> " waste";
        };
    return piece.name() + what + " " + eighths(piece.length()) + " x " + eighths(piece.width());
  }

  private static String eighths(Length length) {
    long eighths = length.wholeTimes(Length.inches(1, 8));
    assertThat(length).isEqualTo(Length.inches(eighths, 8));
    long whole = eighths / 8;
    long rest = eighths % 8;
    int shared = rest % 4 == 0 ? 4 : rest % 2 == 0 ? 2 : 1;
    String fraction = rest == 0 ? "" : rest / shared + "/" + 8 / shared;
    return whole == 0 && rest != 0 ? fraction : (whole + " " + fraction).strip();
  }

  static LongStream seeds() {
    return LongStream.range(0, 40);
  }

  /**
   * Follows the steps on a bench of named pieces: each is there when it is cut, and all parts come
   * out.
   */
  @ParameterizedTest
  @MethodSource("seeds")
  void theStepsCanBeFollowedAndYieldTheParts(long seed) {
    SheetProblem problem = Examples.bookcases(seed);
    Layout layout = new StripCutter().cut(problem);
    for (int i = 0; i < layout.patterns().size(); i++) {
      SheetPattern pattern = layout.patterns().get(i);
      String name = "S" + (i + 1);
      Map<String, Piece> bench =
          follow(pattern, name, CuttingOrder.of(pattern, i + 1, problem.saw(), HoldLimits.NONE));
      assertThat(bench.values()).noneMatch(p -> p.content() instanceof Piece.Content.ToCut);
      assertThat(marks(bench)).containsExactlyInAnyOrderElementsOf(marks(pattern));
    }
  }

  private static Map<String, Piece> follow(SheetPattern pattern, String name, List<SetUp> order) {
    Map<String, Piece> bench = new LinkedHashMap<>();
    Piece.Content whole =
        pattern.root() instanceof Node.Finished(String mark, Lay lay)
            ? new Piece.Content.FinishedPart(mark, lay)
            : new Piece.Content.ToCut();
    bench.put(name, new Piece(name, whole, pattern.sheet().length(), pattern.sheet().width()));
    for (SetUp setUp : order) {
      for (SawStep step : setUp.steps()) {
        assertThat(bench.remove(step.from().name())).isEqualTo(step.from());
        put(bench, step.near());
        step.far().ifPresent(far -> put(bench, far));
        checkSizes(setUp, step);
      }
    }
    return bench;
  }

  private static void put(Map<String, Piece> bench, Piece piece) {
    assertThat(bench.put(piece.name(), piece)).as("a second %s", piece.name()).isNull();
  }

  private static void checkSizes(SetUp setUp, SawStep step) {
    if (setUp instanceof SetUp.CutTo(Direction direction, Length fence, Hold _, List<SawStep> _)) {
      boolean rip = direction == Direction.RIP;
      assertThat(rip ? step.near().width() : step.near().length()).isEqualTo(fence);
      assertThat(rip ? step.near().length() : step.near().width())
          .isEqualTo(rip ? step.from().length() : step.from().width());
    }
  }

  private static List<String> marks(Map<String, Piece> bench) {
    List<String> marks = new ArrayList<>();
    for (Piece piece : bench.values()) {
      if (piece.content() instanceof Piece.Content.FinishedPart(String mark, Lay lay)) {
        marks.add(mark);
      }
    }
    return marks;
  }

  private static List<String> marks(SheetPattern pattern) {
    return pattern.parts().stream().map(p -> ((Node.Finished) p.node()).mark()).toList();
  }

  /** No set-up follows another at the same setting: what can be cut together is. */
  @ParameterizedTest
  @MethodSource("seeds")
  void equalSettingsInARowAreOneSetUp(long seed) {
    SheetProblem problem = Examples.bookcases(seed);
    for (SheetPattern pattern : new StripCutter().cut(problem).patterns()) {
      List<String> settings =
          CuttingOrder.of(pattern, 1, problem.saw(), HoldLimits.NONE).stream()
              .filter(SetUp.CutTo.class::isInstance)
              .map(SetUp.CutTo.class::cast)
              .map(c -> c.direction() + " " + c.fence() + " " + c.hold())
              .toList();
      for (int i = 1; i < settings.size(); i++) {
        assertThat(settings.get(i)).isNotEqualTo(settings.get(i - 1));
      }
    }
  }

  /**
   * Never more set-ups than by the cuts waiting alone, here reckoned anew from the tree, and never
   * fewer than there are settings.
   */
  @ParameterizedTest
  @MethodSource("seeds")
  void takesNoMoreSetUpsThanByTheCutsWaiting(long seed) {
    SheetProblem problem = Examples.bookcases(seed);
    Layout layout = new StripCutter().cut(problem);
    assertThat(VirtualSaw.check(problem, layout)).isEmpty();
    for (SheetPattern pattern : layout.patterns()) {
      List<SetUp> order = CuttingOrder.of(pattern, 1, problem.saw(), HoldLimits.NONE);
      assertThat(cuts(order)).hasSizeLessThanOrEqualTo(byTheCutsWaiting(pattern));
      assertThat(cuts(order)).hasSizeGreaterThanOrEqualTo(Set.copyOf(cuts(order)).size());
    }
  }

  private static List<String> cuts(List<SetUp> order) {
    return order.stream()
        .filter(SetUp.CutTo.class::isInstance)
        .map(SetUp.CutTo.class::cast)
        .map(cut -> cut.direction() + " " + cut.fence() + " " + cut.hold())
        .toList();
  }

  /** A piece that is cut, and how large it is. */
  private record Due(Node.Cut cut, Length length, Length width) {

    static List<Due> of(Node node, Length length, Length width) {
      return switch (node) {
        case Node.TrimOff trim when trim.edge().direction() == Direction.RIP ->
            of(trim.rest(), length, width.minus(trim.off()));
        case Node.TrimOff trim -> of(trim.rest(), length.minus(trim.off()), width);
        case Node.Cut cut -> List.of(new Due(cut, length, width));
        case Node.Finished _, Node.Offcut _, Node.Dust _ -> List.of();
      };
    }

    List<Due> next() {
      Length taken = cut.fence().plus(cut.kerf());
      boolean rip = cut.direction() == Direction.RIP;
      List<Due> next = new ArrayList<>();
      next.addAll(of(cut.near(), rip ? length : cut.fence(), rip ? cut.fence() : width));
      next.addAll(
          of(cut.far(), rip ? length : length.minus(taken), rip ? width.minus(taken) : width));
      return next;
    }

    /** As long along the cut as across it: at the fence; else at a gauge. */
    boolean leads() {
      return cut.direction() == Direction.RIP ? length.isAtLeast(width) : width.isAtLeast(length);
    }

    boolean isAlike(Due other) {
      return cut.direction() == other.cut.direction()
          && cut.fence().equals(other.cut.fence())
          && leads() == other.leads();
    }
  }

  /** How often the fence moves if it always goes to most cuts, the widest of equals first. */
  private static int byTheCutsWaiting(SheetPattern pattern) {
    StockSheet sheet = pattern.sheet();
    List<Due> bench = new ArrayList<>(Due.of(pattern.root(), sheet.length(), sheet.width()));
    Optional<Due> before = Optional.empty();
    int moves = 0;
    while (!bench.isEmpty()) {
      Due next = Collections.max(bench, most(bench, before));
      before = Optional.of(next);
      moves++;
      for (int i = 0; i < bench.size(); i++) {
        Due due = bench.get(i);
        if (due.isAlike(next)) {
          bench.remove(i--);
          bench.addAll(due.next());
        }
      }
    }
    return moves;
  }

  private static Comparator<Due> most(List<Due> bench, Optional<Due> before) {
    Direction way = before.map(due -> due.cut.direction()).orElse(Direction.RIP);
    return Comparator.<Due, Boolean>comparing(due -> due.cut.direction() == way)
        .thenComparing(due -> bench.stream().filter(due::isAlike).count())
        .thenComparing(due -> before.filter(b -> b.leads() == due.leads()).isPresent())
        .thenComparing(due -> due.cut.fence());
  }

  /** Two pieces wait for 10, one for 20; but out of that one comes another for 10. */
  @Test
  void goesFirstWhereNoLaterPieceWillCome() {
    Node again = rip(20, rip(10, part("a"), part("b")), part("c"));
    Node two = crosscut(50, rip(10, part("d"), part("e")), again);
    Node root = crosscut(50, rip(10, part("f"), part("g")), two);
    SheetPattern pattern =
        new SheetPattern(Examples.sheet("board", 150, 40, Supply.of(1), 1), 1, root);
    assertThat(byTheCutsWaiting(pattern)).isEqualTo(4);
    assertThat(cuts(CuttingOrder.of(pattern, 1, new Saw(Length.ZERO, Trim.NONE), HoldLimits.NONE)))
        .containsExactly(
            "CROSSCUT " + Length.inches(50) + " GAUGE",
            "RIP " + Length.inches(20) + " FENCE",
            "RIP " + Length.inches(10) + " FENCE");
  }

  /**
   * Rips at 10 of four pieces, 30 and 50 long by turns, all 40 wide: what is shorter than wide goes
   * to a gauge, the rest to the fence, each together, though the fence stands alike for both.
   */
  @Test
  void passesThatAreHeldInAnotherWayAreAnotherSetUp() {
    Node last = crosscut(30, tens(), tens());
    Node root = crosscut(30, tens(), crosscut(50, tens(), last));
    SheetPattern pattern =
        new SheetPattern(Examples.sheet("sheet", 160, 40, Supply.of(1), 1), 1, root);
    List<SetUp> order =
        CuttingOrder.of(pattern, 1, new Saw(Length.ZERO, Trim.NONE), HoldLimits.NONE);
    assertThat(order.stream().filter(s -> s.direction() == Direction.RIP))
        .hasSize(2)
        .extracting(SetUp::hold)
        .containsExactlyInAnyOrder(Hold.FENCE, Hold.GAUGE);
    for (SetUp setUp : order) {
      assertThat(setUp.steps())
          .filteredOn(step -> setUp.direction() == Direction.RIP)
          .allMatch(
              step ->
                  step.from().length().isAtLeast(step.from().width())
                      == (setUp.hold() == Hold.FENCE));
    }
    Merit.OfSheet merit = Merit.OfSheet.of(pattern, new Saw(Length.ZERO, Trim.NONE), Examples.AIMS);
    assertThat(merit.setUps()).isEqualTo(order.size());
  }

  private static Node tens() {
    return rip(10, part("t"), part("u"));
  }

  private static Node part(String mark) {
    return new Node.Finished(mark, Lay.STRAIGHT);
  }

  private static Node rip(int fence, Node near, Node far) {
    return new Node.Cut(Direction.RIP, Length.inches(fence), Length.ZERO, near, far);
  }

  private static Node crosscut(int stop, Node near, Node far) {
    return new Node.Cut(Direction.CROSSCUT, Length.inches(stop), Length.ZERO, near, far);
  }
}
