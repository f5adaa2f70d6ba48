package fourpin.sheets.pages;

import fourpin.sheets.paint.Fill;
import fourpin.sheets.paint.Hatching;
import fourpin.sheets.paint.Ink;
import fourpin.sheets.paint.Lettering;
import fourpin.sheets.paint.Mark;
import fourpin.sheets.paint.Pen;
import fourpin.sheets.paint.Point;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.util.Matrix;

/** Paints marks into a content stream whose unit is the millimetre. */
final class PdfPainter {

  /**
   * Control points of a quarter circle as four Bezier curves: 4/3 tan(pi/8); off by at most 0.03 %
   * of the radius.
   */
  private static final double QUARTER = 4.0 / 3 * Math.tan(Math.PI / 8);

  private static final int ROUND = 1;

  private final PDPageContentStream out;
  private final PdfFonts fonts;
  private Optional<Pen> pen = Optional.empty();
  private Optional<Ink> ground = Optional.empty();

  PdfPainter(PDPageContentStream out, PdfFonts fonts) {
    this.out = out;
    this.fonts = fonts;
  }

  void paint(List<Mark> marks) throws IOException {
    for (Mark mark : marks) {
      switch (mark) {
        case Mark.Path path -> paint(path);
        case Mark.Area area -> fill(area.corners(), area.fill());
        case Mark.Circle circle -> paint(circle);
        case Mark.Text text -> paint(text);
        case Mark.Group group -> paint(group.marks());
      }
    }
  }

  private void paint(Mark.Path path) throws IOException {
    if (path.fill() != Fill.NONE) {
      fill(path.points(), path.fill());
    }
    take(path.pen());
    trace(path.points());
    if (path.shape() == Mark.Path.Shape.CLOSED) {
      out.closePath();
    }
    out.stroke();
  }

  private void fill(List<Point> corners, Fill fill) throws IOException {
    if (fill.ground().isPresent()) {
      dip(fill.ground().get());
      trace(corners);
      out.fill();
    }
    List<Hatching.Segment> segments = Hatching.segments(corners, fill);
    if (!segments.isEmpty()) {
      take(Pen.HATCH);
      for (Hatching.Segment segment : segments) {
        trace(List.of(segment.from(), segment.to()));
      }
      out.stroke();
    }
  }

  private void trace(List<Point> points) throws IOException {
    out.moveTo((float) points.getFirst().x(), (float) points.getFirst().y());
    for (Point point : points.subList(1, points.size())) {
      out.lineTo((float) point.x(), (float) point.y());
    }
  }

  private void paint(Mark.Circle circle) throws IOException {
    if (circle.fill().ground().isPresent()) {
      dip(circle.fill().ground().get());
      trace(circle);
      out.fill();
    }
    take(circle.pen());
    trace(circle);
    out.stroke();
  }

  private void trace(Mark.Circle circle) throws IOException {
    Point start = circle.centre().moved(circle.radius(), 0);
    out.moveTo((float) start.x(), (float) start.y());
    for (int quarter = 0; quarter < 4; quarter++) {
      curve(circle, 90.0 * quarter);
    }
    out.closePath();
  }

  private void curve(Mark.Circle circle, double degrees) throws IOException {
    double r = circle.radius();
    Point first = on(circle, new Point(r, r * QUARTER), degrees);
    Point second = on(circle, new Point(r * QUARTER, r), degrees);
    Point end = on(circle, new Point(0, r), degrees);
    out.curveTo(
        (float) first.x(),
        (float) first.y(),
        (float) second.x(),
        (float) second.y(),
        (float) end.x(),
        (float) end.y());
  }

  private static Point on(Mark.Circle circle, Point offset, double degrees) {
    Point turned = offset.turned(degrees);
    return circle.centre().moved(turned.x(), turned.y());
  }

  private void paint(Mark.Text text) throws IOException {
    Lettering lettering = text.lettering();
    if (lettering.backing() == Lettering.Backing.WHITE) {
      fill(lettering.corners(text.at()), Fill.WHITE);
    }
    dip(lettering.ink());
    Point start = lettering.start(text.at());
    Matrix place = Matrix.getTranslateInstance((float) start.x(), (float) start.y());
    place.rotate(Math.toRadians(lettering.degrees()));
    out.beginText();
    out.setFont(fonts.font(lettering.face()), (float) lettering.size());
    out.setTextMatrix(place);
    out.showText(lettering.face().shown(lettering.words()));
    out.endText();
  }

  private void take(Pen wanted) throws IOException {
    if (pen.isPresent() && pen.get() == wanted) {
      return;
    }
    pen = Optional.of(wanted);
    out.setLineWidth((float) wanted.width());
    out.setLineJoinStyle(ROUND);
    out.setLineDashPattern(dashes(wanted), 0);
    float[] parts = wanted.ink().parts();
    out.setStrokingColor(parts[0], parts[1], parts[2]);
  }

  private static float[] dashes(Pen pen) {
    float[] dashes = new float[pen.dashes().size()];
    for (int i = 0; i < dashes.length; i++) {
      dashes[i] = pen.dashes().get(i).floatValue();
    }
    return dashes;
  }

  private void dip(Ink wanted) throws IOException {
    if (ground.isPresent() && ground.get() == wanted) {
      return;
    }
    ground = Optional.of(wanted);
    float[] parts = wanted.parts();
    out.setNonStrokingColor(parts[0], parts[1], parts[2]);
  }
}
