package fourpin.sheets.drawings;

import fourpin.casework.Axis;
import fourpin.casework.BuiltCase;
import fourpin.casework.Face;
import fourpin.casework.FrameMeasures;
import fourpin.casework.Part;
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

/** The face frame alone from the front, with running dimensions from its lower left corner. */
public final class FaceFrameView {

  private static final double MARGIN = 0.8;

  private final Drafter drafter;
  private final BuiltCase built;
  private final FrameMeasures frame;

  public FaceFrameView(Drafter drafter, BuiltCase built) {
    this.drafter = drafter;
    this.built = built;
    this.frame = new FrameMeasures(built);
  }

  /**
   * @throws java.util.NoSuchElementException if the case has no face frame
   */
  public Drawing draw() {
    return drafter.largest(outline(), this::draw);
  }

  private Box outline() {
    return frame.members().stream().map(FaceFrameView::box).reduce(Box::with).orElseThrow();
  }

  private static Box box(Part part) {
    return new Projection(Face.FRONT).box(part.box());
  }

  private Drawing draw(Scale scale) {
    Sketch sketch = new Sketch(scale);
    frame.members().forEach(part -> sketch.rectangle(box(part), Pen.OUTLINE, Fill.WHITE));
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
        frame.members().size() + " stiles and rails from the front, outside towards you.",
        scale,
        drafter.note(),
        sketch.marks());
  }

  /** Both edges of every member, each place once, without the corner itself. */
  private List<Station> stations(Scale scale, Axis axis) {
    Box outline = outline();
    double start = axis == Axis.Z ? outline.bottom() : outline.left();
    return frame.edges(axis).stream()
        .map(edge -> new Station(scale.toPaper(start + edge.mm()), drafter.number(edge)))
        .toList();
  }

  /** In the member where that is broad enough, else beside it. */
  private List<Mark> marks(Sketch sketch) {
    Labels labels = new Labels();
    frame.members().forEach(part -> labels.reserve(sketch.onPaper(box(part))));
    List<Mark> marks = new ArrayList<>();
    for (Part part : frame.members()) {
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
