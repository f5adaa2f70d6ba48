package fourpin.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.measure.Length;
import fourpin.measure.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The virtual saw passes a sound layout made by hand and finds each fault planted in it. */
class VirtualSawTest {
  private static final Length ONE_PM = new Length(1, Unit.MILLIMETRE);
  private static final Length HALF = Length.inches(1, 2);
  private static final Node OFFCUT = new Node.Offcut();
  private static final Node DUST = new Node.Dust();

  /**
   * One sheet 48 x 24 in, trimmed by 1/2 all round to 47 x 23, kerf 1/8: a rip at 10, from the
   * strip a crosscut at 30 (side) and at 16 7/8 (shelf, up to the end); the rest 12 7/8 wide has
   * one free part turned, 12 7/8 along the sheet's width.
   */
  private static final SheetProblem PROBLEM =
      new SheetProblem(
          List.of(
              new Part("side", Length.inches(30), Length.inches(10), 1, Grain.FIXED),
              new Part("shelf", Length.inches(135, 8), Length.inches(10), 1, Grain.FIXED),
              new Part("cleat", Length.inches(103, 8), Length.inches(4), 1, Grain.FREE)),
          List.of(Examples.sheet("half sheet", 48, 24, Supply.of(1), 3000)),
          new Saw(Examples.KERF, Trim.allRound(HALF)));

  private static final Node SIDE = new Node.Finished("side", Lay.STRAIGHT);
  private static final Node SHELF = new Node.Finished("shelf", Lay.STRAIGHT);
  private static final Node CLEAT = new Node.Finished("cleat", Lay.TURNED);
  private static final Node.Cut CROSSCUT = cut(Direction.CROSSCUT, Length.inches(30), SIDE, SHELF);
  private static final Node.Cut CLEATS = cut(Direction.CROSSCUT, Length.inches(4), CLEAT, OFFCUT);
  private static final Node.Cut RIP = cut(Direction.RIP, Length.inches(10), CROSSCUT, CLEATS);

  private static Node.Cut cut(Direction direction, Length fence, Node near, Node far) {
    return new Node.Cut(direction, fence, Examples.KERF, near, far);
  }

  private static Node trimmed(Node rest) {
    Node node = rest;
    for (Edge edge : List.of(Edge.values()).reversed()) {
      node = new Node.TrimOff(edge, HALF, node);
    }
    return node;
  }

  private static SheetPattern pattern(Node root) {
    return new SheetPattern(PROBLEM.stock().getFirst(), 1, root);
  }

  private static Layout layout(SheetPattern... patterns) {
    return new Layout(List.of(patterns), List.of(), new LowerBound(3000, 1));
  }

  private static List<Fault> faults(Node afterTrim) {
    return VirtualSaw.check(PROBLEM, layout(pattern(trimmed(afterTrim))));
  }

  @Test
  void passesTheSoundLayout() {
    assertThat(faults(RIP)).isEmpty();
  }

  static Stream<Arguments> planted() {
    Length ten = Length.inches(10);
    Length thirty = Length.inches(30);
    return Stream.of(
        Arguments.of("cut one picometre too far", rip(ten.plus(ONE_PM)), Fault.WrongSize.class),
        Arguments.of("cut one picometre short", rip(ten.minus(ONE_PM)), Fault.WrongSize.class),
        Arguments.of(
            "crosscut shifted by one picometre",
            underRip(cut(Direction.CROSSCUT, thirty.plus(ONE_PM), SIDE, SHELF)),
            Fault.WrongSize.class),
        Arguments.of("fence at zero", rip(Length.ZERO), Fault.CutOutsidePiece.class),
        Arguments.of("fence below zero", rip(ten.negated()), Fault.CutOutsidePiece.class),
        Arguments.of("fence at the far edge", rip(Length.inches(23)), Fault.CutOutsidePiece.class),
        Arguments.of("fence beyond the edge", rip(Length.inches(99)), Fault.CutOutsidePiece.class),
        Arguments.of("kerf left out", kerf(Length.ZERO), Fault.WrongKerf.class),
        Arguments.of("kerf too wide", kerf(Length.inches(1, 4)), Fault.WrongKerf.class),
        Arguments.of("kerf below zero", kerf(Examples.KERF.negated()), Fault.WrongKerf.class),
        Arguments.of(
            "part dropped for an offcut",
            underRip(cut(Direction.CROSSCUT, thirty, OFFCUT, SHELF)),
            Fault.WrongCount.class),
        Arguments.of(
            "part cut twice",
            underRip(cut(Direction.CROSSCUT, thirty, SIDE, SIDE)),
            Fault.WrongCount.class),
        Arguments.of(
            "parts exchanged",
            underRip(cut(Direction.CROSSCUT, thirty, SHELF, SIDE)),
            Fault.WrongSize.class),
        Arguments.of(
            "part not parted from its strip",
            cut(Direction.RIP, ten, SIDE, CLEATS),
            Fault.WrongSize.class),
        Arguments.of(
            "grain turned",
            underRip(cut(Direction.CROSSCUT, thirty, new Node.Finished("side", Lay.TURNED), SHELF)),
            Fault.WrongGrain.class),
        Arguments.of(
            "part nobody asked for",
            underRip(
                cut(Direction.CROSSCUT, thirty, new Node.Finished("door", Lay.STRAIGHT), SHELF)),
            Fault.UnknownPart.class),
        Arguments.of(
            "rest forgotten", cut(Direction.RIP, ten, CROSSCUT, DUST), Fault.PieceForgotten.class),
        Arguments.of(
            "rest forgotten, so that the areas do not balance",
            cut(Direction.RIP, ten, CROSSCUT, DUST),
            Fault.AreaDoesNotBalance.class),
        Arguments.of(
            "dust against the fence",
            cut(Direction.RIP, ten, DUST, CLEATS),
            Fault.DustForPiece.class),
        Arguments.of(
            "rip taken for a crosscut",
            cut(Direction.CROSSCUT, ten, CROSSCUT, CLEATS),
            Fault.CutOutsidePiece.class),
        Arguments.of(
            "trimmed after the first cut",
            cut(Direction.RIP, ten, CROSSCUT, new Node.TrimOff(Edge.FAR_END, HALF, CLEATS)),
            Fault.LateTrim.class),
        Arguments.of(
            "trimmed once more", new Node.TrimOff(Edge.FAR_END, HALF, RIP), Fault.WrongTrim.class));
  }

  private static Node rip(Length fence) {
    return cut(Direction.RIP, fence, CROSSCUT, CLEATS);
  }

  private static Node kerf(Length kerf) {
    return new Node.Cut(Direction.RIP, Length.inches(10), kerf, CROSSCUT, CLEATS);
  }

  private static Node underRip(Node strip) {
    return cut(Direction.RIP, Length.inches(10), strip, CLEATS);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("planted")
  void findsPlantedFaults(String what, Node afterTrim, Class<? extends Fault> fault) {
    assertThat(faults(afterTrim)).as(what).hasAtLeastOneElementOfType(fault);
  }

  @Test
  void findsMissingTrim() {
    assertThat(VirtualSaw.check(PROBLEM, layout(pattern(RIP))))
        .contains(new Fault.WrongTrim(1, Edge.NEAR_EDGE, HALF, Length.ZERO));
  }

  @Test
  void findsTrimThatTakesTheWholeSheet() {
    Node all = new Node.TrimOff(Edge.FAR_EDGE, Length.inches(24), OFFCUT);
    assertThat(VirtualSaw.check(PROBLEM, layout(pattern(all))))
        .contains(new Fault.OutsideSheet(1, "offcut"));
  }

  @Test
  void findsMoreSheetsThanThereAre() {
    SheetPattern sound = pattern(trimmed(RIP));
    assertThat(VirtualSaw.check(PROBLEM, layout(sound, sound)))
        .contains(
            new Fault.StockExceeded("half sheet", 2, 1), new Fault.WrongCount("side", 1, 2, 0));
    SheetPattern twice = new SheetPattern(sound.sheet(), 2, sound.root());
    assertThat(VirtualSaw.check(PROBLEM, layout(twice)))
        .contains(
            new Fault.StockExceeded("half sheet", 2, 1), new Fault.WrongCount("side", 1, 2, 0));
  }

  @Test
  void findsASheetThatIsNotInStock() {
    StockSheet larger = Examples.sheet("half sheet", 49, 24, Supply.of(1), 3000);
    assertThat(VirtualSaw.check(PROBLEM, layout(new SheetPattern(larger, 1, trimmed(RIP)))))
        .contains(new Fault.UnknownSheet(1, "half sheet"));
  }

  @Test
  void findsPartsNeitherCutNorReported() {
    assertThat(VirtualSaw.check(PROBLEM, layout()))
        .containsExactly(
            new Fault.WrongCount("side", 1, 0, 0),
            new Fault.WrongCount("shelf", 1, 0, 0),
            new Fault.WrongCount("cleat", 1, 0, 0));
  }

  @Test
  void findsUntrueReasons() {
    Layout lazy =
        new Layout(
            List.of(),
            List.of(
                new Unplaced("side", 1, Unplaced.Reason.TOO_LONG),
                new Unplaced("shelf", 1, Unplaced.Reason.NO_SHEETS_LEFT),
                new Unplaced("cleat", 1, Unplaced.Reason.GRAIN_FORBIDS_TURNING)),
            new LowerBound(0, 0));
    assertThat(VirtualSaw.check(PROBLEM, lazy)).hasSize(3);
    assertThat(VirtualSaw.check(PROBLEM, lazy))
        .contains(
            new Fault.NeedlesslyLeftOut("side", Unplaced.Reason.TOO_LONG, "half sheet"),
            new Fault.NeedlesslyLeftOut("shelf", Unplaced.Reason.NO_SHEETS_LEFT, "half sheet"));
  }

  @Test
  void findsAPartLeftOutThatNobodyAskedFor() {
    Layout odd =
        new Layout(
            List.of(pattern(trimmed(RIP))),
            List.of(new Unplaced("door", 1, Unplaced.Reason.TOO_WIDE)),
            new LowerBound(3000, 1));
    assertThat(VirtualSaw.check(PROBLEM, odd))
        .containsExactly(new Fault.WrongCount("door", 0, 0, 1));
  }

  /**
   * No more than the kerf is left beyond the setting: the blade takes it all, and exactly that is
   * accepted.
   */
  @ParameterizedTest
  @MethodSource("lastCuts")
  void acceptsALastCutThatRunsOffTheEdge(int sixteenths, boolean dust) {
    Length board = Length.inches(160 + sixteenths, 16);
    SheetProblem problem =
        new SheetProblem(
            List.of(Examples.part("cleat", Length.inches(10), Length.inches(2), 1)),
            List.of(
                new StockSheet(
                    "strip",
                    board,
                    Length.inches(2),
                    SheetGrain.ALONG_LENGTH,
                    Supply.of(1),
                    0,
                    Origin.ON_HAND)),
            Examples.SAW);
    Length taken = Length.min(Length.inches(sixteenths, 16), Examples.KERF);
    Node cleat = new Node.Finished("cleat", Lay.STRAIGHT);
    UnaryOperator<Node> last =
        far -> new Node.Cut(Direction.CROSSCUT, Length.inches(10), taken, cleat, far);
    List<List<Fault>> found = new ArrayList<>();
    for (Node far : List.of(DUST, OFFCUT)) {
      found.add(
          VirtualSaw.check(
              problem, layout(new SheetPattern(problem.stock().getFirst(), 1, last.apply(far)))));
    }
    assertThat(found.get(dust ? 0 : 1)).isEmpty();
    assertThat(found.get(dust ? 1 : 0))
        .hasAtLeastOneElementOfType(dust ? Fault.PieceFromDust.class : Fault.PieceForgotten.class);
  }

  static Stream<Arguments> lastCuts() {
    return Stream.of(Arguments.of(1, true), Arguments.of(2, true), Arguments.of(3, false));
  }
}
