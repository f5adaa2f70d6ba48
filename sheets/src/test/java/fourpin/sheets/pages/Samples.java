package fourpin.sheets.pages;

import fourpin.sheets.paint.Box;
import fourpin.sheets.paint.Dimensions;
import fourpin.sheets.paint.Drawing;
import fourpin.sheets.paint.Fill;
import fourpin.sheets.paint.Labels;
import fourpin.sheets.paint.Lettering;
import fourpin.sheets.paint.Pen;
import fourpin.sheets.paint.Point;
import fourpin.sheets.paint.RunningDimensions;
import fourpin.sheets.paint.Scale;
import fourpin.sheets.paint.Side;
import fourpin.sheets.paint.Sketch;
import fourpin.sheets.paint.Typeface;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** A booklet that uses every block, for the tests of this package. */
final class Samples {

  /** Centres of the drawn holes in millimetres of the panel. */
  static final List<Point> HOLES =
      IntStream.range(0, 40)
          .mapToObj(i -> new Point(i % 2 == 0 ? 37 : 263, 96 + 32 * (i / 2)))
          .toList();

  static final double HOLE_DIAMETER = 5;

  private Samples() {}

  static Drawing panel() {
    return Scale.largestFitting(Scale.METRIC, new Box(0, 0, 300, 800), 160, 150, Samples::panel);
  }

  static Drawing panel(Scale scale) {
    Sketch sketch = new Sketch(scale);
    sketch.rectangle(new Box(0, 0, 300, 800), Pen.OUTLINE, Fill.WHITE);
    sketch.rectangle(new Box(0, 0, 300, 19), Pen.EDGE, Fill.HATCH);
    sketch.rectangle(new Box(290, 0, 300, 800), Pen.HIDDEN, Fill.NONE);
    sketch.group(
        "Holes",
        holes ->
            HOLES.forEach(h -> holes.circle(h.x(), h.y(), HOLE_DIAMETER, Pen.EDGE, Fill.WHITE)));
    sketch.line(37, 60, 37, 740, Pen.CENTRE);
    Box work = sketch.onPaper(new Box(0, 0, 300, 800));
    sketch.addAll(RunningDimensions.beside(Side.LEFT, work.left(), work.bottom(), stations(scale)));
    sketch.addAll(
        Dimensions.beside(
            Side.BELOW,
            work.bottom(),
            List.of(
                span(scale, 0, 37, "37"),
                span(scale, 37, 263, "226"),
                span(scale, 263, 300, "37"),
                span(scale, 0, 300, "300"),
                span(scale, 290, 300, "10"))));
    sketch.addAll(
        Dimensions.beside(
            Side.RIGHT,
            work.right(),
            List.of(span(scale, 0, 800, "800"), span(scale, 0, 19, "19"))));
    Labels labels = new Labels();
    sketch.addAll(labels.on(sketch.point(150, 400), Lettering.of("A1 inside", Typeface.BOLD, 3.5)));
    sketch.addAll(
        labels.near(sketch.point(150, 9), Lettering.of("dado 19 x 6", Typeface.REGULAR, 2.8)));
    return Drawing.toScale(
        "panel-a1", "Panel A1 from inside", "Two rows of 20 holes.", scale, sketch.marks());
  }

  private static Dimensions.Span span(Scale scale, double from, double to, String label) {
    return new Dimensions.Span(scale.toPaper(from), scale.toPaper(to), label);
  }

  private static List<RunningDimensions.Station> stations(Scale scale) {
    List<RunningDimensions.Station> stations = new ArrayList<>();
    for (int i = 0; i < HOLES.size(); i += 2) {
      double y = HOLES.get(i).y();
      stations.add(new RunningDimensions.Station(scale.toPaper(y), Long.toString(Math.round(y))));
    }
    return stations;
  }

  /** Of one block alone. */
  static Booklet one(Block block) {
    return new Booklet(
        "T",
        "",
        "job",
        "1",
        Optional.empty(),
        Paper.A4,
        List.of(new Booklet.Section("S", List.of(block))));
  }

  static Booklet booklet(Paper paper) {
    return new Booklet(
        "Reading room bookcases",
        "Two cases for the village hall at Harrow Mill, 31 1/2 in wide and 15/64 in thin",
        "Reading room <&> \"Harrow Mill\"",
        "3",
        Optional.empty(),
        paper,
        List.of(
            new Booklet.Section(
                "What to know first",
                List.of(
                    Block.Paragraph.of(
                        "Every length here is in inches, 5⁄8 and 1/2 as fractions; Ø 5 mm, 90°, ≈ 3 ×. "
                            .repeat(6)),
                    new Block.Bullets(
                        List.of(
                            Prose.bold("First. ").then(Prose.plain("word ".repeat(60))),
                            Prose.plain("Second."))),
                    callout(Block.Sign.CAUTION),
                    callout(Block.Sign.ERROR),
                    callout(Block.Sign.WARNING),
                    callout(Block.Sign.NOTE),
                    new Block.NewPage(),
                    new Block.Heading("Contents"),
                    new Block.Contents())),
            new Booklet.Section(
                "Drawings",
                List.of(
                    new Block.Heading("Panel A1"),
                    new Block.Figure(panel(), "Panel A1, seen from inside the case."),
                    Block.Paragraph.of("After the drawing."))),
            new Booklet.Section("Cut list", List.of(table(70))),
            new Booklet.Section("Steps", List.of(steps()))));
  }

  private static Block callout(Block.Sign sign) {
    return new Block.Callout(
        sign,
        "A " + sign,
        List.of(
            Prose.plain("Keep both hands away from the blade. ".repeat(4)), Prose.plain("Again.")));
  }

  static Table table(int rows) {
    return new Table(
        List.of(
            Table.left("Mark"),
            Table.left("Part"),
            Table.right("Length"),
            Table.right("Width"),
            Table.left("Note")),
        IntStream.rangeClosed(1, rows)
            .mapToObj(
                i ->
                    i == rows
                        ? Table.sum("", "Sum", "1234", "", "")
                        : Table.row(
                            "P" + i,
                            "Shelf of plywood",
                            i + " 3/4",
                            "11 7/8",
                            i % 7 == 0 ? "long words here ".repeat(9) : "cut now"))
            .toList());
  }

  private static Block steps() {
    return new Block.Steps(
        IntStream.rangeClosed(1, 12)
            .mapToObj(
                i ->
                    new Block.Step(
                        Integer.toString(i),
                        Prose.plain("Rip the sheet to 11 7/8 in. ".repeat(3)),
                        i % 3 == 0 ? List.of(callout(Block.Sign.CAUTION)) : List.of()))
            .toList());
  }
}
