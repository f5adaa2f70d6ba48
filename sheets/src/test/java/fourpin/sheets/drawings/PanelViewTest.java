package fourpin.sheets.drawings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fourpin.casework.BuiltCase;
import fourpin.casework.Face;
import fourpin.casework.Feature.Channel;
import fourpin.casework.Feature.Hole;
import fourpin.casework.Part;
import fourpin.plan.Plan;
import fourpin.plan.Planner;
import fourpin.sheets.SampleJobs;
import fourpin.sheets.paint.Box;
import fourpin.sheets.paint.Drawing;
import fourpin.sheets.paint.Fractions;
import fourpin.sheets.paint.Mark;
import fourpin.sheets.paint.Pen;
import fourpin.sheets.paint.Point;
import fourpin.sheets.paint.Typeface;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PanelViewTest {

  private static final double CLOSE = 0.05;

  private final Plan plan = Planner.plan(SampleJobs.readingRoom());
  private final BuiltCase built = plan.cases().getFirst();

  private Drawing draw(String mark, Face face) {
    Drafter drafter = Drafter.of(plan.job(), 170, 210);
    return new PanelView(drafter, built, plan.grids(), built.part(mark), face).draw();
  }

  /**
   * Distances are taken from the drawn outline itself: front edge and lower end, whichever side
   * they lie on.
   */
  @ParameterizedTest
  @CsvSource({
    "L, RIGHT, left",
    "R, LEFT, right",
    "P1, RIGHT, left",
    "P1, LEFT, right",
    "P2, LEFT, right"
  })
  void holesLieAtTheirDistancesFromFrontAndFoot(String mark, Face face, String front) {
    Drawing drawing = draw(mark, face);
    Part part = built.part(mark);
    Box outline = outline(drawing);
    List<Hole> holes = holes(part, face);
    List<Point> drawn = circles(drawing);
    assertThat(drawn).hasSameSizeAs(holes).hasSizeGreaterThan(40);
    for (int i = 0; i < holes.size(); i++) {
      double fromFront = holes.get(i).centre().y().minus(part.box().low().y()).mm();
      double fromFoot = holes.get(i).centre().z().minus(part.box().low().z()).mm();
      double across =
          front.equals("left")
              ? drawn.get(i).x() - outline.left()
              : outline.right() - drawn.get(i).x();
      double up = drawn.get(i).y() - outline.bottom();
      assertThat(across).isCloseTo(drawing.scale().toPaper(fromFront), within(CLOSE));
      assertThat(up).isCloseTo(drawing.scale().toPaper(fromFoot), within(CLOSE));
    }
  }

  @Test
  void leftAndRightSidesAreMirrored() {
    List<Double> left = fromHeavyEdge(draw("L", Face.RIGHT));
    List<Double> right = fromHeavyEdge(draw("R", Face.LEFT));
    assertThat(left).hasSizeGreaterThan(40).hasSameSizeAs(right);
    for (int i = 0; i < left.size(); i++) {
      assertThat(left.get(i)).isCloseTo(right.get(i), within(1e-9));
    }
  }

  /** Distances of the holes from the upright heavy line. */
  private static List<Double> fromHeavyEdge(Drawing drawing) {
    double edge =
        paths(drawing)
            .filter(p -> p.pen() == Pen.DATUM)
            .map(p -> Box.round(p.points()))
            .filter(box -> box.width() == 0)
            .findFirst()
            .orElseThrow()
            .left();
    return circles(drawing).stream().map(p -> Math.abs(p.x() - edge)).toList();
  }

  @ParameterizedTest
  @CsvSource({
    "L, RIGHT, '← FRONT'",
    "R, LEFT, 'FRONT →'",
    "B, TOP, '↓ FRONT'",
    "T, BOTTOM, '↑ FRONT'"
  })
  void theFrontIsNamed(String mark, Face face, String words) {
    assertThat(words(draw(mark, face))).contains(words, mark);
  }

  /** The half holes of a cleat strip have their centres half a saw cut beyond its edge. */
  @ParameterizedTest
  @CsvSource({"1-LF, RIGHT, 1 9/16", "1-LB, RIGHT, -1/16", "1-RF, LEFT, 1 9/16"})
  void noDistanceIsWrittenThatLiesBesideThePart(String mark, Face face, String beside) {
    Plan onCleats = Planner.plan(SampleJobs.onCleats());
    BuiltCase cased = onCleats.cases().getFirst();
    Part strip = cased.part(mark);
    Drafter drafter = Drafter.of(onCleats.job(), 170, 210);
    Drawing drawing = new PanelView(drafter, cased, onCleats.grids(), strip, face).draw();
    assertThat(holes(strip, face))
        .isNotEmpty()
        .extracting(hole -> strip.from(strip.widthAxis(), hole.centre().y()))
        .extracting(onCleats.job().style()::number)
        .containsOnly(beside);
    assertThat(words(drawing))
        .contains(Fractions.set("1 1/2"))
        .doesNotContain(Fractions.set(beside), beside);
  }

  @Test
  void distancesRunFromTheFootAndTheNumbersNeverMeet() {
    Drawing drawing = draw("L", Face.RIGHT);
    String first = plan.job().style().number(plan.grids().getFirst().levels().getFirst().height());
    assertThat(words(drawing)).contains(Fractions.set(first), "84", "12", "0");
    List<Box> boxes = texts(drawing).map(Mark.Text::extent).toList();
    for (int i = 0; i < boxes.size(); i++) {
      for (int j = 0; j < i; j++) {
        assertThat(boxes.get(i).overlaps(boxes.get(j))).as("%s, %s", i, j).isFalse();
      }
    }
  }

  /** Mark, FRONT, TOP and letters of joints keep off edges, joints, rows and holes. */
  @ParameterizedTest
  @CsvSource({
    "L, RIGHT",
    "L, LEFT",
    "R, LEFT",
    "P1, RIGHT",
    "P1, LEFT",
    "B, TOP",
    "T, BOTTOM",
    "K, FRONT"
  })
  void labelsLieOnNoLineAndNoHole(String mark, Face face) {
    Drawing drawing = draw(mark, face);
    Set<Pen> drawn = EnumSet.of(Pen.OUTLINE, Pen.EDGE, Pen.HIDDEN, Pen.CENTRE, Pen.DATUM);
    List<Box> lines =
        paths(drawing).filter(p -> drawn.contains(p.pen())).flatMap(PanelViewTest::sides).toList();
    List<Box> holes = circles(drawing).stream().map(p -> Box.round(List.of(p))).toList();
    List<Mark.Text> labels =
        texts(drawing)
            .filter(t -> t.lettering().face() == Typeface.BOLD && t.lettering().size() >= 3)
            .toList();
    assertThat(labels).isNotEmpty();
    assertThat(lines).hasSizeGreaterThan(4);
    for (Mark.Text label : labels) {
      Stream.concat(lines.stream(), holes.stream())
          .forEach(
              box ->
                  assertThat(label.extent().overlaps(box.grown(0.1)))
                      .as("%s at %s on %s", label.lettering().words(), label.at(), box)
                      .isFalse());
    }
  }

  private static Stream<Box> sides(Mark.Path path) {
    List<Point> points = path.points();
    return IntStream.range(0, points.size())
        .mapToObj(i -> Box.round(List.of(points.get(i), points.get((i + 1) % points.size()))));
  }

  /** The notch for the kick has its height and depth among the dimensions, and a letter. */
  @Test
  void notchesAreDimensionedAndListed() {
    PanelView view =
        new PanelView(
            Drafter.of(plan.job(), 170, 210), built, plan.grids(), built.part("L"), Face.RIGHT);
    assertThat(view.joints())
        .filteredOn(j -> j.channel().kind() == Channel.Kind.NOTCH)
        .singleElement()
        .satisfies(
            j -> assertThat(words(view.draw())).contains(j.letter(), Fractions.set("3 1/2"), "2"));
  }

  @Test
  void everyHoleThatIsOnNoRowIsListed() {
    Part side = built.part("L");
    PanelView outside =
        new PanelView(Drafter.of(plan.job(), 170, 210), built, plan.grids(), side, Face.LEFT);
    assertThat(outside.otherHoles()).isNotEmpty().isEqualTo(holes(side, Face.LEFT));
  }

  @Test
  void jointsAreLetteredAndListed() {
    PanelView view =
        new PanelView(
            Drafter.of(plan.job(), 170, 210), built, plan.grids(), built.part("L"), Face.RIGHT);
    assertThat(view.joints())
        .extracting(j -> j.channel().purpose())
        .contains("top", "bottom", "back");
    assertThat(words(view.draw()))
        .containsAll(view.joints().stream().map(PanelView.Joint::letter).toList());
  }

  @Test
  void partitionsThatAreAlikeShareAPageAndHandedSidesDoNot() {
    List<List<String>> kinds =
        PanelKinds.of(built).stream().map(k -> k.stream().map(Part::mark).toList()).toList();
    assertThat(kinds).contains(List.of("L"), List.of("R"), List.of("P1", "P2"));
  }

  private static List<Hole> holes(Part part, Face face) {
    return part.features().stream()
        .filter(f -> f.face() == face)
        .flatMap(f -> f instanceof Hole h ? Stream.of(h) : Stream.empty())
        .toList();
  }

  private static Box outline(Drawing drawing) {
    return paths(drawing)
        .map(p -> Box.round(p.points()))
        .max(Comparator.comparingDouble(box -> box.width() * box.height()))
        .orElseThrow();
  }

  private static Stream<Mark.Path> paths(Drawing drawing) {
    return Mark.flattened(drawing.marks()).stream()
        .flatMap(m -> m instanceof Mark.Path p ? Stream.of(p) : Stream.empty());
  }

  /** All circles but those of the datum. */
  private static List<Point> circles(Drawing drawing) {
    return Mark.flattened(drawing.marks()).stream()
        .flatMap(
            m ->
                m instanceof Mark.Circle c && c.pen() == Pen.EDGE
                    ? Stream.of(c.centre())
                    : Stream.empty())
        .toList();
  }

  private static Stream<Mark.Text> texts(Drawing drawing) {
    return Mark.flattened(drawing.marks()).stream()
        .flatMap(m -> m instanceof Mark.Text t ? Stream.of(t) : Stream.empty());
  }

  private static List<String> words(Drawing drawing) {
    return texts(drawing).map(t -> t.lettering().words()).toList();
  }
}
