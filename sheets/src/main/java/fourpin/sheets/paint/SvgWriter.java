package fourpin.sheets.paint;

import static fourpin.sheets.paint.Numbers.mm;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A drawing as SVG 1.1: millimetres, real text, a title and a description.
 *
 * <p>Lines and fills carry a class beside their own colours, so that a page may restyle them; there
 * is no style sheet, script or outside reference inside. The same drawing always gives the same
 * text.
 */
public final class SvgWriter {

  private static final double MARGIN = 1;
  private static final String FONTS =
      "'IBM Plex Sans', 'Segoe UI', 'DejaVu Sans', Arial, sans-serif";
  private static final String NARROW_FONTS =
      "'IBM Plex Sans Condensed', 'Arial Narrow', 'DejaVu Sans Condensed', sans-serif";

  private final StringBuilder out = new StringBuilder();

  private SvgWriter() {}

  public static String write(Drawing drawing) {
    SvgWriter writer = new SvgWriter();
    writer.open(drawing);
    drawing.marks().forEach(writer::paint);
    return writer.out.append("</svg>\n").toString();
  }

  /** What the picture covers, in the drawing's millimetres: the drawing and a margin. */
  public static Box frame(Drawing drawing) {
    return drawing.extent().grown(MARGIN);
  }

  private void open(Drawing drawing) {
    Box box = frame(drawing);
    String ids = drawing.name() + "-title " + drawing.name() + "-text";
    out.append("<svg xmlns=\"http://www.w3.org/2000/svg\"")
        .append(" width=\"" + mm(box.width()) + "mm\" height=\"" + mm(box.height()) + "mm\"")
        .append(" viewBox=\"" + mm(box.left()) + " " + mm(-box.top()))
        .append(" " + mm(box.width()) + " " + mm(box.height()) + "\"")
        .append(" role=\"img\" aria-labelledby=\"" + ids + "\">\n")
        .append(
            "<title id=\"" + drawing.name() + "-title\">" + escaped(drawing.title()) + "</title>\n")
        .append(
            "<desc id=\""
                + drawing.name()
                + "-text\">"
                + escaped(drawing.description())
                + "</desc>\n");
    ground(box);
  }

  /** Paper under the drawing: black lines would be lost on a dark screen. */
  private void ground(Box box) {
    out.append("<rect x=\"" + mm(box.left()) + "\" y=\"" + mm(-box.top()) + "\"")
        .append(" width=\"" + mm(box.width()) + "\" height=\"" + mm(box.height()) + "\"")
        .append(" class=\"paper\" fill=\"" + Ink.WHITE.hex() + "\"/>\n");
  }

  private void paint(Mark mark) {
    switch (mark) {
      case Mark.Path path -> paint(path);
      case Mark.Area area -> fill(area.corners(), area.fill());
      case Mark.Circle circle -> paint(circle);
      case Mark.Text text -> paint(text);
      case Mark.Group group -> paint(group);
    }
  }

  private void paint(Mark.Group group) {
    out.append("<g><title>" + escaped(group.title()) + "</title>\n");
    group.marks().forEach(this::paint);
    out.append("</g>\n");
  }

  private void paint(Mark.Path path) {
    if (path.fill() != Fill.NONE) {
      fill(path.points(), path.fill());
    }
    out.append("<path d=\"" + outline(path.points(), path.shape()) + "\" fill=\"none\"")
        .append(stroke(path.pen()) + "/>\n");
  }

  private void fill(List<Point> corners, Fill fill) {
    fill.ground()
        .ifPresent(
            ink ->
                out.append("<path d=\"" + outline(corners, Mark.Path.Shape.CLOSED) + "\"")
                    .append(" class=\"" + fill.key() + "\" fill=\"" + ink.hex() + "\"/>\n"));
    List<Hatching.Segment> segments = Hatching.segments(corners, fill);
    if (!segments.isEmpty()) {
      out.append("<path d=\"" + lines(segments) + "\" fill=\"none\"" + stroke(Pen.HATCH) + "/>\n");
    }
  }

  private static String lines(List<Hatching.Segment> segments) {
    return segments.stream()
        .map(segment -> "M" + place(segment.from()) + "L" + place(segment.to()))
        .collect(Collectors.joining());
  }

  private static String outline(List<Point> points, Mark.Path.Shape shape) {
    String line = points.stream().map(SvgWriter::place).collect(Collectors.joining("L", "M", ""));
    return shape == Mark.Path.Shape.CLOSED ? line + "Z" : line;
  }

  private void paint(Mark.Circle circle) {
    out.append(
            "<circle cx=\""
                + mm(circle.centre().x())
                + "\" cy=\""
                + mm(-circle.centre().y())
                + "\"")
        .append(" r=\"" + mm(circle.radius()) + "\"")
        .append(" fill=\"" + circle.fill().ground().map(Ink::hex).orElse("none") + "\"")
        .append(stroke(circle.pen()) + "/>\n");
  }

  private void paint(Mark.Text text) {
    Lettering lettering = text.lettering();
    if (lettering.backing() == Lettering.Backing.WHITE) {
      fill(lettering.corners(text.at()), Fill.WHITE);
    }
    Point start = lettering.start(text.at());
    out.append("<text x=\"" + mm(start.x()) + "\" y=\"" + mm(-start.y()) + "\"")
        .append(turn(lettering.degrees(), start))
        .append(letters(lettering) + ">" + escaped(lettering.words()) + "</text>\n");
  }

  private static String turn(double degrees, Point about) {
    return degrees == 0 ? "" : " transform=\"rotate(" + mm(-degrees) + " " + place(about) + ")\"";
  }

  private static String letters(Lettering lettering) {
    String fonts = lettering.face().family() == Typeface.Family.NARROW ? NARROW_FONTS : FONTS;
    String weight = lettering.face().weight() == Typeface.Weight.BOLD ? " font-weight=\"600\"" : "";
    return " font-family=\""
        + fonts
        + "\" font-size=\""
        + mm(lettering.size())
        + "\""
        + weight
        // A substitute font must not run into its neighbours: the width is that of our own.
        + " textLength=\""
        + mm(lettering.width())
        + "\" lengthAdjust=\"spacingAndGlyphs\""
        + " fill=\""
        + lettering.ink().hex()
        + "\" class=\"words\"";
  }

  private static String stroke(Pen pen) {
    String dashes = pen.dashes().stream().map(Numbers::mm).collect(Collectors.joining(" "));
    return " class=\"pen-"
        + pen.key()
        + "\" stroke=\""
        + pen.ink().hex()
        + "\""
        + " stroke-width=\""
        + mm(pen.width())
        + "\" stroke-linejoin=\"round\""
        + (dashes.isEmpty() ? "" : " stroke-dasharray=\"" + dashes + "\"");
  }

  private static String place(Point point) {
    return mm(point.x()) + " " + mm(-point.y());
  }

  /**
   * Safe in text and in attributes; characters that XML 1.0 forbids become the replacement
   * character.
   */
  public static String escaped(String text) {
    StringBuilder safe = new StringBuilder(text.length());
    text.codePoints()
        .forEach(
            c -> {
              switch (c) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                default -> safe.appendCodePoint(allowed(c) ? c : 0xFFFD);
              }
            });
    return safe.toString();
  }

  private static boolean allowed(int c) {
    return c == '\t'
        || c == '\n'
        || c == '\r'
        || (c >= 0x20 && c <= 0xD7FF)
        || (c >= 0xE000 && c <= 0xFFFD)
        || c >= 0x10000;
  }
}
