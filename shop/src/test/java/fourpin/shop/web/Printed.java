package fourpin.shop.web;

import java.awt.geom.Point2D;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** What a printer has put on paper: its words, and what of it stands over the edge of a sheet. */
final class Printed implements AutoCloseable {

  /** Printers leave about as much white (common practice: 5 mm), in points. */
  private static final double EDGE = 14;

  private final PDDocument sheets;

  Printed(byte[] pdf) {
    try {
      sheets = Loader.loadPDF(pdf);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  PDDocument sheets() {
    return sheets;
  }

  List<String> lines() {
    try {
      return new PDFTextStripper().getText(sheets).lines().map(String::strip).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** All words without what stands between them, since lines are broken anywhere. */
  String words() {
    return dense(String.join("", lines()));
  }

  static String dense(String words) {
    return words.replaceAll("[\\s\\u00a0]+", "");
  }

  /** Words and lines that begin, end or turn where a printer leaves white, or out of the sheet. */
  List<String> cutOff() {
    List<String> all = new ArrayList<>();
    int number = 0;
    for (PDPage page : sheets.getPages()) {
      number++;
      Seen seen = new Seen(page);
      all.addAll(seen.over("sheet " + number));
    }
    all.addAll(wordsOver());
    return all;
  }

  private static boolean isOver(PDRectangle paper, double x, double y) {
    return x < EDGE || y < EDGE || x > paper.getWidth() - EDGE || y > paper.getHeight() - EDGE;
  }

  private List<String> wordsOver() {
    List<String> over = new ArrayList<>();
    try {
      new PDFTextStripper() {
        @Override
        protected void writeString(String words, List<TextPosition> signs) {
          PDRectangle paper = getCurrentPage().getMediaBox();
          boolean out =
              signs.stream()
                  .anyMatch(s -> isOver(paper, s.getTextMatrix().getTranslateX(), s.getY()));
          if (out) {
            over.add("sheet " + getCurrentPageNo() + ": “" + words + "”");
          }
        }
      }.getText(sheets);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return over;
  }

  /** Every point of what is drawn, in points from the lower left of the sheet. */
  private static final class Seen extends PDFGraphicsStreamEngine {

    private final List<Point2D> path = new ArrayList<>();
    private final List<Point2D> drawn = new ArrayList<>();
    private Point2D at = new Point2D.Double();

    Seen(PDPage page) {
      super(page);
      try {
        processPage(page);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }

    List<String> over(String sheet) {
      return drawn.stream()
          .filter(p -> isOver(getPage().getMediaBox(), p.getX(), p.getY()))
          .map(
              p ->
                  String.format(Locale.ROOT, "%s: a line at %.0f, %.0f", sheet, p.getX(), p.getY()))
          .distinct()
          .toList();
    }

    private void put(double x, double y) {
      at = new Point2D.Double(x, y);
      path.add(at);
    }

    private void draw() {
      drawn.addAll(path);
      path.clear();
    }

    @Override
    public void appendRectangle(Point2D a, Point2D b, Point2D c, Point2D d) {
      path.addAll(List.of(a, b, c, d));
    }

    @Override
    public void drawImage(PDImage image) {}

    @Override
    public void clip(int rule) {}

    @Override
    public void moveTo(float x, float y) {
      put(x, y);
    }

    @Override
    public void lineTo(float x, float y) {
      put(x, y);
    }

    @Override
    public void curveTo(float a, float b, float c, float d, float x, float y) {
      put(x, y);
    }

    @Override
    public Point2D getCurrentPoint() {
      return at;
    }

    @Override
    public void closePath() {}

    @Override
    public void endPath() {
      path.clear();
    }

    @Override
    public void strokePath() {
      draw();
    }

    @Override
    public void fillPath(int rule) {
      draw();
    }

    @Override
    public void fillAndStrokePath(int rule) {
      draw();
    }

    @Override
    public void shadingFill(COSName name) {}
  }

  @Override
  public void close() {
    try {
      sheets.close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
