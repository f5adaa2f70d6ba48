package fourpin.sheets.drawings;

import fourpin.sheets.paint.Box;
import fourpin.sheets.paint.Drawing;
import fourpin.sheets.paint.Fill;
import fourpin.sheets.paint.Lettering;
import fourpin.sheets.paint.Mark;
import fourpin.sheets.paint.Pen;
import fourpin.sheets.paint.Point;
import fourpin.sheets.paint.Scale;
import fourpin.sheets.paint.Sketch;
import fourpin.strength.ShelfShape;
import fourpin.strength.Spot;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * A shelf that sags, from the front: front edge, middle of the depth and back edge below the line
 * that they would keep without a load, many times deeper than they are, and the sag that is allowed
 * at first.
 */
public final class SagView {

  /** How many times deeper than the length's scale sags may be drawn, largest first. */
  private static final List<Integer> TIMES = List.of(1000, 500, 200, 100, 50, 20, 10, 5, 2, 1);

  /** Room on paper for the deepest line. */
  private static final double DEEPEST = 16;

  private static final double SUPPORT = 2.5;
  private static final double BESIDE = 2;
  private static final double APART = 3.4;

  private static final Map<Spot, Pen> PENS =
      new EnumMap<>(Map.of(Spot.FRONT, Pen.DATUM, Spot.MIDDLE, Pen.CENTRE, Spot.BACK, Pen.CUT));

  private final Drafter drafter;
  private final String name;
  private final ShelfShape shape;
  private final Limit limit;

  /** The sag allowed at first. @param sag mm @param words as it is printed */
  public record Limit(double sag, String words) {}

  /**
   * @param name of the shelf, for the drawing's title
   */
  public SagView(Drafter drafter, String name, ShelfShape shape, Limit limit) {
    this.drafter = drafter;
    this.name = name;
    this.shape = shape;
    this.limit = limit;
  }

  public Drawing draw() {
    return drafter.fill(new Box(0, 0, shape.length(), 1), this::draw);
  }

  private Drawing draw(Scale scale) {
    Sketch sketch = new Sketch(scale);
    int times = times(scale);
    sketch.line(0, 0, shape.length(), 0, Pen.EDGE);
    shape.supports().forEach(x -> sketch.add(support(scale.toPaper(x))));
    double allowed = -times * scale.toPaper(limit.sag());
    double right = scale.toPaper(shape.length());
    sketch.add(line(0, allowed, right, allowed, Pen.HIDDEN));
    shape.sags().forEach((spot, sags) -> sketch.add(curve(scale, times, spot, sags)));
    labels(sketch, times, allowed);
    return Drawing.toScale(
        Drafter.name(name, "sag"),
        name + ", how it sags",
        "From the front: heavy line the front edge, dashes the back edge, dash and dot the middle of"
            + " the depth; fine dashes the sag allowed at first.",
        scale,
        "sag drawn " + times + " times as deep",
        sketch.marks());
  }

  private int times(Scale scale) {
    double deepest = scale.toPaper(Math.max(limit.sag(), most()));
    return TIMES.stream().filter(t -> t * deepest <= DEEPEST).findFirst().orElse(1);
  }

  private double most() {
    return shape.sags().values().stream()
        .flatMap(List::stream)
        .mapToDouble(Double::doubleValue)
        .max()
        .orElse(0);
  }

  /** A pin that only pushes. */
  private static Mark support(double x) {
    return Mark.Path.polygon(
        List.of(
            new Point(x, 0),
            new Point(x - SUPPORT / 2, -SUPPORT),
            new Point(x + SUPPORT / 2, -SUPPORT)),
        Pen.EDGE,
        Fill.SHADE);
  }

  private Mark curve(Scale scale, int times, Spot spot, List<Double> sags) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < sags.size(); i++) {
      double x = scale.toPaper(shape.length() * i / (sags.size() - 1));
      points.add(new Point(x, -times * scale.toPaper(sags.get(i))));
    }
    return new Mark.Path(
        points, Mark.Path.Shape.OPEN, PENS.getOrDefault(spot, Pen.EDGE), Fill.NONE);
  }

  /** Beside the drawing, each at the depth of its line, apart enough to be read. */
  private void labels(Sketch sketch, int times, double allowed) {
    Scale scale = sketch.scale();
    double right = scale.toPaper(shape.length());
    List<Label> labels =
        new ArrayList<>(List.of(new Label("allowed at first, " + limit.words(), allowed, right)));
    shape
        .sags()
        .forEach(
            (spot, sags) -> {
              double deepest = Collections.max(sags);
              double x = right * sags.indexOf(deepest) / (sags.size() - 1);
              labels.add(new Label(spot.words(), -times * scale.toPaper(deepest), x));
            });
    labels.sort((one, other) -> Double.compare(other.at(), one.at()));
    double next = Double.POSITIVE_INFINITY;
    for (Label label : labels) {
      double y = Math.min(label.at(), next - APART);
      next = y;
      sketch.add(line(label.from(), label.at(), right + BESIDE, label.at(), Pen.HATCH));
      sketch.add(line(right + BESIDE, label.at(), right + 3 * BESIDE, y, Pen.HATCH));
      sketch.add(
          Drafter.small(label.words())
              .with(Lettering.Align.START, Lettering.Seat.MIDDLE)
              .at(new Point(right + 3 * BESIDE + 1, y)));
    }
  }

  /**
   * @param at height of its line @param from where its leader begins
   */
  private record Label(String words, double at, double from) {}

  private static Mark line(double x1, double y1, double x2, double y2, Pen pen) {
    return Mark.Path.line(new Point(x1, y1), new Point(x2, y2), pen);
  }
}
