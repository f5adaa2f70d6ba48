package fourpin.sheets.drawings;

import fourpin.casework.Axis;
import fourpin.casework.Feature.Channel;
import fourpin.casework.Feature.Hole;
import fourpin.casework.Part;
import fourpin.sheets.paint.Box;
import fourpin.sheets.paint.Labels;
import fourpin.sheets.paint.Lettering;
import fourpin.sheets.paint.Mark;
import fourpin.sheets.paint.Point;
import fourpin.sheets.paint.Sketch;
import fourpin.sheets.paint.Typeface;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The words on a drawn panel: its mark, where its front and its top are, letters of joints. They
 * keep off edges, off what was drawn in words before, and off whatever else is named.
 */
final class PanelLabels {

  private static final double EDGE = 0.35;

  /** In so many places of a panel a label is tried. */
  private static final int PLACES = 36;

  private static final double INSIDE = 3;
  private static final double BELOW_MARK = 6;

  private final Sketch sketch;
  private final Projection view;
  private final Box work;
  private final String mark;
  private final Labels labels = new Labels();

  /** Labels for what is drawn so far. */
  PanelLabels(Sketch sketch, Projection view, Part part) {
    this.sketch = sketch;
    this.view = view;
    this.work = sketch.onPaper(view.box(part.box()));
    this.mark = part.mark();
    reserveWordsAndEdges();
  }

  private void reserveWordsAndEdges() {
    Mark.flattened(sketch.marks()).stream()
        .filter(Mark.Text.class::isInstance)
        .forEach(text -> labels.reserve(text.extent()));
    for (double x : List.of(work.left(), work.right())) {
      labels.reserve(new Box(x, work.bottom(), x, work.top()).grown(EDGE));
    }
    for (double y : List.of(work.bottom(), work.top())) {
      labels.reserve(new Box(work.left(), y, work.right(), y).grown(EDGE));
    }
  }

  void keepOff(Channel channel) {
    labels.reserve(sketch.onPaper(view.box(channel.volume())).grown(EDGE));
  }

  void keepOff(Hole hole) {
    Point centre = sketch.point(view.u(hole.centre()), view.v(hole.centre()));
    labels.reserve(Box.round(centre).grown(1));
  }

  /**
   * @param row line of a row, in millimetres of the case
   */
  void keepOffRow(Box row) {
    labels.reserve(sketch.onPaper(row).grown(EDGE));
  }

  void draw(List<PanelView.Joint> joints) {
    sketch.addAll(labels.onFirstFree(aside(work.centre()), Lettering.of(mark, Typeface.BOLD, 5)));
    front()
        .ifPresent(at -> sketch.addAll(labels.onFirstFree(aside(at), Drafter.label(frontWords()))));
    if (view.up() == Axis.Z) {
      sketch.addAll(labels.onFirstFree(atTop(), Drafter.label("TOP")));
    }
    for (PanelView.Joint joint : joints) {
      Box box = sketch.onPaper(view.box(joint.channel().volume()));
      sketch.addAll(labels.near(box.centre(), Drafter.label(joint.letter())));
    }
  }

  /**
   * The place itself, then others in the same panel, the nearest first; then those nearer to one
   * edge.
   */
  private List<Point> aside(Point place) {
    boolean lying = work.width() > work.height();
    double across = (lying ? work.height() : work.width()) / 4;
    Stream<Point> places =
        Stream.of(0.0, -across, across)
            .flatMap(off -> along(place.moved(lying ? 0 : off, lying ? off : 0)));
    return Stream.concat(places, Stream.of(work.centre())).toList();
  }

  private Stream<Point> along(Point place) {
    double step = work.width() / PLACES;
    double rise = work.height() / PLACES;
    boolean lying = work.width() > work.height();
    return IntStream.range(0, PLACES)
        .mapToDouble(i -> (i % 2 == 0 ? i : -i - 1) / 2.0)
        .mapToObj(i -> place.moved(lying ? i * step : 0, lying ? 0 : i * rise))
        .filter(work::holds);
  }

  /** The place itself, then others on its height, then the next below. */
  private List<Point> lower(Point top) {
    double across = work.width() / 4;
    return IntStream.range(0, PLACES)
        .mapToObj(i -> top.moved(0, -i * INSIDE))
        .flatMap(p -> Stream.of(p, p.moved(-across, 0), p.moved(across, 0)))
        .toList();
  }

  private String frontWords() {
    return switch (view.front()) {
      case LEFT -> "← FRONT";
      case RIGHT -> "FRONT →";
      case BOTTOM -> "↓ FRONT";
      case TOP -> "↑ FRONT";
      case NONE -> "";
    };
  }

  private Optional<Point> front() {
    return switch (view.front()) {
      case LEFT, RIGHT -> Optional.of(work.centre().moved(0, -BELOW_MARK));
      case BOTTOM -> Optional.of(new Point(work.centre().x(), work.bottom() + INSIDE));
      case TOP -> Optional.of(new Point(work.centre().x(), work.top() - INSIDE));
      case NONE -> Optional.empty();
    };
  }

  /** In the upper third of the panel, else above its upper end; never near the lower one. */
  private List<Point> atTop() {
    Point top = new Point(work.centre().x(), work.top() - INSIDE);
    double third = work.top() - work.height() / 3;
    Stream<Point> inside = lower(top).stream().filter(place -> place.y() > third);
    Stream<Point> above =
        IntStream.rangeClosed(1, PLACES).mapToObj(i -> top.moved(0, (i + 1) * INSIDE));
    return Stream.concat(inside, above).toList();
  }
}
