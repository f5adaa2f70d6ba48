package fourpin.sheets.drawings;

import fourpin.boring.way.Guide;
import fourpin.boring.way.Guide.GuideHole;
import fourpin.boring.way.Guide.Use;
import fourpin.measure.Length;
import fourpin.sheets.paint.Box;
import fourpin.sheets.paint.Dimensions;
import fourpin.sheets.paint.Dimensions.Span;
import fourpin.sheets.paint.Drawing;
import fourpin.sheets.paint.Fill;
import fourpin.sheets.paint.Lettering;
import fourpin.sheets.paint.Pen;
import fourpin.sheets.paint.Point;
import fourpin.sheets.paint.Scale;
import fourpin.sheets.paint.Side;
import fourpin.sheets.paint.Sketch;
import java.util.List;
import java.util.stream.Stream;

/**
 * A whole guide to scale, its side A towards the viewer, the stop block down and the front edge at
 * the right: every hole with its number, those that are masked crossed out. Rows, pitch, block and
 * thickness are dimensioned by {@link GuideEndView}.
 */
public final class GuideView {

  private static final double ASIDE = 0.7;
  private static final double LINE = 4;

  private final Drafter drafter;
  private final Guide guide;
  private final GuidePlace place;

  public GuideView(Drafter drafter, Guide guide) {
    this.drafter = drafter;
    this.guide = guide;
    this.place = GuidePlace.sideA(guide);
  }

  public Drawing draw() {
    return drafter.fill(place.body().with(place.block()), this::draw);
  }

  private Drawing draw(Scale scale) {
    Sketch sketch = new Sketch(scale);
    sketch.rectangle(place.body(), Pen.OUTLINE, Fill.WHITE);
    place.drawBlock(sketch);
    place.columns().forEach(c -> sketch.line(c.left(), c.bottom(), c.right(), c.top(), Pen.CENTRE));
    guide.holes().forEach(hole -> hole(sketch, hole));
    numbers(sketch);
    dimensions(sketch);
    words(sketch);
    return Drawing.toScale(
        Drafter.name("guide", guide.mark()),
        guide.mark() + ", " + guide.material(),
        description(),
        scale,
        drafter.note(),
        sketch.marks());
  }

  private String description() {
    long masked = guide.holes().stream().filter(h -> h.use() == Use.MASKED).count();
    return guide.holes().size()
        + " holes, numbered from the stop block"
        + (masked == 0 ? "" : "; " + masked + " of them masked")
        + ". "
        + drafter.number(guide.length())
        + " long, "
        + drafter.number(guide.width())
        + " wide, "
        + drafter.number(guide.thickness())
        + " thick.";
  }

  private void hole(Sketch sketch, GuideHole hole) {
    sketch.circle(place.u(hole), place.v(hole), hole.diameter().mm(), Pen.EDGE, Fill.WHITE);
    if (hole.use() == Use.MASKED) {
      place.crossOut(sketch, hole);
    }
  }

  /** Of holes that are used: by turns on both sides of one column, else on the right of each. */
  private void numbers(Sketch sketch) {
    List<GuideHole> used = guide.holes().stream().filter(h -> h.use() != Use.MASKED).toList();
    List<Double> heights = used.stream().map(h -> sketch.scale().toPaper(place.v(h))).toList();
    boolean single = place.columns().size() == 1;
    Thinned shown = single ? Thinned.onTwoSides(heights) : Thinned.of(heights);
    for (int i = 0; i < used.size(); i++) {
      if (shown.shows(i)) {
        boolean left = single && (i / shown.every()) % 2 == 1;
        number(sketch, used.get(i), left ? Side.LEFT : Side.RIGHT);
      }
    }
  }

  /** Beside the hole where that is inside the guide, else beside the guide. */
  private void number(Sketch sketch, GuideHole hole, Side side) {
    Box body = sketch.onPaper(place.body());
    Lettering words = Drafter.label(Integer.toString(hole.number()));
    Point centre = sketch.point(place.u(hole), place.v(hole));
    double hand = side == Side.LEFT ? -1 : 1;
    double off = sketch.scale().toPaper(hole.diameter().mm()) / 2 + ASIDE;
    double edge = side == Side.LEFT ? body.left() : body.right();
    boolean inside = off + words.width() + ASIDE <= Math.abs(edge - centre.x());
    double x = inside ? centre.x() + hand * off : edge + hand * ASIDE;
    Lettering.Align align = side == Side.LEFT ? Lettering.Align.END : Lettering.Align.START;
    sketch.add(words.with(align, Lettering.Seat.MIDDLE).at(new Point(x, centre.y())));
  }

  /** First and last hole and the length; the rest stands at the block's end, drawn larger. */
  private void dimensions(Sketch sketch) {
    List<Span> spans =
        Stream.of(guide.holes().getFirst().along(), guide.holes().getLast().along(), guide.length())
            .distinct()
            .filter(Length::isPositive)
            .map(to -> new Span(0, sketch.scale().toPaper(to.mm()), drafter.number(to)))
            .toList();
    sketch.addAll(Dimensions.beside(Side.LEFT, sketch.extent().left(), spans));
  }

  private void words(Sketch sketch) {
    Box end = sketch.onPaper(place.body().with(place.block()));
    Point below = new Point(end.centre().x(), end.bottom() - LINE / 2);
    String stop = guide.block().isPositive() ? "STOP BLOCK, THIS END DOWN ↓" : "THIS END DOWN ↓";
    sketch.add(Drafter.label(stop).with(Lettering.Align.MIDDLE, Lettering.Seat.TOP).at(below));
    sketch.add(
        Drafter.label("← BACK EDGE")
            .with(Lettering.Align.END, Lettering.Seat.TOP)
            .at(below.moved(-1, -LINE)));
    sketch.add(
        Drafter.label("FRONT EDGE →")
            .with(Lettering.Align.START, Lettering.Seat.TOP)
            .at(below.moved(1, -LINE)));
  }
}
