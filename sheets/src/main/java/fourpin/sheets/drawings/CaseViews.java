package fourpin.sheets.drawings;

import fourpin.casework.Axis;
import fourpin.casework.BaySpace;
import fourpin.casework.BuiltCase;
import fourpin.casework.CaseMeasures;
import fourpin.casework.CaseMeasures.Extent;
import fourpin.casework.DoorLeaf;
import fourpin.casework.Face;
import fourpin.casework.Part;
import fourpin.casework.Part.Role;
import fourpin.measure.Length;
import fourpin.sheets.paint.Box;
import fourpin.sheets.paint.Dimensions;
import fourpin.sheets.paint.Dimensions.Span;
import fourpin.sheets.paint.Drawing;
import fourpin.sheets.paint.Fill;
import fourpin.sheets.paint.Labels;
import fourpin.sheets.paint.Lettering;
import fourpin.sheets.paint.Mark;
import fourpin.sheets.paint.Pen;
import fourpin.sheets.paint.Point;
import fourpin.sheets.paint.RunningDimensions;
import fourpin.sheets.paint.RunningDimensions.Station;
import fourpin.sheets.paint.Scale;
import fourpin.sheets.paint.Side;
import fourpin.sheets.paint.Sketch;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * A case seen straight from the front, from its right side and from above.
 *
 * <p>What lies nearer covers what lies behind it; in the views from the side and from above the
 * panels inside are drawn with dashes.
 */
public final class CaseViews {

  private static final double LEAST_FLAG = 3;

  private static final String DOORS = "doors: room only, not planned";

  /** Doors are drawn so far inside their opening that their dashes keep off its edges. */
  private static final double WITHIN = 1.2;

  private final Drafter drafter;
  private final BuiltCase built;
  private final CaseMeasures measures;

  public CaseViews(Drafter drafter, BuiltCase built) {
    this.drafter = drafter;
    this.built = built;
    this.measures = new CaseMeasures(built);
  }

  /** With the bays and the height of every shelf. */
  public Drawing front() {
    return front(List.of());
  }

  /**
   * The same with flagged places.
   *
   * @param flags in the coordinates of this case
   */
  public Drawing front(List<Flag> flags) {
    return drafter.largest(outside(Face.FRONT), scale -> front(scale, flags));
  }

  /**
   * The front with nothing but the flagged places, for a list of findings.
   *
   * @param flags in the coordinates of this case
   */
  public Drawing places(List<Flag> flags) {
    return drafter.largest(outside(Face.FRONT), scale -> places(scale, flags));
  }

  /** From the right, front at the left; shelves and joints behind the side are dashed. */
  public Drawing side() {
    return drafter.largest(outside(Face.RIGHT), this::side);
  }

  /** From above, front below. */
  public Drawing top() {
    return drafter.largest(outside(Face.TOP), this::top);
  }

  private Box outside(Face face) {
    return new Projection(face).box(built.outside());
  }

  /** A narrow door keeps a third of its width. */
  private static Box within(Box door) {
    double least = Math.min(door.width(), door.height()) / 3;
    return door.grown(-Math.min(WITHIN, least));
  }

  private Drawing front(Scale scale, List<Flag> flags) {
    Projection view = new Projection(Face.FRONT);
    Sketch sketch = new Sketch(scale);
    parts(sketch, view);
    DoorLeaf.of(built).stream()
        .map(DoorLeaf::opening)
        .forEach(
            room ->
                sketch.add(
                    Mark.Path.rectangle(
                        within(sketch.onPaper(view.box(room))), Pen.HIDDEN, Fill.NONE)));
    Box work = sketch.onPaper(view.box(built.outside()));
    sketch.addAll(RunningDimensions.beside(Side.LEFT, work.left(), 0, heights(scale)));
    sketch.addAll(Dimensions.beside(Side.BELOW, work.bottom(), widths(scale)));
    sketch.addAll(Dimensions.beside(Side.RIGHT, work.right(), openings(scale)));
    Labels labels = new Labels();
    sketch.addAll(frontLabels(scale, labels));
    flags(sketch, view, flags, labels);
    return drawing(
        "front",
        "front view",
        "Seen from the front: "
            + built.bays().size()
            + " bays, with the clear widths below, the upper faces of bottom, shelves and top above"
            + " the floor at the left, and the clear heights between the shelves of the last bay,"
            + " as they lie first, at the right."
            + (built.order().doors().isPresent() ? " Doors are dashed: room only." : ""),
        sketch);
  }

  private Drawing places(Scale scale, List<Flag> flags) {
    Projection view = new Projection(Face.FRONT);
    Sketch sketch = new Sketch(scale);
    parts(sketch, view);
    flags(sketch, view, flags, new Labels());
    return drawing(
        "findings",
        "places of the findings",
        "Front view with the place of each finding framed.",
        sketch);
  }

  /** The parts alone, with the marks of shelves where they are seen. */
  List<Mark> bare(Scale scale, Face face) {
    Sketch sketch = new Sketch(scale);
    parts(sketch, new Projection(face));
    if (face == Face.FRONT) {
      sketch.addAll(frontLabels(scale, new Labels()));
    }
    return sketch.marks();
  }

  private Drawing side(Scale scale) {
    Projection view = new Projection(Face.RIGHT);
    Sketch sketch = new Sketch(scale);
    parts(sketch, view);
    hidden(
        sketch,
        view,
        List.of(
            Role.TOP, Role.BOTTOM, Role.FIXED_SHELF, Role.SHELF, Role.BACK, Role.KICK, Role.BLOCK));
    Box work = sketch.onPaper(view.box(built.outside()));
    sketch.addAll(Dimensions.beside(Side.BELOW, work.bottom(), depths(scale)));
    sketch.addAll(Dimensions.beside(Side.RIGHT, work.right(), List.of(outside(scale, Axis.Z))));
    Point front = new Point(work.left() - 2, work.centre().y());
    sketch.add(
        Drafter.label("FRONT")
            .with(Lettering.Align.MIDDLE, Lettering.Seat.BASELINE)
            .turned(90)
            .at(front));
    return drawing(
        "side",
        "side view",
        "Seen from the right side, front at the left. Shelves, back, kick and what stands behind it"
            + " are dashed.",
        sketch);
  }

  private Drawing top(Scale scale) {
    Projection view = new Projection(Face.TOP);
    Sketch sketch = new Sketch(scale);
    parts(sketch, view);
    hidden(sketch, view, List.of(Role.SIDE, Role.PARTITION, Role.BACK));
    Box work = sketch.onPaper(view.box(built.outside()));
    sketch.addAll(Dimensions.beside(Side.ABOVE, work.top(), widths(scale)));
    sketch.addAll(Dimensions.beside(Side.RIGHT, work.right(), List.of(outside(scale, Axis.Y))));
    Point front = new Point(work.centre().x(), work.bottom() - 1.5);
    sketch.add(Drafter.label("FRONT").with(Lettering.Align.MIDDLE, Lettering.Seat.TOP).at(front));
    return drawing(
        "top",
        "top view",
        "Seen from above, front below. Sides, partitions and back are dashed where the top covers"
            + " them.",
        sketch);
  }

  private Drawing drawing(String view, String title, String description, Sketch sketch) {
    String name = built.order().name();
    return Drawing.toScale(
        Drafter.name(name, view),
        name + ", " + title,
        description,
        sketch.scale(),
        drafter.note(),
        sketch.marks());
  }

  /** Every part, the farthest first. */
  private void parts(Sketch sketch, Projection view) {
    built.parts().stream()
        .sorted(Comparator.comparingDouble(p -> view.near(p.box())))
        .forEach(part -> sketch.group(part.mark() + ", " + part.name(), s -> part(s, part, view)));
  }

  private static void part(Sketch sketch, Part part, Projection view) {
    List<Point> outline =
        Silhouette.of(part, view).stream().map(p -> sketch.point(p.x(), p.y())).toList();
    boolean behind = part.role() == Role.BACK && view.face() == Face.FRONT;
    sketch.add(Mark.Path.polygon(outline, pen(part), behind ? Fill.TINT : Fill.WHITE));
    if (view.up() == Axis.Z) {
      HangingStrips.of(part).forEach(s -> sketch.rectangle(view.box(s), Pen.EDGE, Fill.WHITE));
    }
  }

  private static Pen pen(Part part) {
    return part.role() == Role.SIDE || part.role() == Role.TOP ? Pen.OUTLINE : Pen.EDGE;
  }

  private void hidden(Sketch sketch, Projection view, List<Role> roles) {
    built.parts().stream()
        .filter(part -> roles.contains(part.role()))
        .forEach(part -> hidden(sketch, view, part));
  }

  private static void hidden(Sketch sketch, Projection view, Part part) {
    sketch.rectangle(view.box(part.box()), Pen.HIDDEN, Fill.NONE);
    HangingStrips.of(part).forEach(s -> sketch.rectangle(view.box(s), Pen.HIDDEN, Fill.NONE));
  }

  private List<Span> widths(Scale scale) {
    return spans(scale, measures.bayWidths(), Axis.X);
  }

  private List<Span> depths(Scale scale) {
    return spans(scale, measures.shelfDepth().stream().toList(), Axis.Y);
  }

  /** In the last bay. */
  private List<Span> openings(Scale scale) {
    return spans(scale, measures.openings(built.bays().getLast()), Axis.Z);
  }

  /** The size over all at last. */
  private List<Span> spans(Scale scale, List<Extent> extents, Axis axis) {
    return Stream.concat(extents.stream(), Stream.of(measures.outside(axis)))
        .map(extent -> span(scale, extent))
        .toList();
  }

  private Span outside(Scale scale, Axis axis) {
    return span(scale, measures.outside(axis));
  }

  private Span span(Scale scale, Extent extent) {
    return new Span(
        scale.toPaper(extent.from().mm()),
        scale.toPaper(extent.to().mm()),
        drafter.number(extent.size()));
  }

  /** The upper face of everything that lies level, each height once. */
  private List<Station> heights(Scale scale) {
    TreeMap<Length, Station> stations = new TreeMap<>();
    for (Part part : built.parts()) {
      Length height = part.box().high().z();
      switch (part.role()) {
        case TOP, BOTTOM, FIXED_SHELF, SHELF ->
            stations.put(height, new Station(scale.toPaper(height.mm()), drafter.number(height)));
        default -> {
          // stands upright
        }
      }
    }
    return List.copyOf(stations.values());
  }

  private List<Mark> frontLabels(Scale scale, Labels labels) {
    List<Mark> marks = new ArrayList<>();
    for (BaySpace bay : built.bays()) {
      double middle = (bay.clear().low().x().mm() + bay.clear().high().x().mm()) / 2;
      Point under =
          new Point(scale.toPaper(middle), scale.toPaper(seenTop(bay).mm()) - Drafter.LABEL);
      marks.addAll(labels.on(under, Drafter.label("bay " + bay.number())));
    }
    DoorLeaf.of(built).stream()
        .map(DoorLeaf::opening)
        .limit(1)
        .map(room -> new Projection(Face.FRONT).box(room).centre())
        .map(at -> new Point(scale.toPaper(at.x()), scale.toPaper(at.y())))
        .forEach(at -> marks.addAll(labels.on(at, Drafter.small(DOORS))));
    for (Part part : built.parts()) {
      if (part.role() == Role.SHELF || part.role() == Role.FIXED_SHELF) {
        marks.addAll(labels.on(above(scale, part), Drafter.small(part.mark())));
      }
    }
    return marks;
  }

  /** The top of what is seen of a bay from the front: the rail of a face frame may hang into it. */
  private Length seenTop(BaySpace bay) {
    Length top = bay.clear().high().z();
    return built.parts().stream()
        .filter(part -> part.role() == Role.RAIL)
        .filter(part -> part.box().high().z().compareTo(top) >= 0)
        .map(part -> part.box().low().z())
        .reduce(top, Length::min);
  }

  private static Point above(Scale scale, Part part) {
    double middle = (part.box().low().x().mm() + part.box().high().x().mm()) / 2;
    return new Point(
        scale.toPaper(middle), scale.toPaper(part.box().high().z().mm()) + Drafter.SMALL);
  }

  /**
   * @param labels where there is lettering already
   */
  private static void flags(Sketch sketch, Projection view, List<Flag> flags, Labels labels) {
    for (Flag flag : flags) {
      Box spot = sketch.onPaper(view.box(flag.spot()));
      double margin = Math.max(0.5, (LEAST_FLAG - Math.min(spot.width(), spot.height())) / 2);
      sketch.add(Mark.Path.rectangle(spot.grown(margin), Pen.FLAG, Fill.NONE));
      labels.reserve(spot.grown(margin));
    }
    for (Flag flag : flags) {
      Box spot = sketch.onPaper(view.box(flag.spot()));
      sketch.addAll(labels.near(spot.centre(), Drafter.label(flag.label())));
    }
  }
}
