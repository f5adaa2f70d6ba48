package fourpin.sheets.drawings;

import fourpin.casework.Face;
import fourpin.casework.Part;
import fourpin.measure.Length;
import fourpin.sheets.drawings.Projection.Edge;
import fourpin.sheets.paint.Box;
import fourpin.sheets.paint.Fill;
import fourpin.sheets.paint.Lettering;
import fourpin.sheets.paint.Mark;
import fourpin.sheets.paint.Pen;
import fourpin.sheets.paint.Point;
import fourpin.sheets.paint.RunningDimensions;
import fourpin.sheets.paint.RunningDimensions.Station;
import fourpin.sheets.paint.Side;
import fourpin.sheets.paint.Sketch;
import java.util.List;
import java.util.TreeMap;

/**
 * A story stick beside the front edge of a panel that lies or stands with its lower end below: the
 * marks of this panel, first and last with their distance from the panel's lower end.
 *
 * @param view of the face that is bored
 * @param heights of the holes from the panel's lower end, rising
 * @param marks number of each height's mark on the stick, as many as heights; none are written
 *     where the case stands, since then a stick stands on each fixed panel
 * @param apart from the panel, on paper
 */
record StickBeside(
    Drafter drafter,
    Part part,
    Projection view,
    List<Length> heights,
    List<Integer> marks,
    double apart) {

  private static final double WIDE = 8;
  private static final double TICK = 2;
  private static final double BESIDE = 0.5;

  StickBeside {
    heights = List.copyOf(heights);
    marks = List.copyOf(marks);
  }

  void draw(Sketch sketch) {
    Box work = sketch.onPaper(view.box(part.box()));
    double near = frontAtLeft() ? work.left() - apart : work.right() + apart;
    double far = frontAtLeft() ? near - WIDE : near + WIDE;
    sketch.add(
        Mark.Path.rectangle(
            new Box(Math.min(near, far), 0, Math.max(near, far), work.top()), Pen.EDGE, Fill.TINT));
    heights.forEach(h -> tick(sketch, near, work.bottom() + sketch.scale().toPaper(h.mm())));
    if (!marks.isEmpty()) {
      sketch.add(
          Mark.Path.line(
              new Point(near, work.bottom()), new Point(far, work.bottom()), Pen.OUTLINE));
      numbers(sketch, near);
    }
    ends(sketch, far);
  }

  private boolean frontAtLeft() {
    return view.front() == Edge.LEFT;
  }

  private void tick(Sketch sketch, double near, double height) {
    double end = frontAtLeft() ? near - TICK : near + TICK;
    sketch.add(Mark.Path.line(new Point(near, height), new Point(end, height), Pen.EDGE));
  }

  /** The stick has the marks of the whole case; only those of this panel are drawn. */
  private void numbers(Sketch sketch, double near) {
    Thinned shown = Thinned.of(heights.stream().map(h -> sketch.scale().toPaper(h.mm())).toList());
    double x = frontAtLeft() ? near - TICK - BESIDE : near + TICK + BESIDE;
    Lettering.Align align = frontAtLeft() ? Lettering.Align.END : Lettering.Align.START;
    for (Length place : shown.among(heights)) {
      Length above = place.plus(part.box().at(Face.BOTTOM));
      sketch.add(
          Drafter.label(Integer.toString(marks.get(heights.indexOf(place))))
              .with(align, Lettering.Seat.MIDDLE)
              .at(new Point(x, sketch.scale().toPaper(above.mm()))));
    }
  }

  /** The distances of the first and the last hole, from the lower end at the edge on paper. */
  void ends(Sketch sketch, double edge) {
    double bottom = sketch.onPaper(view.box(part.box())).bottom();
    TreeMap<Length, Station> ends = new TreeMap<>();
    for (Length height : List.of(heights.getFirst(), heights.getLast())) {
      double at = bottom + sketch.scale().toPaper(height.mm());
      ends.put(height, new Station(at, drafter.number(height)));
    }
    sketch.addAll(
        RunningDimensions.beside(
            frontAtLeft() ? Side.LEFT : Side.RIGHT, edge, bottom, List.copyOf(ends.values())));
  }
}
