package fourpin.sheets.drawings;

import fourpin.casework.Axis;
import fourpin.casework.BuiltCase;
import fourpin.casework.Face;
import fourpin.casework.Part;
import fourpin.casework.Part.Role;
import fourpin.measure.Length;
import fourpin.sheets.paint.Box;
import fourpin.sheets.paint.Drawing;
import fourpin.sheets.paint.Fill;
import fourpin.sheets.paint.Labels;
import fourpin.sheets.paint.Lettering;
import fourpin.sheets.paint.Mark;
import fourpin.sheets.paint.Pen;
import fourpin.sheets.paint.RunningDimensions;
import fourpin.sheets.paint.RunningDimensions.Station;
import fourpin.sheets.paint.Scale;
import fourpin.sheets.paint.Side;
import fourpin.sheets.paint.Sketch;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/** The face frame alone from the front, with running dimensions from its lower left corner. */
public final class FaceFrameView {

  private static final double MARGIN = 0.8;

  private final Drafter drafter;
  private final BuiltCase built;

  public FaceFrameView(Drafter drafter, BuiltCase built) {
    this.drafter = drafter;
    this.built = built;
  }

  /** Stiles and rails in the order of the case; none where there is no face frame. */
  public static List<Part> members(BuiltCase built) {
    return built.parts().stream()
        .filter(part -> part.role() == Role.STILE || part.role() == Role.RAIL)
        .toList();
  }

  /** Where the frame starts along an axis: at its left end, at its foot. */
  public static Length datum(BuiltCase built, Axis axis) {
    return members(built).stream()
        .map(part -> part.box().low().along(axis))
        .min(Length::compareTo)
        .orElseThrow();
  }

  /**
   * @throws java.util.NoSuchElementException if the case has no face frame
   */
  public Drawing draw() {
    return drafter.largest(outline(), this::draw);
  }

  private Box outline() {
    return members(built).stream().map(FaceFrameView::box).reduce(Box::with).orElseThrow();
  }

  private static Box box(Part part) {
    return new Projection(Face.FRONT).box(part.box());
  }

  private Drawing draw(Scale scale) {
    Sketch sketch = new Sketch(scale);
    members(built).forEach(part -> sketch.rectangle(box(part), Pen.OUTLINE, Fill.WHITE));
    Box work = sketch.onPaper(outline());
    sketch.addAll(
        RunningDimensions.beside(Side.LEFT, work.left(), work.bottom(), stations(scale, Axis.Z)));
    sketch.addAll(
        RunningDimensions.beside(Side.BELOW, work.bottom(), work.left(), stations(scale, Axis.X)));
    sketch.addAll(marks(sketch));
    String name = built.order().name();
    return Drawing.toScale(
        Drafter.name(name, "face-frame"),
        name + ", face frame",
        members(built).size() + " stiles and rails from the front, outside towards you.",
        scale,
        drafter.note(),
        sketch.marks());
  }

  /** Both edges of every member, each place once, without the datum itself. */
  private List<Station> stations(Scale scale, Axis axis) {
    TreeMap<Length, Station> stations = new TreeMap<>();
    for (Part part : members(built)) {
      for (Length place : List.of(part.box().low().along(axis), part.box().high().along(axis))) {
        Length distance = place.minus(datum(built, axis));
        if (!distance.isZero()) {
          stations.put(distance, new Station(scale.toPaper(place.mm()), drafter.number(distance)));
        }
      }
    }
    return List.copyOf(stations.values());
  }

  /** In the member where that is broad enough, else beside it. */
  private List<Mark> marks(Sketch sketch) {
    Labels labels = new Labels();
    members(built).forEach(part -> labels.reserve(sketch.onPaper(box(part))));
    List<Mark> marks = new ArrayList<>();
    for (Part part : members(built)) {
      Box room = sketch.onPaper(box(part));
      Lettering mark = Drafter.label(part.mark());
      boolean fits =
          mark.width() + MARGIN <= room.width() && mark.height() + MARGIN <= room.height();
      if (fits) {
        marks.add(mark.with(Lettering.Align.MIDDLE, Lettering.Seat.MIDDLE).at(room.centre()));
      } else {
        marks.addAll(labels.near(room.centre(), mark));
      }
    }
    return marks;
  }
}
