package fourpin.sheets.drawings;

import fourpin.casework.Axis;
import fourpin.casework.BuiltCase;
import fourpin.casework.Face;
import fourpin.casework.Feature.Channel;
import fourpin.casework.Feature.Hole;
import fourpin.casework.Part;
import fourpin.measure.Length;
import fourpin.sheets.drawings.Projection.Edge;
import fourpin.sheets.paint.Box;
import fourpin.sheets.paint.Drawing;
import fourpin.sheets.paint.Fill;
import fourpin.sheets.paint.Lettering;
import fourpin.sheets.paint.Mark;
import fourpin.sheets.paint.Pen;
import fourpin.sheets.paint.Point;
import fourpin.sheets.paint.RunningDimensions;
import fourpin.sheets.paint.RunningDimensions.Station;
import fourpin.sheets.paint.Scale;
import fourpin.sheets.paint.Side;
import fourpin.sheets.paint.Sketch;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Two uprights side by side on the bench, front edges together, lower ends at one stop below, and
 * the lines that are squared across both, numbered along the joint as the stick there has them.
 */
public final class PairView {

  /** Of the stop, on paper. */
  private static final double STOP = 5;

  private static final double BESIDE = 1;
  private static final double NUMBERS = 9;
  private static final double ABOVE = 5;

  private final Drafter drafter;
  private final BuiltCase built;
  private final List<Laid> panels;
  private final List<Integer> numbers;

  /**
   * One of them.
   *
   * @param up face that lies up, LEFT or RIGHT
   * @param gap from the stop to its lower end
   */
  public record Laid(Part part, Face up, Length gap) {

    private Projection view() {
      return new Projection(up);
    }

    private boolean isAtLeft() {
      return view().front() == Edge.RIGHT;
    }

    /** Heights of its holes from the stop, rising. */
    private List<Length> lines() {
      return part.features().stream()
          .flatMap(f -> f instanceof Hole h ? Stream.of(h) : Stream.empty())
          .filter(h -> h.use() == Hole.Use.SUPPORT && h.face() == up)
          .map(h -> part.from(Axis.Z, h.centre().z()).plus(gap))
          .distinct()
          .sorted()
          .toList();
    }
  }

  /**
   * @param panels two, whose front edges meet
   * @param numbers of the lines, from the stop up
   */
  public PairView(Drafter drafter, BuiltCase built, List<Laid> panels, List<Integer> numbers) {
    this.drafter = drafter;
    this.built = built;
    this.panels =
        panels.stream().sorted(Comparator.comparing((Laid l) -> l.isAtLeft() ? 0 : 1)).toList();
    this.numbers = List.copyOf(numbers);
  }

  public Drawing draw() {
    Box all = around(panels.getFirst()).with(around(panels.getLast()));
    return drafter.fill(all, this::draw);
  }

  /** Where a panel lies: the joint at 0 across, the stop at 0 up. */
  private static Box around(Laid laid) {
    Box box = laid.view().box(laid.part().box());
    double left = laid.isAtLeft() ? -box.width() : 0;
    double bottom = laid.gap().mm();
    return new Box(left, bottom, left + box.width(), bottom + box.height());
  }

  private Drawing draw(Scale scale) {
    Sketch sketch = new Sketch(scale);
    panels.forEach(laid -> panel(sketch, laid));
    stop(sketch);
    lines(sketch);
    distances(sketch);
    panels.forEach(laid -> words(sketch, laid));
    String names = String.join(" ", panels.stream().map(l -> l.part().mark()).toList());
    return Drawing.toScale(
        Drafter.name(built.order().name(), names, "squared"),
        built.order().name() + ", " + names + ", side by side",
        numbers.size() + " lines across both. Front edges meet, lower ends lie at the stop.",
        scale,
        drafter.note(),
        sketch.marks());
  }

  private void panel(Sketch sketch, Laid laid) {
    Box drawn = laid.view().box(laid.part().box());
    Box lies = around(laid);
    double dx = lies.left() - drawn.left();
    double dy = lies.bottom() - drawn.bottom();
    List<Point> outline =
        Silhouette.of(laid.part(), laid.view()).stream()
            .map(p -> sketch.point(p.x() + dx, p.y() + dy))
            .toList();
    sketch.add(Mark.Path.polygon(outline, Pen.OUTLINE, Fill.WHITE));
    laid.part().features().stream()
        .filter(f -> f.face() == laid.up())
        .flatMap(f -> f instanceof Channel c ? Stream.of(c) : Stream.empty())
        .filter(c -> c.kind() != Channel.Kind.NOTCH)
        .map(c -> laid.view().box(c.volume()).moved(dx, dy))
        .forEach(box -> sketch.rectangle(box, Pen.EDGE, Fill.NONE));
    spacer(sketch, laid, lies);
  }

  private static void spacer(Sketch sketch, Laid laid, Box lies) {
    if (laid.gap().isPositive()) {
      sketch.rectangle(
          new Box(lies.left(), 0, lies.right(), lies.bottom()), Pen.EDGE, Fill.CROSS_HATCH);
    }
  }

  private void stop(Sketch sketch) {
    Box work = onPaper(sketch);
    Box stop = new Box(work.left(), -STOP, work.right(), 0);
    sketch.add(Mark.Path.rectangle(stop, Pen.DATUM, Fill.HATCH));
    sketch.add(
        Drafter.label("STOP")
            .with(Lettering.Align.MIDDLE, Lettering.Seat.MIDDLE)
            .backed()
            .at(stop.centre()));
  }

  private Box onPaper(Sketch sketch) {
    return sketch.onPaper(around(panels.getFirst()).with(around(panels.getLast())));
  }

  private List<Length> heights() {
    return panels.getFirst().lines();
  }

  /** Right across both; the datum edge is the joint. */
  private void lines(Sketch sketch) {
    Box all = around(panels.getFirst()).with(around(panels.getLast()));
    heights().forEach(h -> sketch.line(all.left(), h.mm(), all.right(), h.mm(), Pen.DIMENSION));
    sketch.line(0, 0, 0, all.top(), Pen.DATUM);
    Thinned shown =
        Thinned.of(heights().stream().map(h -> sketch.scale().toPaper(h.mm())).toList());
    for (int i = 0; i < heights().size(); i++) {
      if (shown.shows(i)) {
        sketch.add(number(sketch, i));
      }
    }
  }

  private Mark number(Sketch sketch, int index) {
    double at = sketch.scale().toPaper(heights().get(index).mm());
    return Drafter.label(Integer.toString(numbers.get(index)))
        .with(Lettering.Align.START, Lettering.Seat.MIDDLE)
        .backed()
        .at(new Point(BESIDE, at));
  }

  /** First and last line from the stop. */
  private void distances(Sketch sketch) {
    TreeMap<Length, Station> ends = new TreeMap<>();
    for (Length height : List.of(heights().getFirst(), heights().getLast())) {
      double at = sketch.scale().toPaper(height.mm());
      ends.put(height, new Station(at, drafter.number(height)));
    }
    sketch.addAll(
        RunningDimensions.beside(Side.LEFT, onPaper(sketch).left(), 0, List.copyOf(ends.values())));
  }

  /** Mark and top above the panel, its front beside the joint. */
  private void words(Sketch sketch, Laid laid) {
    Box work = sketch.onPaper(around(laid));
    double x = work.centre().x();
    word(sketch, laid.part().mark(), new Point(x, work.top() + ABOVE));
    word(sketch, "TOP", new Point(x, work.top() + BESIDE));
    word(
        sketch,
        laid.isAtLeft() ? "FRONT →" : "← FRONT",
        new Point(laid.isAtLeft() ? x : x + NUMBERS / 2, work.centre().y()));
  }

  private static void word(Sketch sketch, String word, Point at) {
    sketch.add(
        Drafter.label(word).with(Lettering.Align.MIDDLE, Lettering.Seat.BOTTOM).backed().at(at));
  }
}
