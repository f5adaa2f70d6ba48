package fourpin.sheets.drawings;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.casework.BuiltCase;
import fourpin.casework.DoorLeaf;
import fourpin.casework.Face;
import fourpin.casework.FrameMeasures;
import fourpin.casework.Part;
import fourpin.casework.Part.Role;
import fourpin.cutting.SheetPattern;
import fourpin.measure.Length;
import fourpin.plan.MaterialPlan;
import fourpin.plan.Plan;
import fourpin.plan.Planner;
import fourpin.sheets.SampleJobs;
import fourpin.sheets.paint.Box;
import fourpin.sheets.paint.Drawing;
import fourpin.sheets.paint.Fractions;
import fourpin.sheets.paint.Mark;
import fourpin.sheets.paint.Pen;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class CaseViewsTest {

  private final Plan plan = Planner.plan(SampleJobs.readingRoom());
  private final BuiltCase built = plan.cases().getFirst();
  private final Drafter drafter = Drafter.of(plan.job(), 175, 220);

  @Test
  void theFrontShowsEveryShelfWhereItIs() {
    Drawing front = new CaseViews(drafter, built).front();
    for (Part part : built.parts()) {
      if (part.role() == Role.SHELF) {
        assertThat(group(front, part.mark() + ", ")).isEqualTo(withStrip(front, part));
      }
    }
  }

  /** The sample's strips are 1 1/4 in tall, tops flush with the shelf's upper face. */
  private static Box withStrip(Drawing drawing, Part part) {
    Box shelf = onPaper(drawing, part);
    double strip = drawing.scale().toPaper(SampleJobs.in("1 1/4").mm());
    return rounded(new Box(shelf.left(), shelf.top() - strip, shelf.right(), shelf.top()));
  }

  /** What stands at the right are the heights that a maker can use, and they add up. */
  @Test
  void clearHeightsLieBetweenTheShelvesAsTheyLie() {
    List<Length> heights = new ArrayList<>();
    Length from = built.bays().getLast().clear().low().z();
    for (String mark : List.of("3-S1", "3-F1", "3-S2", "3-S3")) {
      Part shelf = built.part(mark);
      Length high = shelf.box().high().z();
      heights.add(
          mark.contains("F")
              ? shelf.box().low().z().minus(from)
              : high.minus(SampleJobs.in("1 1/4")).minus(from));
      from = high;
    }
    List<String> words = words(new CaseViews(drafter, built).front());
    assertThat(heights).allMatch(Length::isPositive);
    heights.forEach(h -> assertThat(words).contains(Fractions.set(plan.job().style().number(h))));
  }

  @Test
  void theFaceFrameIsDrawnWithEveryMember() {
    BuiltCase framed = framed();
    assertThat(new FrameMeasures(framed).members())
        .extracting(Part::mark)
        .contains("FL", "FR", "FT");
    List<String> words = words(new FaceFrameView(drafter, framed).draw());
    assertThat(words).contains("FL", "FR", "FM1", "FT", "FB", "60", "84", Fractions.set("58 1/4"));
  }

  /** Members of the frame keep clear of the room that is shown for doors. */
  @Test
  void doorsAreDashedInTheirOpenings() {
    BuiltCase framed = framed();
    assertThat(DoorLeaf.of(framed)).hasSize(6);
    for (Part member : new FrameMeasures(framed).members()) {
      for (fourpin.casework.Box room :
          DoorLeaf.of(framed).stream().map(DoorLeaf::opening).toList()) {
        Box seen = new Projection(Face.FRONT).box(room);
        assertThat(seen.overlaps(new Projection(Face.FRONT).box(member.box()))).isFalse();
      }
    }
    assertThat(words(new CaseViews(drafter, framed).front()))
        .contains("doors: room only, not planned");
    assertThat(DoorLeaf.of(built)).isEmpty();
  }

  private static BuiltCase framed() {
    return Planner.plan(SampleJobs.framed()).cases().getFirst();
  }

  private static Box group(Drawing drawing, String prefix) {
    return drawing.marks().stream()
        .flatMap(
            m ->
                m instanceof Mark.Group g && g.title().startsWith(prefix)
                    ? Stream.of(g)
                    : Stream.empty())
        .findFirst()
        .map(Mark.Group::extent)
        .map(box -> box.grown(-Pen.EDGE.width() / 2))
        .map(CaseViewsTest::rounded)
        .orElseThrow();
  }

  private static Box onPaper(Drawing drawing, Part part) {
    return rounded(
        new Box(
            drawing.scale().toPaper(part.box().low().x().mm()),
            drawing.scale().toPaper(part.box().low().z().mm()),
            drawing.scale().toPaper(part.box().high().x().mm()),
            drawing.scale().toPaper(part.box().high().z().mm())));
  }

  private static Box rounded(Box box) {
    return new Box(round(box.left()), round(box.bottom()), round(box.right()), round(box.top()));
  }

  private static double round(double value) {
    return Math.round(value * 1e4) / 1e4;
  }

  @Test
  void theFrontStatesWidthHeightBaysAndShelves() {
    List<String> words = words(new CaseViews(drafter, built).front());
    assertThat(words).contains("60", "84", "bay 1", "bay 3", "1-S1", "3-S3", "0");
    assertThat(words)
        .contains(
            Fractions.set(
                plan.job()
                    .style()
                    .number(built.bays().getFirst().clear().size(fourpin.casework.Axis.X))));
  }

  @Test
  void sideAndTopStateTheDepth() {
    CaseViews views = new CaseViews(drafter, built);
    assertThat(words(views.side())).contains("12", "84", "FRONT");
    assertThat(words(views.top())).contains("12", "60", "FRONT");
  }

  @Test
  void everyViewSaysNotToMeasureItAndItsScale() {
    CaseViews views = new CaseViews(drafter, built);
    for (Drawing drawing :
        List.of(
            views.front(),
            views.side(),
            views.top(),
            views.places(List.of()),
            Picture.of(drafter, "all", plan.cases()))) {
      assertThat(words(drawing))
          .anyMatch(
              w -> w.startsWith("DRAWING, DO NOT MEASURE · scale " + drawing.scale().label()));
      assertThat(drawing.fits(175, 220)).isTrue();
    }
  }

  @Test
  void aFlagFramesItsSpot() {
    Part shelf = built.part("1-S1");
    Drawing places = new CaseViews(drafter, built).places(List.of(new Flag("F1", shelf.box())));
    Box frame =
        Mark.flattened(places.marks()).stream()
            .filter(m -> m instanceof Mark.Path p && p.pen() == Pen.FLAG)
            .map(Mark::extent)
            .findFirst()
            .orElseThrow();
    assertThat(frame.contains(onPaper(places, shelf))).isTrue();
    assertThat(words(places)).contains("F1");
  }

  @Test
  void everyPartOfALayoutIsNamedOnIt() {
    for (MaterialPlan material : plan.materials()) {
      for (MaterialPlan.StockLayout layout : material.layouts()) {
        for (SheetPattern pattern : layout.layout().patterns()) {
          Drawing drawing = new LayoutView(drafter, pattern, 1, layout.title(), Map.of()).draw();
          long named = words(drawing).stream().filter(w -> w.matches("\\d+( [a-z ,]+)?")).count();
          assertThat(named).isGreaterThanOrEqualTo(pattern.parts().size());
        }
      }
    }
  }

  /** Narrow strips are where names would run over each other and over the edges of their part. */
  @Test
  void namesOnLayoutsAreLegibleAndKeepApart() {
    int small = 0;
    for (MaterialPlan material : plan.materials()) {
      for (MaterialPlan.StockLayout layout : material.layouts()) {
        for (SheetPattern pattern : layout.layout().patterns()) {
          Drawing drawing = new LayoutView(drafter, pattern, 1, layout.title(), Map.of()).draw();
          List<Mark.Text> texts =
              Mark.flattened(drawing.marks()).stream()
                  .flatMap(m -> m instanceof Mark.Text t ? Stream.of(t) : Stream.empty())
                  .toList();
          small += pattern.parts().size();
          assertThat(texts).allMatch(t -> t.lettering().size() * 72 / 25.4 >= 7);
          for (int i = 0; i < texts.size(); i++) {
            for (int j = 0; j < i; j++) {
              assertThat(inked(texts.get(i)).overlaps(inked(texts.get(j))))
                  .as("%s on %s", texts.get(i), texts.get(j))
                  .isFalse();
            }
          }
        }
      }
    }
    assertThat(small).isGreaterThan(20);
  }

  /** A line of text without the room over its capitals. */
  private static Box inked(Mark.Text text) {
    return text.extent().grown(-0.12 * text.lettering().size());
  }

  private static List<String> words(Drawing drawing) {
    return Mark.flattened(drawing.marks()).stream()
        .flatMap(m -> m instanceof Mark.Text t ? Stream.of(t.lettering().words()) : Stream.empty())
        .toList();
  }
}
