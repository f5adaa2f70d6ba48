package fourpin.sheets.drawings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fourpin.boring.way.Guide;
import fourpin.boring.way.Guide.GuideHole;
import fourpin.measure.Length;
import fourpin.measure.LengthStyle;
import fourpin.sheets.SampleJobs;
import fourpin.sheets.paint.Box;
import fourpin.sheets.paint.Drawing;
import fourpin.sheets.paint.Fill;
import fourpin.sheets.paint.Fractions;
import fourpin.sheets.paint.Mark;
import fourpin.sheets.paint.Pen;
import fourpin.sheets.paint.SvgWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class GuideViewTest {

  private static final double CLOSE = 0.05;

  /** Of a usual case, of a doll's house, and as long as a sheet. */
  static Stream<Guide> guides() {
    return Stream.of(
        guide("usual", in("38"), in("4"), in("2"), in("1 1/4"), 28, in("3/8"), 0),
        guide("doll", mm(120), mm(20), mm(10), mm(8), 13, mm(3), 0),
        guide("long", mm(2400), mm(80), mm(50), mm(25), 90, mm(10), 2));
  }

  private static Guide guide(
      String mark,
      Length length,
      Length width,
      Length first,
      Length pitch,
      int count,
      Length diameter,
      int maskedEvery) {
    List<GuideHole> holes =
        IntStream.rangeClosed(1, count)
            .mapToObj(
                n ->
                    new GuideHole(
                        n,
                        first.plus(pitch.times(n - 1)),
                        width.over(4),
                        diameter,
                        maskedEvery > 0 && n % maskedEvery == 0
                            ? Guide.Use.MASKED
                            : Guide.Use.BORED))
            .toList();
    return new Guide(
        mark,
        new Guide.Make.Bored("offcut"),
        "MDF",
        length,
        width,
        in("1/4"),
        holes,
        width.over(5));
  }

  private static Length in(String inches) {
    return SampleJobs.in(inches);
  }

  private static Length mm(long count) {
    return Length.mm(count);
  }

  private static Drafter drafter() {
    return new Drafter(LengthStyle.FRACTIONS, 80, 225);
  }

  /** Distances are taken from the drawn outline: its lower end is the stop face of the block. */
  @ParameterizedTest
  @MethodSource("guides")
  void holesLieAtTheirDistancesFromBlockAndFrontEdge(Guide guide) {
    Drawing drawing = new GuideView(drafter(), guide).draw();
    Box body = largest(drawing);
    List<Mark.Circle> drawn = circles(drawing);
    assertThat(drawn).hasSameSizeAs(guide.holes());
    for (int i = 0; i < drawn.size(); i++) {
      GuideHole hole = guide.holes().get(i);
      assertThat(drawn.get(i).centre().y() - body.bottom())
          .isCloseTo(drawing.scale().toPaper(hole.along().mm()), within(CLOSE));
      assertThat(body.right() - drawn.get(i).centre().x())
          .isCloseTo(drawing.scale().toPaper(hole.across().mm()), within(CLOSE));
    }
  }

  @ParameterizedTest
  @MethodSource("guides")
  void everyHoleThatIsUsedIsNumberedAndNoWordsMeet(Guide guide) {
    Drawing drawing = new GuideView(drafter(), guide).draw();
    List<String> words = words(drawing);
    for (GuideHole hole : guide.holes()) {
      boolean used = hole.use() != Guide.Use.MASKED;
      assertThat(words.contains(Integer.toString(hole.number()))).isEqualTo(used);
    }
    assertApart(drawing);
    assertThat(drawing.fits(80, 225)).isTrue();
  }

  @ParameterizedTest
  @MethodSource("guides")
  void maskedHolesAndOnlyTheyAreCrossedOut(Guide guide) {
    Drawing drawing = new GuideView(drafter(), guide).draw();
    List<Box> crosses =
        paths(drawing)
            .filter(p -> p.pen() == Pen.EDGE && p.points().size() == 2)
            .map(p -> Box.round(p.points()))
            .filter(b -> b.width() > 0 && Math.abs(b.width() - b.height()) < 1e-6)
            .toList();
    for (int i = 0; i < guide.holes().size(); i++) {
      Box centre = Box.round(List.of(circles(drawing).get(i).centre()));
      boolean masked = guide.holes().get(i).use() == Guide.Use.MASKED;
      assertThat(crosses.stream().filter(c -> c.contains(centre)).count())
          .as("hole %s", i + 1)
          .isEqualTo(masked ? 2 : 0);
    }
  }

  @Test
  void sizesAndDirectionsAreWritten() {
    Guide guide = guides().findFirst().orElseThrow();
    List<String> words = words(new GuideView(drafter(), guide).draw());
    assertThat(words)
        .contains("38", "2", Fractions.set("35 3/4"))
        .contains("STOP BLOCK, THIS END DOWN ↓", "← BACK EDGE", "FRONT EDGE →");
  }

  @ParameterizedTest
  @MethodSource("guides")
  void theEndIsFullyDimensioned(Guide guide) {
    Drafter drafter = drafter().wide(95).high(65);
    Drawing drawing = new GuideEndView(drafter, guide).draw();
    assertThat(words(drawing))
        .contains(
            number(guide.thickness()),
            number(guide.block()),
            number(guide.width()),
            number(guide.width().over(4)),
            number(guide.width().minus(guide.width().over(4))),
            number(guide.holes().getFirst().along()),
            number(guide.holes().get(1).along().minus(guide.holes().getFirst().along())),
            Fractions.set(
                "side A · holes Ø "
                    + LengthStyle.FRACTIONS.diameterNumber(guide.holes().getFirst().diameter())));
    assertThat(drawing.fits(95, 65)).isTrue();
    assertApart(drawing);
    assertThat(SvgWriter.write(drawing)).contains("DRAWING, DO NOT MEASURE · scale 1:");
  }

  /**
   * Seen on its front edge a guide has a batten beyond either side, to be turned over with both.
   */
  @ParameterizedTest
  @MethodSource("guides")
  void theBlockStandsProudOfBothSides(Guide guide) {
    Drawing drawing = new GuideEndView(drafter().wide(95).high(65), guide).draw();
    List<Box> battens = beside(drawing);
    assertThat(battens).hasSize(guide.block().isPositive() ? 2 : 0);
    if (battens.size() == 2) {
      double a = label(drawing, "A").right();
      double b = label(drawing, "B").left();
      assertThat(battens).anyMatch(batten -> batten.left() < a && batten.right() > a);
      assertThat(battens).anyMatch(batten -> batten.left() < b && batten.right() > b);
    }
  }

  private static Box label(Drawing drawing, String words) {
    return texts(drawing)
        .filter(t -> t.lettering().words().equals(words))
        .findFirst()
        .orElseThrow()
        .extent();
  }

  /** Hatched, left of the view from above. */
  private static List<Box> beside(Drawing drawing) {
    return paths(drawing)
        .filter(p -> p.fill() == Fill.HATCH)
        .map(p -> Box.round(p.points()))
        .filter(box -> box.right() < 0)
        .toList();
  }

  /** A strip of one hole has no pitch, and nothing to break its end at but the hole. */
  @Test
  void aGuideOfOneHoleIsDrawn() {
    Guide guide = guide("one", mm(200), mm(40), mm(100), mm(10), 1, mm(5), 0);
    assertThat(words(new GuideView(drafter(), guide).draw())).contains("1");
    assertThat(new GuideEndView(drafter(), guide).draw().marks()).isNotEmpty();
  }

  private static String number(Length length) {
    return Fractions.set(LengthStyle.FRACTIONS.number(length));
  }

  private static void assertApart(Drawing drawing) {
    List<Box> boxes = new ArrayList<>(texts(drawing).map(GuideViewTest::inked).toList());
    for (int i = 0; i < boxes.size(); i++) {
      for (int j = 0; j < i; j++) {
        assertThat(boxes.get(i).overlaps(boxes.get(j)))
            .as("%s on %s", texts(drawing).toList().get(i), texts(drawing).toList().get(j))
            .isFalse();
      }
    }
  }

  /** A line of text without the room over its capitals. */
  private static Box inked(Mark.Text text) {
    return text.extent().grown(-0.12 * text.lettering().size());
  }

  private static Box largest(Drawing drawing) {
    return paths(drawing)
        .map(p -> Box.round(p.points()))
        .max(java.util.Comparator.comparingDouble(b -> b.width() * b.height()))
        .orElseThrow();
  }

  private static List<Mark.Circle> circles(Drawing drawing) {
    return Mark.flattened(drawing.marks()).stream()
        .flatMap(m -> m instanceof Mark.Circle c ? Stream.of(c) : Stream.empty())
        .toList();
  }

  private static Stream<Mark.Path> paths(Drawing drawing) {
    return Mark.flattened(drawing.marks()).stream()
        .flatMap(m -> m instanceof Mark.Path p ? Stream.of(p) : Stream.empty());
  }

  private static Stream<Mark.Text> texts(Drawing drawing) {
    return Mark.flattened(drawing.marks()).stream()
        .flatMap(m -> m instanceof Mark.Text t ? Stream.of(t) : Stream.empty());
  }

  private static List<String> words(Drawing drawing) {
    return texts(drawing).map(t -> t.lettering().words()).toList();
  }
}
