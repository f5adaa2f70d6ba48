package fourpin.sheets.drawings;

import fourpin.casework.Axis;
import fourpin.casework.BuiltCase;
import fourpin.casework.Face;
import fourpin.casework.Feature.Channel;
import fourpin.casework.Feature.Hole;
import fourpin.casework.Part;
import fourpin.job.Setting;
import fourpin.measure.Length;
import fourpin.sheets.drawings.Projection.Edge;
import fourpin.sheets.paint.Box;
import fourpin.sheets.paint.Dimensions;
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
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * A panel whose holes are marked or set one by one, as it lies on the bench, its lower end below,
 * with the line of each row, and distances from the lower end and the front edge, both drawn heavy.
 */
public final class RowsView {

  /** What holes are found by. */
  public sealed interface Aid {

    /**
     * A stick beside the panel, its zero at the foot of the case.
     *
     * @param marks the number of each height's mark on the stick, rising; not written where the
     *     case stands, since then a stick stands on each fixed panel
     * @param fences that rows are bored along, one after the other; may be none
     */
    record Stick(List<Integer> marks, List<Fence> fences) implements Aid {
      public Stick {
        marks = List.copyOf(marks);
        fences = List.copyOf(fences);
      }
    }

    /** A table of heights, for a machine: holes are numbered from the lower end. */
    record Coordinates() implements Aid {}
  }

  /**
   * The fence of a drill press for one row.
   *
   * @param edge of the panel that runs along it, FRONT or BACK
   * @param offset from the fence to the centre of the bit
   */
  public record Fence(Face edge, Length offset) {}

  private static final double APART = 3;
  private static final double ZERO = 1.6;

  /** Of a fence, on paper. */
  private static final double FENCE = 4;

  private final Drafter drafter;
  private final BuiltCase built;
  private final Part part;
  private final Projection view;
  private final Aid aid;

  /**
   * @param face that lies up; has holes for shelf supports
   */
  public RowsView(Drafter drafter, BuiltCase built, Part part, Face face, Aid aid) {
    this.drafter = drafter;
    this.built = built;
    this.part = part;
    this.view = new Projection(face);
    this.aid = aid;
  }

  public Drawing draw() {
    return drafter.fill(view.box(part.box()), this::draw);
  }

  private Drawing draw(Scale scale) {
    Sketch sketch = new Sketch(scale);
    panel(sketch);
    rows().forEach(y -> row(sketch, y));
    holes().forEach(h -> hole(sketch, h));
    datum(sketch);
    aid(sketch);
    across(sketch);
    labels(sketch);
    String up = view.face().name().toLowerCase(Locale.ROOT);
    return Drawing.toScale(
        Drafter.name(built.order().name(), part.mark(), up, "drilling"),
        built.order().name() + ", " + part.mark() + ", " + up + " face up" + with(),
        heights().size() + " heights, " + rows().size() + " rows.",
        scale,
        drafter.note(),
        sketch.marks());
  }

  private String with() {
    return switch (aid) {
      case Aid.Stick _ -> ", with the stick";
      case Aid.Coordinates _ -> ", by coordinates";
    };
  }

  private void aid(Sketch sketch) {
    switch (aid) {
      case Aid.Stick(List<Integer> marks, List<Fence> fences) -> {
        double apart = fences.isEmpty() ? APART : FENCE + APART;
        stick(isBoredStanding() ? List.of() : marks, apart).draw(sketch);
        fences.forEach(f -> fence(sketch, f));
      }
      case Aid.Coordinates _ -> coordinates(sketch);
    }
  }

  private StickBeside stick(List<Integer> marks, double apart) {
    return new StickBeside(drafter, part, view, heights(), marks, apart);
  }

  /** Along its edge, over the whole panel; the other fence is there for the other row. */
  private void fence(Sketch sketch, Fence fence) {
    Box work = sketch.onPaper(view.box(part.box()));
    boolean left = isLeft(fence);
    double inner = left ? work.left() : work.right();
    double outer = left ? inner - FENCE : inner + FENCE;
    Box bar = new Box(Math.min(inner, outer), work.bottom(), Math.max(inner, outer), work.top());
    sketch.add(Mark.Path.rectangle(bar, Pen.OUTLINE, Fill.HATCH));
    sketch.add(
        Drafter.label("FENCE")
            .with(Lettering.Align.MIDDLE, Lettering.Seat.MIDDLE)
            .turned(90)
            .backed()
            .at(bar.centre()));
  }

  private boolean isLeft(Fence fence) {
    return (fence.edge() == Face.FRONT) == frontAtLeft();
  }

  private List<Hole> holes() {
    return part.features().stream()
        .flatMap(f -> f instanceof Hole h ? Stream.of(h) : Stream.empty())
        .filter(h -> h.use() == Hole.Use.SUPPORT && h.face() == view.face())
        .toList();
  }

  /** From the front edge. */
  private List<Length> rows() {
    return places(Axis.Y);
  }

  /** From the lower end. */
  private List<Length> heights() {
    return places(Axis.Z);
  }

  private List<Length> places(Axis axis) {
    return holes().stream()
        .map(h -> part.from(axis, h.centre().along(axis)))
        .distinct()
        .sorted()
        .toList();
  }

  private void panel(Sketch sketch) {
    List<Point> outline =
        Silhouette.of(part, view).stream().map(p -> sketch.point(p.x(), p.y())).toList();
    sketch.add(Mark.Path.polygon(outline, Pen.OUTLINE, Fill.WHITE));
    channels(view.face()).forEach(c -> sketch.rectangle(view.box(c.volume()), Pen.EDGE, Fill.NONE));
  }

  private List<Channel> channels(Face face) {
    return part.features().stream()
        .filter(f -> f.face() == face)
        .flatMap(f -> f instanceof Channel c ? Stream.of(c) : Stream.empty())
        .filter(c -> c.kind() != Channel.Kind.NOTCH)
        .toList();
  }

  private double u(Length fromFront) {
    Length y = part.box().at(Face.FRONT).plus(fromFront);
    return view.u(new fourpin.casework.Point(Length.ZERO, y, Length.ZERO));
  }

  private void row(Sketch sketch, Length fromFront) {
    Box box = view.box(part.box());
    sketch.line(u(fromFront), box.bottom(), u(fromFront), box.top(), Pen.CENTRE);
  }

  private void hole(Sketch sketch, Hole hole) {
    sketch.circle(
        view.u(hole.centre()), view.v(hole.centre()), hole.diameter().mm(), Pen.EDGE, Fill.WHITE);
  }

  private boolean frontAtLeft() {
    return view.front() == Edge.LEFT;
  }

  private void datum(Sketch sketch) {
    Box box = view.box(part.box());
    double u = frontAtLeft() ? box.left() : box.right();
    sketch.line(u, box.bottom(), u, box.top(), Pen.DATUM);
    sketch.line(box.left(), box.bottom(), box.right(), box.bottom(), Pen.DATUM);
  }

  /** The zero as a black spot in its corner, holes numbered inside the row nearest to the front. */
  private void coordinates(Sketch sketch) {
    Box work = sketch.onPaper(view.box(part.box()));
    double front = frontAtLeft() ? work.left() : work.right();
    Point zero = new Point(front, work.bottom());
    sketch.add(new Mark.Circle(zero, ZERO, Pen.OUTLINE, Fill.SOLID));
    List<Double> places =
        heights().stream().map(h -> work.bottom() + sketch.scale().toPaper(h.mm())).toList();
    Length row = rows().getFirst();
    double x = sketch.scale().toPaper(u(row)) + (frontAtLeft() ? APART : -APART);
    Lettering.Align align = frontAtLeft() ? Lettering.Align.START : Lettering.Align.END;
    Thinned shown = Thinned.of(places);
    for (int i = 0; i < places.size(); i++) {
      if (shown.shows(i)) {
        sketch.add(
            Drafter.label(Integer.toString(i + 1))
                .with(align, Lettering.Seat.MIDDLE)
                .at(new Point(x, places.get(i))));
      }
    }
    stick(List.of(), 0).ends(sketch, front);
  }

  /** Then a stick stands on each fixed panel, with marks and numbers of its own. */
  private boolean isBoredStanding() {
    return built.order().settings().choice(Setting.DRILL).equals("after-assembly");
  }

  /** From the front edge; where there is a fence, from that to each row that is bored along it. */
  private void across(Sketch sketch) {
    if (aid instanceof Aid.Stick(_, List<Fence> fences) && !fences.isEmpty()) {
      Box work = sketch.onPaper(view.box(part.box()));
      sketch.addAll(
          Dimensions.beside(
              Side.BELOW,
              work.bottom(),
              fences.stream().map(f -> span(sketch.scale(), work, f)).toList()));
    } else {
      fromFront(sketch);
    }
  }

  private Dimensions.Span span(Scale scale, Box work, Fence fence) {
    double offset = scale.toPaper(fence.offset().mm());
    String number = drafter.number(fence.offset());
    return isLeft(fence)
        ? new Dimensions.Span(work.left(), work.left() + offset, number)
        : new Dimensions.Span(work.right() - offset, work.right(), number);
  }

  private void fromFront(Sketch sketch) {
    Box work = sketch.onPaper(view.box(part.box()));
    double front = frontAtLeft() ? work.left() : work.right();
    TreeMap<Double, Station> stations = new TreeMap<>();
    for (Length row : rows()) {
      double at = sketch.scale().toPaper(u(row));
      stations.put(at, new Station(at, drafter.number(row)));
    }
    sketch.addAll(
        RunningDimensions.beside(Side.BELOW, work.bottom(), front, List.copyOf(stations.values())));
  }

  private void labels(Sketch sketch) {
    PanelLabels labels = new PanelLabels(sketch, view, part);
    channels(view.face()).forEach(labels::keepOff);
    Box box = view.box(part.box());
    rows().forEach(r -> labels.keepOffRow(new Box(u(r), box.bottom(), u(r), box.top())));
    labels.draw(List.of());
  }
}
