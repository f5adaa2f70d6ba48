package fourpin.sheets.drawings;

import fourpin.boring.way.Guide;
import fourpin.boring.way.Guide.GuideHole;
import fourpin.measure.Length;
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
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The block's end of a guide, larger than the whole: from above on its side A, and at the left of
 * that its front edge, side A at the left of it, which shows the thickness and that the block
 * stands proud of both sides.
 */
public final class GuideEndView {

  private static final int HOLES = 2;

  /** Between the two views, on paper. */
  private static final double APART = 14;

  private static final int TEETH = 6;
  private static final double TOOTH = 1;

  /** Of what is left out, on paper. */
  private static final double GAP = 2;

  private final Drafter drafter;
  private final Guide guide;
  private final GuidePlace place;

  public GuideEndView(Drafter drafter, Guide guide) {
    this.drafter = drafter;
    this.guide = guide;
    this.place = GuidePlace.sideA(guide);
  }

  public Drawing draw() {
    return drafter.fill(top().with(place.block()), this::draw);
  }

  private Drawing draw(Scale scale) {
    Sketch sketch = new Sketch(scale);
    broken(sketch, top());
    place.drawBlock(sketch);
    broken(sketch, edge(scale));
    battens(sketch);
    shown().forEach(hole -> hole(sketch, hole));
    dimensions(sketch);
    words(sketch);
    return Drawing.toScale(
        Drafter.name("guide", guide.mark(), "end"),
        "Block's end of " + guide.mark(),
        "The stop block, the first holes, and at the left the guide from its front edge: the block"
            + " stands proud of both sides.",
        scale,
        drafter.note(),
        sketch.marks());
  }

  private List<GuideHole> shown() {
    return guide.holes().stream().limit(HOLES).toList();
  }

  /** As much as is drawn of the guide: half a step beyond the last hole that is shown. */
  private double length() {
    double last = shown().getLast().along().mm();
    return Math.min(guide.length().mm(), last + step() / 2) - leftOut();
  }

  private double step() {
    List<GuideHole> holes = shown();
    double last = holes.getLast().along().mm();
    return holes.size() == 1 ? last : last - holes.getFirst().along().mm();
  }

  /** Where the first hole lies far from the block, what is left out between them. */
  private double leftOut() {
    double out = shown().getFirst().along().mm() - below() - step() / 2;
    return out > guide.width().mm() / 2 ? out : 0;
  }

  /** What is drawn of the guide below the gap. */
  private double below() {
    return Math.max(step() / 2, guide.block().mm());
  }

  /** Where a hole is drawn. */
  private double v(GuideHole hole) {
    return place.v(hole) - leftOut();
  }

  /** From the right to the left. */
  private static List<Point> torn(Box work, double height) {
    return IntStream.rangeClosed(0, TEETH)
        .mapToObj(
            i ->
                new Point(
                    work.right() - i * work.width() / TEETH, height + (i % 2 == 0 ? 0 : TOOTH)))
        .toList();
  }

  private Box top() {
    return new Box(0, 0, guide.width().mm(), length());
  }

  /** The guide seen on its front edge, with the seat of the block. */
  private Box edge(Scale scale) {
    double right = -scale.toReal(APART) - guide.block().mm();
    return new Box(right - guide.thickness().mm(), -guide.block().mm(), right, length());
  }

  /** Battens as high as they are thick. */
  private void battens(Sketch sketch) {
    if (guide.block().isPositive()) {
      double thick = guide.block().mm();
      Box edge = edge(sketch.scale());
      batten(sketch, edge.right(), edge.right() + thick);
      batten(sketch, edge.left() - thick, edge.left());
    }
  }

  private void batten(Sketch sketch, double left, double right) {
    sketch.rectangle(new Box(left, -guide.block().mm(), right, 0), Pen.OUTLINE, Fill.HATCH);
  }

  /**
   * An outline with a torn upper end, unless the guide ends there; in two where some is left out.
   */
  private void broken(Sketch sketch, Box box) {
    boolean whole = box.top() + leftOut() >= guide.length().mm();
    Box work = sketch.onPaper(box);
    List<Point> foot = work.corners().subList(0, 2);
    List<Point> end = whole ? work.corners().subList(2, 4) : torn(work, work.top());
    if (leftOut() > 0) {
      double gap = sketch.scale().toPaper(below());
      outline(sketch, foot, torn(work, gap));
      outline(sketch, torn(work, gap + GAP).reversed(), end);
    } else {
      outline(sketch, foot, end);
    }
  }

  private static void outline(Sketch sketch, List<Point> lower, List<Point> upper) {
    List<Point> around = Stream.concat(lower.stream(), upper.stream()).toList();
    sketch.add(Mark.Path.polygon(around, Pen.OUTLINE, Fill.WHITE));
  }

  private void hole(Sketch sketch, GuideHole hole) {
    double u = place.u(hole);
    double v = v(hole);
    double arm = hole.diameter().mm();
    sketch
        .circle(u, v, hole.diameter().mm(), Pen.OUTLINE, Fill.WHITE)
        .line(u - arm, v, u + arm, v, Pen.CENTRE)
        .line(u, v - arm, u, v + arm, Pen.CENTRE);
  }

  private void dimensions(Sketch sketch) {
    Box drawn = sketch.extent();
    sketch.addAll(Dimensions.beside(Side.BELOW, drawn.bottom(), across(sketch)));
    sketch.addAll(Dimensions.beside(Side.RIGHT, sketch.onPaper(top()).right(), along(sketch)));
  }

  private List<Span> across(Sketch sketch) {
    double width = guide.width().mm();
    Box edge = edge(sketch.scale());
    List<Span> spans = new ArrayList<>();
    spans.add(span(sketch, edge.left(), edge.right(), guide.thickness()));
    spans.add(span(sketch, 0, width, guide.width()));
    for (GuideHole hole : columns()) {
      double at = width - hole.across().mm();
      spans.add(span(sketch, at, width, hole.across()));
      spans.add(span(sketch, 0, at, guide.behind(hole)));
    }
    return spans;
  }

  /** A hole of each column, from the front edge on. */
  private Collection<GuideHole> columns() {
    Map<Length, GuideHole> columns = new TreeMap<>();
    guide.holes().forEach(hole -> columns.putIfAbsent(hole.across(), hole));
    return columns.values();
  }

  private List<Span> along(Sketch sketch) {
    List<GuideHole> holes = shown();
    List<Span> spans = new ArrayList<>();
    if (guide.block().isPositive()) {
      spans.add(span(sketch, -guide.block().mm(), 0, guide.block()));
    }
    spans.add(span(sketch, 0, v(holes.getFirst()), holes.getFirst().along()));
    IntStream.range(1, holes.size())
        .filter(i -> holes.get(i).along().isMoreThan(holes.get(i - 1).along()))
        .mapToObj(i -> step(sketch, holes.get(i - 1), holes.get(i)))
        .forEach(spans::add);
    return spans;
  }

  private Span step(Sketch sketch, GuideHole one, GuideHole next) {
    return span(sketch, v(one), v(next), Guide.step(one, next));
  }

  private Span span(Sketch sketch, double from, double to, Length shown) {
    return new Span(
        sketch.scale().toPaper(from), sketch.scale().toPaper(to), drafter.number(shown));
  }

  private void words(Sketch sketch) {
    double top = sketch.extent().top() + TOOTH;
    String holes = "side A · holes Ø " + drafter.diameter(shown().getFirst().diameter());
    Box edge = sketch.onPaper(edge(sketch.scale()));
    sketch.add(above(holes, Lettering.Align.START).at(new Point(0, top)));
    sketch.add(above("front edge", Lettering.Align.END).at(new Point(edge.right(), top)));
    side(sketch, "A", Lettering.Align.END, edge.left() - TOOTH);
    side(sketch, "B", Lettering.Align.START, edge.right() + TOOTH);
  }

  private void side(Sketch sketch, String name, Lettering.Align align, double x) {
    double middle = sketch.scale().toPaper(length() / 2);
    sketch.add(Drafter.label(name).with(align, Lettering.Seat.MIDDLE).at(new Point(x, middle)));
  }

  private static Lettering above(String words, Lettering.Align align) {
    return Drafter.label(words).with(align, Lettering.Seat.BOTTOM);
  }
}
