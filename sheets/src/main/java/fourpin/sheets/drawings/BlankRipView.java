package fourpin.sheets.drawings;

import fourpin.casework.Axis;
import fourpin.casework.BuiltCase;
import fourpin.casework.Feature.Hole;
import fourpin.measure.Length;
import fourpin.plan.CleatBlank;
import fourpin.sheets.drawings.Projection.Edge;
import fourpin.sheets.paint.Box;
import fourpin.sheets.paint.Dimensions;
import fourpin.sheets.paint.Dimensions.Span;
import fourpin.sheets.paint.Drawing;
import fourpin.sheets.paint.Fill;
import fourpin.sheets.paint.Lettering;
import fourpin.sheets.paint.Mark;
import fourpin.sheets.paint.Pen;
import fourpin.sheets.paint.Point;
import fourpin.sheets.paint.Scale;
import fourpin.sheets.paint.Side;
import fourpin.sheets.paint.Sketch;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * A stretch of a blank for cleat strips round its lowest hole, larger than the whole: the strip at
 * the index edge, what the saw takes through the hole, and the strip beyond.
 */
public final class BlankRipView {

  private static final int TEETH = 8;
  private static final double TOOTH = 1;
  private static final double LINE = 4;

  private final Drafter drafter;
  private final BuiltCase built;
  private final CleatBlank blank;
  private final Projection view;
  private final Hole first;

  /**
   * @param blank with holes
   */
  public BlankRipView(Drafter drafter, BuiltCase built, CleatBlank blank) {
    this.drafter = drafter;
    this.built = built;
    this.blank = blank;
    this.first =
        blank.wood().features().stream()
            .flatMap(f -> f instanceof Hole hole ? Stream.of(hole) : Stream.empty())
            .min(Comparator.comparing((Hole h) -> h.centre().z()))
            .orElseThrow();
    this.view = new Projection(first.face());
  }

  public Drawing draw() {
    return drafter.fill(stretch(), this::draw);
  }

  private Drawing draw(Scale scale) {
    Sketch sketch = new Sketch(scale);
    torn(sketch);
    double u = view.u(first.centre());
    sketch.circle(u, view.v(first.centre()), first.diameter().mm(), Pen.OUTLINE, Fill.TINT);
    sketch.rectangle(kerf(), Pen.EDGE, Fill.CROSS_HATCH);
    sketch.line(u, stretch().bottom(), u, stretch().top(), Pen.CENTRE);
    datum(sketch);
    names(sketch);
    sketch.addAll(Dimensions.beside(Side.BELOW, sketch.extent().bottom(), across(sketch)));
    return Drawing.toScale(
        Drafter.name(built.order().name(), blank.wood().mark(), "rip"),
        built.order().name() + ", " + blank.wood().mark() + ", round a hole",
        "The saw cut is cross-hatched: it goes through the middle of every hole.",
        scale,
        drafter.note(),
        sketch.marks());
  }

  /** From one end of it to the other, or as far as the blank goes. */
  private Box stretch() {
    Box box = view.box(blank.wood().box());
    double reach = first.diameter().mm();
    double v = view.v(first.centre());
    return new Box(
        box.left(), Math.max(box.bottom(), v - reach), box.right(), Math.min(box.top(), v + reach));
  }

  /** Both ends torn. */
  private void torn(Sketch sketch) {
    Box work = sketch.onPaper(stretch());
    List<Point> outline = new ArrayList<>();
    for (int i = 0; i <= TEETH; i++) {
      double x = work.left() + i * work.width() / TEETH;
      outline.add(new Point(x, work.bottom() - (i % 2 == 0 ? 0 : TOOTH)));
    }
    for (int i = TEETH; i >= 0; i--) {
      double x = work.left() + i * work.width() / TEETH;
      outline.add(new Point(x, work.top() + (i % 2 == 0 ? 0 : TOOTH)));
    }
    sketch.add(Mark.Path.polygon(outline, Pen.OUTLINE, Fill.WHITE));
  }

  /** Between the two strips. */
  private Box kerf() {
    Box front = view.box(blank.front().box());
    Box all = stretch();
    double width = blank.kerf().mm();
    return frontAtLeft()
        ? new Box(front.right(), all.bottom(), front.right() + width, all.top())
        : new Box(front.left() - width, all.bottom(), front.left(), all.top());
  }

  private boolean frontAtLeft() {
    return view.front() == Edge.LEFT;
  }

  private void datum(Sketch sketch) {
    Box all = stretch();
    double front = frontAtLeft() ? all.left() : all.right();
    sketch.line(front, all.bottom(), front, all.top(), Pen.DATUM);
  }

  /** Each half with its mark, the index edge with what it runs along. */
  private void names(Sketch sketch) {
    Box all = stretch();
    Box kerf = kerf();
    String left = (frontAtLeft() ? blank.front() : blank.back()).mark();
    String right = (frontAtLeft() ? blank.back() : blank.front()).mark();
    name(sketch, left, (all.left() + kerf.left()) / 2);
    name(sketch, right, (kerf.right() + all.right()) / 2);
    Box work = sketch.onPaper(all);
    sketch.add(
        Drafter.label(frontAtLeft() ? "← FRONT, to the fence" : "FRONT, to the fence →")
            .with(Lettering.Align.MIDDLE, Lettering.Seat.BOTTOM)
            .at(new Point(work.centre().x(), work.top() + TOOTH + LINE + 1)));
  }

  private void name(Sketch sketch, String mark, double u) {
    double top = sketch.scale().toPaper(stretch().top());
    sketch.add(
        Drafter.label(mark)
            .with(Lettering.Align.MIDDLE, Lettering.Seat.BOTTOM)
            .at(new Point(sketch.scale().toPaper(u), top + TOOTH + 1)));
  }

  /** The strips and the cut between them; and from the index edge to the holes. */
  private List<Span> across(Sketch sketch) {
    Box all = stretch();
    Box kerf = kerf();
    double u = view.u(first.centre());
    double front = frontAtLeft() ? all.left() : all.right();
    Length toLine = blank.wood().from(Axis.Y, first.centre().y());
    Length strip = blank.front().width().total();
    return List.of(
        span(sketch, all.left(), kerf.left(), strip),
        span(sketch, kerf.left(), kerf.right(), blank.kerf()),
        span(sketch, kerf.right(), all.right(), strip),
        span(sketch, Math.min(front, u), Math.max(front, u), toLine));
  }

  private Span span(Sketch sketch, double from, double to, Length shown) {
    Scale scale = sketch.scale();
    return new Span(scale.toPaper(from), scale.toPaper(to), drafter.number(shown));
  }
}
