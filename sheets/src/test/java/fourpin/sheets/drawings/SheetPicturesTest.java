package fourpin.sheets.drawings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fourpin.casework.BuiltCase;
import fourpin.casework.Face;
import fourpin.casework.Feature.Hole;
import fourpin.casework.Part;
import fourpin.measure.Length;
import fourpin.plan.CleatBlank;
import fourpin.plan.Plan;
import fourpin.plan.Planner;
import fourpin.sheets.SampleJobs;
import fourpin.sheets.paint.Box;
import fourpin.sheets.paint.Drawing;
import fourpin.sheets.paint.Fill;
import fourpin.sheets.paint.Fractions;
import fourpin.sheets.paint.Mark;
import fourpin.sheets.paint.Pen;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Pictures of drilling sheets that are not of one panel under a guide. */
class SheetPicturesTest {

  private static final double CLOSE = 0.05;

  private final Plan plan = Planner.plan(SampleJobs.readingRoom());
  private final BuiltCase built = plan.cases().getFirst();
  private final Drafter drafter = Drafter.of(plan.job(), 110, 190);

  /** Seen with its lower end below, a panel whose right face is up has its front at the left. */
  @Test
  void uprightsMeetWithTheirFrontEdges() {
    Part left = built.part("L");
    Part right = built.part("R");
    int lines = heights(left).size();
    Length gap = SampleJobs.in("1/2");
    Drawing drawing =
        new PairView(
                drafter,
                built,
                List.of(
                    new PairView.Laid(left, Face.RIGHT, gap),
                    new PairView.Laid(right, Face.LEFT, gap)),
                IntStream.rangeClosed(1, lines).boxed().toList())
            .draw();
    assertThat(text(drawing, "R").extent().right()).isNegative();
    assertThat(text(drawing, "L").extent().left()).isPositive();
    assertThat(text(drawing, "FRONT →").extent().right()).isNegative();
    assertThat(text(drawing, "← FRONT").extent().left()).isPositive();
    List<Box> across =
        paths(drawing)
            .filter(p -> p.pen() == Pen.DIMENSION && p.points().size() == 2)
            .map(p -> Box.round(p.points()))
            .filter(b -> b.height() == 0)
            .toList();
    double wide = drawing.scale().toPaper(left.width().total().mm());
    assertThat(across).hasSize(lines).allMatch(b -> Math.abs(b.width() - 2 * wide) < CLOSE);
    Length first = heights(left).getFirst().plus(gap);
    assertThat(across.getFirst().top())
        .isCloseTo(drawing.scale().toPaper(first.mm()), within(CLOSE));
    assertThat(words(drawing))
        .contains("STOP", "1", Fractions.set(plan.job().style().number(first)));
    assertThat(paths(drawing).filter(p -> p.fill() == Fill.CROSS_HATCH)).as("spacers").hasSize(2);
  }

  /** On the drill press each row is as far from its fence as the picture says. */
  @Test
  void fencesLieAlongTheEdgesThatTheyAreSetFrom() {
    Part part = built.part("L");
    RowsView.Fence front = new RowsView.Fence(Face.FRONT, SampleJobs.in("1 1/2"));
    RowsView.Fence back = new RowsView.Fence(Face.BACK, SampleJobs.in("2 7/16"));
    List<Integer> marks = IntStream.rangeClosed(1, heights(part).size()).boxed().toList();
    Drawing drawing =
        new RowsView(
                drafter,
                built,
                part,
                Face.RIGHT,
                new RowsView.Aid.Stick(marks, List.of(front, back)))
            .draw();
    List<Box> fences =
        paths(drawing).filter(p -> p.fill() == Fill.HATCH).map(p -> Box.round(p.points())).toList();
    double left = drawing.scale().toPaper(part.box().at(Face.FRONT).mm());
    double right = drawing.scale().toPaper(part.box().at(Face.BACK).mm());
    assertThat(fences.getFirst().right()).isCloseTo(left, within(CLOSE));
    assertThat(fences.getLast().left()).isCloseTo(right, within(CLOSE));
    assertThat(words(drawing)).contains("FENCE", Fractions.set("1 1/2"), Fractions.set("2 7/16"));
  }

  @ParameterizedTest
  @EnumSource
  void blanksShowTheirHolesTheStickAndTheLineOfTheRip(BlankView.Lie lie) {
    Plan onCleats = Planner.plan(SampleJobs.onCleats());
    BuiltCase cased = onCleats.cases().getFirst();
    List<CleatBlank> blanks = CleatBlank.of(cased);
    assertThat(blanks).hasSize(2);
    int holes = heights(blanks.getFirst().wood()).size();
    List<Integer> marks = IntStream.rangeClosed(1, holes).boxed().toList();
    Drawing drawing = new BlankView(drafter, cased, blanks, lie, marks).draw();
    int seen = lie == BlankView.Lie.STACKED ? 1 : 2;
    assertThat(circles(drawing).filter(c -> c.fill() == Fill.TINT)).hasSize(seen * holes);
    assertThat(paths(drawing).filter(p -> p.pen() == Pen.CENTRE)).as("rips").hasSize(seen);
    assertThat(words(drawing))
        .contains("1-LF+1-LB", "TOP", "← FRONT", "1", Integer.toString(holes))
        .contains(lie == BlankView.Lie.STACKED ? "under it 1-RF+1-RB" : "1-RF+1-RB");
  }

  /** Two strips of 1 1/2 in and a saw cut of 1/8 in, so that the holes lie at 1 9/16 in. */
  @Test
  void theSawCutGoesThroughTheMiddleOfTheHoles() {
    BuiltCase cased = Planner.plan(SampleJobs.onCleats()).cases().getFirst();
    Drawing drawing =
        new BlankRipView(
                Drafter.of(SampleJobs.onCleats(), 90, 75), cased, CleatBlank.of(cased).getFirst())
            .draw();
    Box kerf =
        paths(drawing)
            .filter(p -> p.fill() == Fill.CROSS_HATCH)
            .map(p -> Box.round(p.points()))
            .findFirst()
            .orElseThrow();
    Mark.Circle hole = circles(drawing).findFirst().orElseThrow();
    assertThat(kerf.centre().x()).isCloseTo(hole.centre().x(), within(CLOSE));
    assertThat(kerf.width()).isCloseTo(drawing.scale().toPaper(25.4 / 8), within(CLOSE));
    assertThat(words(drawing))
        .contains("1-LF", "1-LB")
        .contains(Fractions.set("1 1/2"), Fractions.set("1/8"), Fractions.set("1 9/16"));
  }

  private static List<Length> heights(Part part) {
    Length end = part.box().at(Face.BOTTOM);
    return part.features().stream()
        .flatMap(f -> f instanceof Hole h ? Stream.of(h) : Stream.empty())
        .filter(h -> h.use() == Hole.Use.SUPPORT)
        .map(h -> h.centre().z().minus(end))
        .distinct()
        .sorted()
        .toList();
  }

  private static Stream<Mark.Path> paths(Drawing drawing) {
    return Mark.flattened(drawing.marks()).stream()
        .flatMap(m -> m instanceof Mark.Path p ? Stream.of(p) : Stream.empty());
  }

  private static Stream<Mark.Circle> circles(Drawing drawing) {
    return Mark.flattened(drawing.marks()).stream()
        .flatMap(m -> m instanceof Mark.Circle c ? Stream.of(c) : Stream.empty());
  }

  private static Mark.Text text(Drawing drawing, String words) {
    return Mark.flattened(drawing.marks()).stream()
        .flatMap(m -> m instanceof Mark.Text t ? Stream.of(t) : Stream.empty())
        .filter(t -> t.lettering().words().equals(words))
        .findFirst()
        .orElseThrow();
  }

  private static List<String> words(Drawing drawing) {
    return Mark.flattened(drawing.marks()).stream()
        .flatMap(m -> m instanceof Mark.Text t ? Stream.of(t.lettering().words()) : Stream.empty())
        .toList();
  }
}
