package fourpin.sheets.paint;

import java.util.List;

/**
 * One line of text and how it sits on its point.
 *
 * @param size height of the em in millimetres, above 0
 * @param align which end of the line sits on the point
 * @param seat which height of the line sits on the point
 * @param degrees how far the line is turned about the point, anticlockwise
 * @param backing whether what lies under the text is covered
 */
public record Lettering(
    String words,
    Typeface face,
    double size,
    Ink ink,
    Align align,
    Seat seat,
    double degrees,
    Backing backing) {

  /** Which end of the line sits on its point. */
  public enum Align {
    START(0),
    MIDDLE(0.5),
    END(1);

    private final double share;

    Align(double share) {
      this.share = share;
    }
  }

  /** Which height of the line sits on its point. */
  public enum Seat {
    BASELINE(0),
    /** Half the height of capitals, for labels beside a line. */
    MIDDLE(Typeface.CAPITALS / 2),
    TOP(Typeface.ASCENT),
    BOTTOM(-Typeface.DESCENT);

    private final double rise;

    Seat(double rise) {
      this.rise = rise;
    }
  }

  /** What the text does to the marks under it. */
  public enum Backing {
    CLEAR,
    WHITE
  }

  public Lettering {
    if (!(size > 0)) {
      throw new IllegalArgumentException("Lettering needs a size above 0, not " + size);
    }
  }

  /** Black, starting on the baseline, upright, nothing covered; fractions are set as fractions. */
  public static Lettering of(String words, Typeface face, double size) {
    return new Lettering(
        Fractions.set(words), face, size, Ink.BLACK, Align.START, Seat.BASELINE, 0, Backing.CLEAR);
  }

  public Lettering with(Align newAlign, Seat newSeat) {
    return new Lettering(words, face, size, ink, newAlign, newSeat, degrees, backing);
  }

  public Lettering turned(double newDegrees) {
    return new Lettering(words, face, size, ink, align, seat, newDegrees, backing);
  }

  public Lettering in(Ink newInk) {
    return new Lettering(words, face, size, newInk, align, seat, degrees, backing);
  }

  public Lettering backed() {
    return new Lettering(words, face, size, ink, align, seat, degrees, Backing.WHITE);
  }

  public Mark.Text at(Point point) {
    return new Mark.Text(this, point);
  }

  /** Millimetres that the line runs. */
  public double width() {
    return face.width(words, size);
  }

  /** From the deepest to the highest letter. */
  public double height() {
    return (Typeface.ASCENT + Typeface.DESCENT) * size;
  }

  /** Where the baseline starts when the lettering sits on a point. */
  public Point start(Point at) {
    Point turned = new Point(-align.share * width(), -seat.rise * size).turned(degrees);
    return at.moved(turned.x(), turned.y());
  }

  /** The four corners of the line's box when it sits on a point, turned with it. */
  public List<Point> corners(Point at) {
    Point start = start(at);
    return level(Point.ORIGIN).corners().stream()
        .map(corner -> corner.turned(degrees).moved(start.x(), start.y()))
        .toList();
  }

  /** The upright box round the line when it sits on a point. */
  public Box extent(Point at) {
    return degrees == 0 ? level(start(at)) : Box.round(corners(at));
  }

  private Box level(Point start) {
    return Box.at(start.moved(0, -Typeface.DESCENT * size), width(), height());
  }
}
