package fourpin.sheets.pages;

import fourpin.sheets.paint.Box;
import fourpin.sheets.paint.Point;
import java.awt.geom.Point2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;

/** Reads the stroked paths of a page back, in millimetres. */
public final class Lines extends PDFGraphicsStreamEngine {

  private static final double MM_PER_POINT = 25.4 / 72;

  /** One stroked path: the points it passes, and how many curves it has. */
  public record Stroked(List<Point> points, int curves) {}

  private final List<Stroked> strokes = new ArrayList<>();
  private List<Point> points = new ArrayList<>();
  private int curves;

  private Lines(PDPage page) {
    super(page);
  }

  public static Lines on(PDPage page) throws IOException {
    Lines lines = new Lines(page);
    lines.processPage(page);
    return lines;
  }

  public List<Stroked> strokes() {
    return strokes;
  }

  /** Centres of the circles of a radius, in the order of drawing. */
  public List<Point> circles(double radius) {
    return strokes.stream()
        .filter(stroke -> stroke.curves == 4)
        .map(stroke -> Box.round(stroke.points))
        .filter(box -> Math.abs(box.width() / 2 - radius) < 0.001)
        .map(Box::centre)
        .toList();
  }

  private void add(double x, double y) {
    points.add(new Point(x * MM_PER_POINT, y * MM_PER_POINT));
  }

  @Override
  public void moveTo(float x, float y) {
    add(x, y);
  }

  @Override
  public void lineTo(float x, float y) {
    add(x, y);
  }

  @Override
  public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
    curves++;
    add(x3, y3);
  }

  @Override
  public void strokePath() {
    strokes.add(new Stroked(List.copyOf(points), curves));
    endPath();
  }

  @Override
  public void endPath() {
    points = new ArrayList<>();
    curves = 0;
  }

  @Override
  public void fillPath(int windingRule) {
    endPath();
  }

  @Override
  public void fillAndStrokePath(int windingRule) {
    strokePath();
  }

  @Override
  public Point2D getCurrentPoint() {
    return new Point2D.Double();
  }

  @Override
  public void closePath() {
    // nothing to add
  }

  @Override
  public void appendRectangle(Point2D a, Point2D b, Point2D c, Point2D d) {
    throw new UnsupportedOperationException("Our files have no rectangle operator");
  }

  @Override
  public void clip(int windingRule) {
    throw new UnsupportedOperationException("Our files clip nothing");
  }

  @Override
  public void drawImage(PDImage image) {
    throw new UnsupportedOperationException("Our files have no images");
  }

  @Override
  public void shadingFill(COSName name) {
    throw new UnsupportedOperationException("Our files have no shadings");
  }
}
