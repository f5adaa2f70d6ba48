package fourpin.sheets.drawings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fourpin.boring.BayGrid;
import fourpin.boring.way.Clamping;
import fourpin.boring.way.Clamping.Bearing;
import fourpin.boring.way.Guide;
import fourpin.boring.way.Method;
import fourpin.casework.BuiltCase;
import fourpin.casework.Face;
import fourpin.casework.Feature.Hole;
import fourpin.casework.Part;
import fourpin.measure.Length;
import fourpin.plan.Plan;
import fourpin.plan.Planner;
import fourpin.sheets.SampleBorings;
import fourpin.sheets.SampleJobs;
import fourpin.sheets.paint.Box;
import fourpin.sheets.paint.Drawing;
import fourpin.sheets.paint.Fill;
import fourpin.sheets.paint.Mark;
import fourpin.sheets.paint.Pen;
import fourpin.sheets.paint.Point;
import fourpin.sheets.paint.Scale;
import fourpin.sheets.paint.Sketch;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DrillingViewTest {

  private static final double CLOSE = 0.05;

  private final Plan plan = Planner.plan(SampleJobs.readingRoom());
  private final BuiltCase built = plan.cases().getFirst();
  private final Method.Guided guided =
      (Method.Guided) SampleBorings.guided(plan).getFirst().method();
  private final Drafter drafter = Drafter.of(plan.job(), 110, 190);

  private List<Clamping> clampings(String mark, Face face) {
    return guided.clampings().stream()
        .filter(c -> c.part().equals(mark) && c.face() == face)
        .toList();
  }

  private Drawing draw(String mark, Face face) {
    return new DrillingView(
            drafter,
            built,
            built.part(mark),
            face,
            guided.guide(),
            clampings(mark, face),
            List.of(7, 8))
        .draw();
  }

  /**
   * What is bored through the guide as it is drawn must be the holes that the panel is to have: the
   * two come from different places of the plan.
   */
  @ParameterizedTest
  @CsvSource({"L, RIGHT", "R, LEFT", "P1, RIGHT", "P1, LEFT"})
  void theGuideDrawnOnThePanelBoresThePanelsHoles(String mark, Face face) {
    Part part = built.part(mark);
    for (Clamping clamping : clampings(mark, face)) {
      Sketch sketch = new Sketch(new Scale(1, 12));
      new ClampedGuide(drafter, part, guided.guide(), clamping).draw(sketch);
      List<Point> drawn = holes(sketch.marks());
      List<Hole> wanted = holes(part, face, clamping.row());
      assertThat(drawn).hasSameSizeAs(wanted).hasSizeGreaterThan(40);
      Projection view = new Projection(face);
      for (int i = 0; i < drawn.size(); i++) {
        Hole hole = wanted.get(i);
        assertThat(drawn.get(i).x())
            .isCloseTo(sketch.scale().toPaper(view.u(hole.centre())), within(CLOSE));
        assertThat(drawn.get(i).y())
            .isCloseTo(sketch.scale().toPaper(view.v(hole.centre())), within(CLOSE));
      }
    }
  }

  private static List<Hole> holes(Part part, Face face, BayGrid.Row.Name row) {
    List<Length> rows = holes(part, face).map(h -> h.centre().y()).distinct().sorted().toList();
    Length wanted = row == BayGrid.Row.Name.FRONT ? rows.getFirst() : rows.getLast();
    return holes(part, face)
        .filter(h -> h.centre().y().equals(wanted))
        .sorted(Comparator.comparing(h -> h.centre().z()))
        .toList();
  }

  private static Stream<Hole> holes(Part part, Face face) {
    return part.features().stream()
        .filter(f -> f.face() == face)
        .flatMap(f -> f instanceof Hole h ? Stream.of(h) : Stream.empty())
        .filter(h -> h.use() == Hole.Use.SUPPORT);
  }

  private static List<Point> holes(List<Mark> marks) {
    return circles(marks)
        .filter(c -> c.pen() == Pen.EDGE)
        .map(Mark.Circle::centre)
        .sorted(Comparator.comparingDouble(Point::y))
        .toList();
  }

  private static Stream<Mark.Circle> circles(List<Mark> marks) {
    return Mark.flattened(marks).stream()
        .flatMap(m -> m instanceof Mark.Circle c ? Stream.of(c) : Stream.empty());
  }

  @ParameterizedTest
  @CsvSource({"L, RIGHT, B, '← FRONT'", "R, LEFT, A, 'FRONT →'"})
  void sideRowsHolesAndFrontAreWritten(String mark, Face face, String side, String front) {
    List<String> words = words(draw(mark, face));
    assertThat(words)
        .contains(mark, front, "TOP", "step 7: front row", "step 8: back row")
        .contains("side " + side + " of the guide shows");
    assertThat(words).filteredOn(w -> w.startsWith("holes 3 to ")).hasSize(2);
  }

  /** The block lies below the lower end of the panel, and the lower end is heavy. */
  @Test
  void theBlockBearsOnTheHeavyEnd() {
    Part part = built.part("L");
    Sketch sketch = new Sketch(new Scale(1, 12));
    new ClampedGuide(drafter, part, guided.guide(), clampings("L", Face.RIGHT).getFirst())
        .draw(sketch);
    Box block =
        paths(sketch.marks())
            .filter(p -> p.fill() == Fill.HATCH)
            .map(p -> Box.round(p.points()))
            .findFirst()
            .orElseThrow();
    Box end =
        paths(sketch.marks())
            .filter(p -> p.pen() == Pen.DATUM)
            .map(p -> Box.round(p.points()))
            .filter(b -> b.height() == 0)
            .findFirst()
            .orElseThrow();
    assertThat(block.top()).isCloseTo(end.bottom(), within(CLOSE));
  }

  @Test
  void aFurtherPlaceIsFoundByThePinAndDashed() {
    Guide guide = guided.guide();
    Clamping one = clampings("L", Face.RIGHT).getFirst();
    Clamping stepped = with(one, new Bearing.End(), one.along(), SampleBorings.stepped(guide));
    Sketch sketch = new Sketch(new Scale(1, 12));
    new ClampedGuide(drafter, built.part("L"), guide, stepped).draw(sketch);
    int count = guide.holes().size();
    assertThat(holes(sketch.marks())).hasSize(2 * count - 1);
    Mark.Circle pin =
        circles(sketch.marks()).filter(c -> c.fill() == Fill.SOLID).findFirst().orElseThrow();
    double last = sketch.scale().toPaper(guide.holes().getLast().along().mm());
    assertThat(pin.centre().y()).isCloseTo(last, within(CLOSE));
    assertThat(paths(sketch.marks()).filter(p -> p.pen() == Pen.HIDDEN)).isNotEmpty();
    Drawing drawing =
        new DrillingView(
                drafter, built, built.part("L"), Face.RIGHT, guide, List.of(stepped), List.of(7))
            .draw();
    assertThat(words(drawing)).contains("black pin: 1 in " + count + ", then holes 2 to " + count);
  }

  /** The first number of a place comes a hole above the last of the place before. */
  @ParameterizedTest
  @CsvSource({"L, RIGHT, 8", "L, RIGHT, 12", "R, LEFT, 12", "R, LEFT, 16"})
  void numbersOfFurtherPlacesKeepApart(String mark, Face face, int scale) {
    Guide guide = guided.guide();
    Clamping one = clampings(mark, face).getFirst();
    List<Clamping.Reach> places = new ArrayList<>(SampleBorings.stepped(guide));
    places.add(places.getLast());
    Sketch sketch = new Sketch(new Scale(1, scale));
    new ClampedGuide(
            drafter,
            built.part(mark),
            guide,
            with(one, new Bearing.End(), one.along(), List.copyOf(places)))
        .draw(sketch);
    List<Mark.Text> numbers =
        Mark.flattened(sketch.marks()).stream()
            .flatMap(m -> m instanceof Mark.Text t ? Stream.of(t) : Stream.empty())
            .filter(t -> t.lettering().words().matches("\\d+"))
            .toList();
    assertThat(numbers).hasSizeGreaterThan(10);
    for (Mark.Text number : numbers) {
      assertThat(numbers)
          .filteredOn(other -> other.extent().overlaps(number.extent()))
          .as("beside itself")
          .hasSize(1);
    }
  }

  /** Thin crosses of less than 2 mm are overlooked on a sheet that lies at the drill. */
  @Test
  void holesThatAreLeftAreCrossedOutSoThatItIsSeen() {
    Guide guide = guided.guide();
    Clamping one = clampings("L", Face.RIGHT).getFirst();
    int left = guide.holes().size() - one.reaches().getFirst().holes().size();
    Sketch sketch = new Sketch(new Scale(1, 12));
    new ClampedGuide(drafter, built.part("L"), guide, one).draw(sketch);
    List<Box> strokes =
        paths(sketch.marks())
            .filter(p -> p.pen() == Pen.EDGE && p.points().size() == 2)
            .map(p -> Box.round(p.points()))
            .filter(b -> b.width() > 0 && Math.abs(b.width() - b.height()) < 1e-9)
            .toList();
    assertThat(strokes).hasSize(2 * left).allSatisfy(s -> assertThat(s.width()).isGreaterThan(1.6));
  }

  /** In a standing case the guide's zero stands on the panel below, without its block. */
  @Test
  void afterAssemblyTheGuideStandsOnThePanelBelow() {
    Part part = built.part("L");
    String below = built.bays().getFirst().openings().getFirst().below();
    Length up = built.part(below).box().at(Face.TOP).minus(part.box().at(Face.BOTTOM));
    Clamping one = clampings("L", Face.RIGHT).getFirst();
    Clamping standing = with(one, new Bearing.PanelBelow(below, Length.ZERO), up, one.reaches());
    Drawing drawing =
        new DrillingView(
                drafter, built, part, Face.RIGHT, guided.guide(), List.of(standing), List.of(7))
            .draw();
    assertThat(words(drawing)).contains(below);
    assertThat(paths(drawing.marks()).filter(p -> p.fill() == Fill.HATCH)).isEmpty();
    Box guide =
        paths(drawing.marks())
            .filter(p -> p.fill() == Fill.SHADE)
            .map(p -> Box.round(p.points()))
            .findFirst()
            .orElseThrow();
    Box support =
        paths(drawing.marks())
            .filter(p -> p.fill() == Fill.BACK_HATCH)
            .map(p -> Box.round(p.points()))
            .findFirst()
            .orElseThrow();
    assertThat(guide.bottom()).isCloseTo(support.top(), within(CLOSE));
  }

  private static Clamping with(
      Clamping one, Bearing bearing, Length along, List<Clamping.Reach> reaches) {
    return new Clamping(
        one.bay(),
        one.part(),
        one.face(),
        one.row(),
        one.edge(),
        one.across(),
        along,
        bearing,
        reaches);
  }

  @ParameterizedTest
  @CsvSource({"L, RIGHT", "R, LEFT", "P1, LEFT"})
  void theStickIsMarkedAtEveryHeightFromTheFoot(String mark, Face face) {
    Part part = built.part(mark);
    List<Length> up = holes(part, face).map(h -> h.centre().z()).distinct().sorted().toList();
    List<Integer> marks = IntStream.range(0, up.size()).mapToObj(i -> 101 + i).toList();
    Drawing drawing =
        new RowsView(drafter, built, part, face, new RowsView.Aid.Stick(marks, List.of())).draw();
    List<Double> ticks =
        paths(drawing.marks())
            .filter(p -> p.pen() == Pen.EDGE && p.points().size() == 2)
            .map(p -> Box.round(p.points()))
            .filter(b -> b.height() == 0)
            .map(Box::bottom)
            .sorted()
            .toList();
    List<Double> heights = up.stream().map(Length::mm).toList();
    assertThat(ticks).hasSameSizeAs(heights).hasSizeGreaterThan(40);
    for (int i = 0; i < ticks.size(); i++) {
      assertThat(ticks.get(i)).isCloseTo(drawing.scale().toPaper(heights.get(i)), within(CLOSE));
    }
    assertThat(words(drawing)).contains(mark, "101", Integer.toString(100 + heights.size()));
  }

  private static Stream<Mark.Path> paths(List<Mark> marks) {
    return Mark.flattened(marks).stream()
        .flatMap(m -> m instanceof Mark.Path p ? Stream.of(p) : Stream.empty());
  }

  private static List<String> words(Drawing drawing) {
    return Mark.flattened(drawing.marks()).stream()
        .flatMap(m -> m instanceof Mark.Text t ? Stream.of(t.lettering().words()) : Stream.empty())
        .toList();
  }
}
