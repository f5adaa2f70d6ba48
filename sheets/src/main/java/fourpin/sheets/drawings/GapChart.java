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
import java.util.List;
import java.util.stream.IntStream;

/**
 * How level shelves lie at each place: the bays side by side as from the front, a bar at the height
 * of each level as long as the gap under a fourth pin, many times larger, and the gap that is felt
 * as a dashed line. What of a bar reaches beyond it is black.
 */
public final class GapChart {

  /** How much larger gaps may be drawn than they are, largest first. */
  private static final List<Integer> TIMES = List.of(500, 200, 100, 50, 20, 10, 5, 2, 1);

  private static final double NUMBERS = 6;
  private static final double BETWEEN = 3;
  private static final double BAR = 1.8;
  private static final double SHARE = 0.7;

  /** Thinner bars would run together into black; then only numbered levels have one. */
  private static final double THINNEST = 1.2;

  private static final double ABOVE = 1;

  private final Drafter drafter;
  private final String caseName;
  private final List<Bay> bays;
  private final Limit limit;

  /** The places of one bay, rising. */
  public record Bay(int number, List<Bar> bars) {
    public Bay {
      bars = List.copyOf(bars);
    }
  }

  /**
   * One place.
   *
   * @param height above the foot of the case, mm
   * @param gap in mm
   */
  public record Bar(int level, double height, double gap) {}

  /** The gap that is felt. @param words as they are printed */
  public record Limit(double gap, String words) {}

  /**
   * @param bays at least one, each with a place
   */
  public GapChart(Drafter drafter, String caseName, List<Bay> bays, Limit limit) {
    this.drafter = drafter;
    this.caseName = caseName;
    this.bays = List.copyOf(bays);
    this.limit = limit;
  }

  public Drawing draw() {
    return drafter.largest(new Box(0, 0, 1, height()), this::draw);
  }

  private double height() {
    return bays.stream().mapToDouble(bay -> bay.bars().getLast().height()).max().orElseThrow();
  }

  private Drawing draw(Scale scale) {
    Sketch sketch = new Sketch(scale);
    double top = scale.toPaper(height()) + 2 * BAR;
    for (int i = 0; i < bays.size(); i++) {
      double left = i * (NUMBERS + column() + BETWEEN) + NUMBERS;
      bay(sketch, bays.get(i), left, top);
    }
    return Drawing.toScale(
        Drafter.name(caseName, "gaps"),
        caseName + ", gaps under a fourth pin",
        "A bar for each level of " + bays.size() + " bays; dashed: " + limit.words() + ", felt.",
        scale,
        "gaps drawn " + times() + " times",
        sketch.marks());
  }

  /** Millimetres on paper for the longest bar and the limit. */
  private double column() {
    return drafter.width() / bays.size() - NUMBERS - BETWEEN;
  }

  private double longest() {
    double gap =
        bays.stream().flatMap(bay -> bay.bars().stream()).mapToDouble(Bar::gap).max().orElseThrow();
    return Math.max(gap, limit.gap());
  }

  private int times() {
    return TIMES.stream()
        .filter(times -> times * longest() <= column())
        .findFirst()
        .orElse(TIMES.getLast());
  }

  private void bay(Sketch sketch, Bay bay, double left, double top) {
    List<Double> heights =
        bay.bars().stream().map(b -> sketch.scale().toPaper(b.height())).toList();
    double thick = thickness(heights);
    Thinned numbered = Thinned.of(heights);
    for (int i = 0; i < heights.size(); i++) {
      if (thick >= THINNEST || numbered.shows(i)) {
        bar(sketch, bay.bars().get(i), new Point(left, heights.get(i)), Math.max(thick, THINNEST));
      }
      if (numbered.shows(i)) {
        number(sketch, bay.bars().get(i), new Point(left, heights.get(i)));
      }
    }
    double felt = left + times() * limit.gap();
    sketch.add(line(left, 0, top, Pen.EDGE));
    sketch.add(line(felt, 0, top, Pen.CUT));
    sketch.add(
        Drafter.small("felt")
            .with(Lettering.Align.MIDDLE, Lettering.Seat.TOP)
            .at(new Point(felt, -ABOVE)));
    sketch.add(
        Drafter.label("bay " + bay.number())
            .with(Lettering.Align.START, Lettering.Seat.BOTTOM)
            .at(new Point(left, top + ABOVE)));
  }

  private static Mark line(double x, double from, double to, Pen pen) {
    return Mark.Path.line(new Point(x, from), new Point(x, to), pen);
  }

  /** Thinner where levels lie close, so that bars keep apart. */
  private static double thickness(List<Double> heights) {
    return IntStream.range(1, heights.size())
        .mapToDouble(i -> SHARE * (heights.get(i) - heights.get(i - 1)))
        .reduce(BAR, Math::min);
  }

  private void bar(Sketch sketch, Bar bar, Point start, double thick) {
    double end = start.x() + times() * bar.gap();
    double felt = start.x() + times() * limit.gap();
    sketch.add(bar(start, start.x(), end, thick, Fill.SHADE));
    if (end > felt) {
      sketch.add(bar(start, felt, end, thick, Fill.SOLID));
    }
  }

  private static Mark bar(Point at, double from, double to, double thick, Fill fill) {
    Box box = new Box(from, at.y() - thick / 2, to, at.y() + thick / 2);
    return Mark.Path.rectangle(box, Pen.HATCH, fill);
  }

  private static void number(Sketch sketch, Bar bar, Point start) {
    sketch.add(
        Drafter.small(Integer.toString(bar.level()))
            .with(Lettering.Align.END, Lettering.Seat.MIDDLE)
            .at(start.moved(-ABOVE, 0)));
  }
}
